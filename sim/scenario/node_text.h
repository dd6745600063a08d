// A tree as TOML text in one canonical form: what attempts embed and hash. Reading it back gives the same tree, but for
// the spots.
#pragma once

#include <string>

#include "sim/scenario/node.h"

namespace proofstand::scenario {

/// root is a table. Plain values stand before tables, otherwise the order is kept.
std::string toml_from_node(const Node& root);

}  // namespace proofstand::scenario

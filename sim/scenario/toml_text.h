// TOML text to a tree. The only place that knows the text parser.
#pragma once

#include <string_view>

#include "sim/base/result.h"
#include "sim/scenario/node.h"

namespace proofstand::scenario {

/// Limits that no honest scenario comes near; beyond them a file is refused before it can cost memory or time.
inline constexpr std::size_t kMostFileBytes = 1u << 20;
inline constexpr int kDeepestNesting = 32;

/// Parses one file's text. `file` is its number for the spots of the tree.
/// errors: E01 syntax (where is "line:column") · S01 too large, too deep, not UTF-8, a date or time as a value
base::Result<Node> parse_toml(std::string_view text, std::size_t file);

}  // namespace proofstand::scenario

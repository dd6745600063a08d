// Finds out, before anything is built from it, whether a text nests deeper than any scenario could: recursion over such
// a tree would run out of stack long before a fault could be reported.
#pragma once

#include <optional>
#include <string_view>

namespace proofstand::scenario {

/// Line in which brackets, or the parts of a dotted key, first lie deeper than `deepest`; nothing when they never do.
/// Texts in quotes and comments do not count. Malformed text gives some answer; the parser finds its real fault.
std::optional<int> line_too_deep(std::string_view text, int deepest);

}  // namespace proofstand::scenario

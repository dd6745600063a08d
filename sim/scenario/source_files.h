// Reads a scenario file with what it includes, and joins them into one tree. Nothing outside of the scenario's own
// folder and the shared folder beside it is ever read.
#pragma once

#include <string>
#include <vector>

#include "sim/base/result.h"
#include "sim/scenario/node.h"

namespace proofstand::scenario {

/// The whole text of a file of at most 1 MiB.
/// errors: S01 missing, not a plain file, too large
base::Result<std::string> load_text(const std::string& path);

/// The tree with its includes joined in: the file's own entries win, shared rules stand before its own; left-out rules
/// are gone and adjusted ones changed.
struct SourceTree {
  Node root;
  std::vector<std::string> names;  ///< of the files, as messages call them
  std::vector<std::string> texts;  ///< their contents
  bool complete = false;           ///< all files could be read
};
SourceTree load_source_tree(const std::string& path, base::Faults& faults);

}  // namespace proofstand::scenario

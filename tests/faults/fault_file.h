// A fault case: one thing done wrong in an otherwise correct job, and the one rule that must find it. Read from a small
// text file (tests/faults/cases/*.fault):
//
//     # the danger, in words
//     rule: rotor-direction
//     also: rotor-arrow because the same turned rotor is left so
//     replace: put the new rotor on, printed side out, by its edge
//     with: put the new rotor on, printed side in, by its edge
//
// further: "delete: LINE", "after: LINE" or "before: LINE" followed by "add: LINE", "variant: N", "hand: novice",
// "set: KEY = VALUE" for the workplace itself (see setup_edit.h). A line is named as it stands in the script, blocks
// not unrolled; "LINE (2)" is its second occurrence. Several edits may follow each other; "with" and "add" may be
// repeated.
#pragma once

#include <cstdint>
#include <string>
#include <vector>

#include "sim/base/result.h"

namespace proofstand::faults {

struct Edit {
  enum class Kind { Replace, Delete, After, Before } kind = Kind::Replace;
  std::string line;  ///< of the base script, trimmed
  int occurrence = 1;
  std::vector<std::string> lines;  ///< that come in
};

struct Allowed {
  std::string rule;
  std::string because;
};

struct FaultFile {
  std::string name;
  std::string danger;
  std::string rule;
  std::vector<Allowed> also;
  std::vector<Edit> edits;
  std::vector<std::string> setup_edits;
  std::size_t variant = 0;
  std::uint64_t seed = 1;
  std::string hand = "journeyman";
};

/// errors: a line that is none of the above, a rule that is missing
base::Result<FaultFile> read_fault_file(const std::string& path);
/// The base script with the edits made. errors: a line that is not in it
base::Result<std::string> edit_script(const std::string& base_script, const FaultFile& fault);

}  // namespace proofstand::faults

// The readers of everything that comes from outside, each on raw bytes: used by the fuzzers and by the test that works
// through kept cases. A reader must refuse with errors that say what and what instead, never crash, never hang.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "sim/base/result.h"

namespace proofstand::fuzz {

/// What became of one input: usable, or at least one error.
struct Read {
  bool usable = false;
  std::vector<base::Error> errors;
};

Read read_scenario(std::string_view bytes);
Read read_script(std::string_view bytes);
Read read_trace(std::string_view bytes);
/// As it is, and once more with every line sealed anew, so that what lies behind the seals is reached.
Read read_attempt(std::string_view bytes);

/// A reader by its name: scenario, script, trace, attempt; null for none of them.
using Reader = Read (*)(std::string_view);
Reader find_reader(std::string_view name);

}  // namespace proofstand::fuzz

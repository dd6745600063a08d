// The table behind the catalogue. Private to this floor.
#pragma once

#include <string_view>
#include <vector>

namespace proofstand::report {

/// One sentence; {0}, {1} ... are filled in. A language that is still empty falls back to English.
struct Phrase {
  std::string_view key;
  std::string_view en;
  std::string_view de;
};
const std::vector<Phrase>& phrase_table();

}  // namespace proofstand::report

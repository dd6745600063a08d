// Matching one line against the table of forms. Private to this floor.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "sim/bench/setup.h"
#include "sim/hand/script.h"
#include "sim/hand/script_words.h"

namespace proofstand::hand {

/// A line matched, or the furthest that any form came and what it wanted there.
struct Matched {
  bool ok = false;
  Instruction instruction;
  std::size_t at = 0;                ///< word at which the nearest form failed; words.size() at the line's end
  std::string wanted;                ///< what it wanted there
  std::string_view nearest;          ///< head of the nearest form
  std::vector<std::string> clauses;  ///< what may stand there instead
};

/// line: the raw text that `words` came from.
Matched match_line(std::string_view line, const std::vector<Word>& words, const bench::BenchSetup& setup);
/// What is wrong with a matched instruction's things, and what to write; empty `what` when nothing is.
struct Misfit {
  std::string what;
  std::string instead;
};
Misfit misfit_of(const Instruction& instruction, const bench::BenchSetup& setup);

}  // namespace proofstand::hand

// Parts of the search for rules that cannot all be kept. Private to it.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "sim/rules/conflict_search.h"
#include "sim/rules/engine.h"

namespace proofstand::rules {

/// Every record that the rules can tell apart, once each, and the pauses that matter to them.
struct Alphabet {
  std::vector<event::Record> letters;
  std::vector<base::Tick> pauses;  ///< before a letter; the first is one tick
  bool exact = true;               ///< no letter is missing, and no rule counts time
};
Alphabet alphabet_of(const RuleProgram& program);

/// Two states with the same shape have the same future: only what can still matter goes in, up to the bounds of the
/// rules.
std::string shape_of(const RuleProgram& program, const EngineState& state);

/// One search for a run with full marks.
struct Hunt {
  bool found = false;
  bool exhausted = false;  ///< everything was tried
  std::int64_t states = 0;
  std::vector<RuleIndex> nearest_left;  ///< what the nearest run still owed
  std::vector<bool> had_case;           ///< by rule: some run gave it one
  std::vector<bool> had_full;           ///< some run gave it full marks
  std::vector<bool> had_loss;           ///< some run lost it
};
/// asked(states so far) returns false to give up.
Hunt hunt(const RuleProgram& program, const SearchLimits& limits, const std::function<bool(std::int64_t)>& asked);

/// Only these rules, with the marks they leave; nothing when they do not stand without the others. idle_is_fine: no
/// least coverage, so that rules may stay without a case.
std::optional<RuleProgram> only_rules(const RuleProgram& program, const std::vector<RuleIndex>& rules,
                                      bool idle_is_fine);

}  // namespace proofstand::rules

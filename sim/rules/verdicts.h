// From counted cases to verdicts, excuses, points and totals. Private to the engine.
#pragma once

#include "sim/rules/engine.h"

namespace proofstand::rules {

/// Verdict and score of a rule that is not a composite, after its last stretch has ended.
RuleResult result_of(const RuleProgram& program, const EngineState& state, RuleIndex index, base::Tick end_tick,
                     bool cut_off);

/// Verdict of a composite from those of its children.
void judge_composite(const RuleProgram& program, RuleIndex index, base::Tick end_tick,
                     std::vector<RuleResult>& results);

/// Rules that were lost because another was lost first.
void apply_excuses(const RuleProgram& program, const EngineState& state, std::vector<RuleResult>& results);

/// Points, totals and the overall verdict.
void add_up(const RuleProgram& program, Report& report);

}  // namespace proofstand::rules

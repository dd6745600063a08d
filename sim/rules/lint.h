// What is wrong with rules that can be read but not be marked fairly. Fast: for every check of a scenario.
#pragma once

#include "sim/base/result.h"
#include "sim/rules/program.h"

namespace proofstand::rules {

/// Faults that follow from the rules and the vocabulary alone: E11 a selector that nothing matches, E12 overlapping
/// steps, E20 a rule without any chance, E21 never passes, E22 never fails, E25 doing nothing passes, E26, E27 circles,
/// W10 .. W17. Warnings that a rule has silenced are left out.
base::Faults lint(const RuleProgram& program);

}  // namespace proofstand::rules

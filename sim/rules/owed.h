// What a rule still waits for. Private to the live view.
#pragma once

#include <vector>

#include "sim/rules/live.h"

namespace proofstand::rules {

/// Empty when nothing is owed, or for a composite (see its children).
std::vector<Owed> owed_by(const RuleProgram& program, const EngineState& state, RuleIndex index);

}  // namespace proofstand::rules

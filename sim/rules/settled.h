// Since when nothing can change any more about full marks of a rule: for live views and for stopping a run. Private to
// the engine.
#pragma once

#include "sim/rules/program.h"
#include "sim/rules/state.h"

namespace proofstand::rules {

/// The moment full marks became impossible, or -1. Exact for what a passing moment settles, up to the state's tick.
base::Tick broken_since(const RuleProgram& program, const EngineState& state, RuleIndex index);

/// The moment full marks became certain, or -1.
base::Tick met_since(const RuleProgram& program, const EngineState& state, RuleIndex index);

}  // namespace proofstand::rules

// What the rules of a scenario get wrong that only the scenario can tell: points in stages that are not part of the
// job, and bounds narrower than the tools.
#pragma once

#include "sim/scenario/field_reader.h"
#include "sim/scenario/scenario.h"

namespace proofstand::scenario {

/// Compiles the rules for this variant and adds their faults, the lint's, and S12, S17.
void check_rules(const Reading& reading, const DrawnScenario& scenario);

}  // namespace proofstand::scenario

// The stretches of the run in which a rule looks: how they begin, end and are thrown away. Private to the engine.
#pragma once

#include "sim/rules/kinds.h"

namespace proofstand::rules {

/// Before the first record: scopes that are open from the start.
void begin_scope(const Work& work);

/// The record for a rule, whatever it is to it. Delimiters are outside of the stretch.
void step_rule(const Work& work, const Happening& now);

/// The run ends here.
void end_scope(const Work& work, const Ending& ending);

}  // namespace proofstand::rules

// Actions that act at once, and how one of either sort reaches its hand.
#pragma once

#include "sim/bench/world.h"

namespace proofstand::bench {

/// Applies an action at the present tick; one for a busy hand waits. Refusals are told.
Refusal apply_action(const World& world, const event::Action& action);
/// One tick: arrivals, hands, dial, wheel. The tick has been counted already.
void step_bench(const World& world);
/// First tick after now at which something happens by itself: an arrival, a wheel coming to rest, a reading falling
/// due; kNever's value when nothing does. Only to be trusted while at_rest.
base::Tick next_due(const World& world);
/// Would ticks change nothing until next_due?
bool at_rest(const World& world);
/// Everything that is told when the job is handed over.
void hand_over(const World& world);
/// The state before the first action, from the setup.
void start_state(const World& world);

}  // namespace proofstand::bench

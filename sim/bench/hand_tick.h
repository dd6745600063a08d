// One tick of one hand at work: its cord and what it is fastened to.
#pragma once

#include "sim/bench/world.h"

namespace proofstand::bench {

/// One tick of a hand that is not at rest.
void step_hand(const World& world, HandId hand);
/// Would a tick change nothing for this hand? (A busy hand rests until it arrives.)
bool hand_rests(const World& world, HandId hand);

}  // namespace proofstand::bench

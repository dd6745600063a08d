// Which thing a hand carries in the picture: while it is being taken or put back that changes half way.
#pragma once

#include "sim/bench/bench.h"

namespace proofstand::scene {

/// kNoThing when the hand is empty.
event::ThingId carried_thing(const bench::Bench& bench, event::HandId hand);
/// The grip with which it holds, or is about to hold, what it carries.
event::Grip carrying_grip(const bench::Bench& bench, event::HandId hand);

}  // namespace proofstand::scene

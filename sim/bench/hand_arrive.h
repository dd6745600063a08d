// What happens when a hand gets there. Private to the motions of hands.
#pragma once

#include "sim/bench/world.h"

namespace proofstand::bench {

/// A touch at a turning wheel would hurt: tells it and stops the run. True when it was so.
bool endangered(const World& world, HandId hand, ThingId thing, PlaceKind place);
/// Fingers close on the rotor held, or on the hub, at the place that its grip means.
void begin_rotor_touch(const World& world, HandId hand, ThingId rotor);

}  // namespace proofstand::bench

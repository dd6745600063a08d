// A pick that scratches dirt and old locker out of corners, and a lamp that lets one see: both prove a look when they
// were held somewhere for a second.
#pragma once

#include "sim/bench/world.h"

namespace proofstand::bench {

/// Pick or lamp comes to rest where the hand is.
void begin_look(const World& world, HandId hand);
/// One tick of a pick: what it scrapes along its way comes loose.
void step_pick(const World& world, HandId hand);
/// It leaves: "recess_cleaned" or "thread_cleaned" when it took something off, "inspected" after a second and more.
void end_look(const World& world, HandId hand);

}  // namespace proofstand::bench

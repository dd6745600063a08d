// Hands on the move: an action that takes time makes the hand busy, its effect comes on arrival, and the latest input
// meanwhile waits.
#pragma once

#include "sim/bench/world.h"

namespace proofstand::bench {

/// Begins an action that makes the hand busy, or refuses it. The hand draws away from where it was, unless the action
/// keeps it there.
Refusal begin_motion(const World& world, const event::Action& action);
/// The hand has arrived: does what it set out to do, or refuses now what has become impossible meanwhile.
Refusal arrive(const World& world, HandId hand);
/// Lets go of what stays by itself, else draws away with what is held.
Refusal leave(const World& world, HandId hand);
/// Draws a hand away from the place where it rests: visits, wipes, touches and readings are told. What it holds it
/// keeps, but for a bolt whose thread has caught.
void leave_place(const World& world, HandId hand);

/// How long such an action takes [ticks]. common practice, no source
base::Tick motion_ticks(event::ActionKind kind);
/// Does an action of this kind make the hand busy?
bool is_motion(event::ActionKind kind);

/// A place grips as it is when a rotor is held so.
PlaceKind place_of_grip(Grip grip);

}  // namespace proofstand::bench

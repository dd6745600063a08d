// May a hand do this now? Every refusal that has to do with hands, things and places is decided here, before anything
// moves and once more on arrival.
#pragma once

#include "sim/bench/world.h"

namespace proofstand::bench {

/// Are the action's numbers such as exist in this setup? NoSuchPlace when not.
Refusal check_numbers(const World& world, const event::Action& action);
/// May a hand that stands free to act begin this? None when it may.
Refusal check_motion(const World& world, const event::Action& action);

/// What the numbers of an action mean.
inline ThingId thing_of(const event::Action& action) { return static_cast<ThingId>(action.numbers[1]); }
inline PlaceKind place_of(const event::Action& action) { return static_cast<PlaceKind>(action.numbers[2]); }
inline BoltId bolt_of(const event::Action& action) { return static_cast<BoltId>(action.numbers[3]); }

/// Is this a place of the joint on the wheel's hub, whose number counts?
bool numbered_place(PlaceKind place);
/// Is this a key or driver?
bool is_tool(ThingKind kind);
/// Is this an instrument, lamp or pick?
bool is_instrument(ThingKind kind);

}  // namespace proofstand::bench

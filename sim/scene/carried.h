// What a hand carries, as pictures show it: on the way to take a thing it joins the hand half-way, and is back in its
// spot half-way through being laid down. From state alone.
#pragma once

#include <glm/glm.hpp>
#include <optional>

#include "sim/bench/bench.h"

namespace proofstand::scene {

/// The hand that a thing is drawn in now; nothing when it lies, stands or sits somewhere else.
std::optional<event::HandId> carrier_of(const bench::Bench& bench, event::ThingId thing);
/// Is this hand laying down what it holds, on the bench or in the tray?
bool lays_down(const bench::Bench& bench, event::HandId hand);
/// Share of the way of the motion under way: 0 at its start, 1 at its end and when there is none.
float motion_share_1(const bench::Bench& bench, event::HandId hand);

/// Where the middle of a rotor lies in the work frame of the hand that holds it: its plane is the frame's x-y plane,
/// the fingers are at the origin. Upwards and towards the other hand.
glm::vec3 held_rotor_middle(const bench::Bench& bench, event::HandId hand, event::ThingId rotor);
/// A rotor held: its own frame to the hand's work frame. Turned over half-way round while it is being turned.
glm::mat4 held_rotor_pose(const bench::Bench& bench, event::HandId hand, event::ThingId rotor);

}  // namespace proofstand::scene

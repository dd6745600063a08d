// Bottles, threadlocker on threads, gloves, folds of a rag.
#pragma once

#include "sim/bench/contact.h"

namespace proofstand::bench {

/// Lets drops out of the bottle held, at the place where its mouth is: a bolt's thread, a hole, a rag, a rotor, the
/// bench. Refused when the hand holds no bottle, is nowhere, or asks for nothing. Emits "applied".
Refusal squeeze(const World& world, HandId hand, std::int64_t drops);

/// What lies between a bolt and its hole.
struct ThreadFilm {
  bool greasy = false;
  bool oily = false;
  double locker_m3 = 0.0;     ///< liquid locker on bolt and hole together
  double locker_set_1 = 0.0;  ///< how far it has cured since the parts came together, 0..1
  bool alcohol_wet = false;
};
/// The film at a position: of the hole alone while it is empty.
ThreadFilm thread_film(const World& world, BoltId bolt);

/// Puts a fresh glove on, or takes it off. Emits "gloved" and the hand's fluent.
void glove(const World& world, HandId hand, bool on);
/// Turns the rag held to a fresh fold, when one is left; a wipe under way ends there.
void turn_rag(const World& world, HandId hand);
/// Is alcohol or liquid locker still wet between this rotor and the hub's seat?
bool seat_wet(const World& world, ThingId rotor);
/// Emits the fluents skin_left and skin_right as they are now.
void tell_skin(const World& world);

}  // namespace proofstand::bench

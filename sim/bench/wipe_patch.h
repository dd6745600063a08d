// Wiping what is no braking face: seats, carriers, edges, threads, holes. Each keeps one film, and how far the rag was
// stroked tells how much of it was passed over. Also what a wipe says when it ends.
#pragma once

#include "sim/bench/wiping.h"

namespace proofstand::bench {

/// Stroke after which a place of this kind has been passed over once [m].
double full_stroke_m(PlaceKind place);
/// The rag moved over a patch: at its first touch, and each time a third of the place has been stroked, film is
/// exchanged; loose dirt goes once half of a seat was passed over.
void wipe_patch(const World& world, ContactState& contact, FilmCell& fold, double strength_1);

}  // namespace proofstand::bench

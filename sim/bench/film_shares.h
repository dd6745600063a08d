// Which share of a film goes over when two kinds of surface meet.
#pragma once

#include "sim/bench/surface.h"

namespace proofstand::bench {

// Shares of the species are those of sim/physics/film.h; alcohol goes its own way: a wet rag leaves half of its load on
// what it passes over, a dry one soaks most of it up. common practice, no source

/// Fingers, bare or gloved, firmly on metal for a moment; a wet surface smears more back.
const Exchange& fingers_on_metal(bool gloved, bool wet);
/// Metal under a rag that passes over it; first body the metal, second the rag.
const Exchange& metal_under_rag(bool wet);
/// A rag in the fingers; first body the rag.
const Exchange& rag_in_hand();
/// A rotor's face laid on the bench; first body the bench.
const Exchange& bench_under_rotor();

}  // namespace proofstand::bench

// Which share of a film goes over when two kinds of surface meet.
#pragma once

#include "sim/bench/surface.h"

namespace proofstand::bench {

/// Fingers, bare or gloved, firmly on metal for a moment; a wet surface smears more back.
Exchange fingers_on_metal(bool gloved, bool wet);
/// Metal under a rag that passes over it; first body the metal, second the rag.
Exchange metal_under_rag(bool wet);
/// A rotor's face laid on the bench; first body the bench.
Exchange bench_under_rotor();

}  // namespace proofstand::bench

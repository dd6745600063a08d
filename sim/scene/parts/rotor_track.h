// The braking track's two faces: vents, wear, and the coordinates of their film maps.
#pragma once

#include "sim/bench/setup.h"
#include "sim/scene/mesh.h"

namespace proofstand::scene {

/// Inner edge of the track [m].
double track_inner_m(const bench::RotorPart& part);
/// One face with the walls of its half of the vents. Where pads have run it lies lower; a lip stays at the rim.
/// coords: angle as seen at this face over a full turn, and 0 at the track's inner edge to 1 at the rim.
Mesh build_track(const bench::RotorPart& part, bool printed_side);

}  // namespace proofstand::scene

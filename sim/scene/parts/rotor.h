// The rotor as a part: track with vents, arms, carrier, what is printed on it. Own frame: origin in the middle of the
// inner face, z out of the printed side, x where angles start.
#pragma once

#include <vector>

#include "sim/bench/setup.h"
#include "sim/scene/glyphs.h"
#include "sim/scene/mesh.h"
#include "sim/scene/outline.h"

namespace proofstand::scene {

/// Its surfaces, each by itself, so that each can be picked, and the print.
struct RotorMeshes {
  Mesh track_outer;  ///< printed side, with coords of its film map; the vents' walls too
  Mesh track_inner;  ///< likewise, angle and radius as seen at this face
  Mesh edge;         ///< rim
  Mesh inner_edge;   ///< of the track, towards the arms
  Mesh arms;
  Mesh carrier_outer;  ///< printed side, with the holes
  Mesh carrier_inner;
  Mesh print;  ///< arrow, least thickness, diameter; empty when it bears none
};
RotorMeshes build_rotor(const bench::RotorPart& part, const Typeface& face);

/// Its outline, seen at the printed side: everything but the vents. For tests and for the above.
Outline rotor_outline(const bench::RotorPart& part);
/// The vents alone.
Outline rotor_vents(const bench::RotorPart& part);
/// Volume by the outline and the vents [m³], thickness as new.
double rotor_volume_m3(const bench::RotorPart& part);

}  // namespace proofstand::scene

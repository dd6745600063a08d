// Rim, valve and tyre as parts, in the wheel's frame.
#pragma once

#include "sim/scene/glyphs.h"
#include "sim/scene/mesh.h"

namespace proofstand::scene {

/// Outside diameter of a tyre: bead seat and twice its width.
/// source  ISO 5775 sizes; 28-622 gives 678 mm
double tyre_diameter_m(double bead_seat_m, double width_m);

struct RimMeshes {
  Mesh rim;
  Mesh valve;
  Mesh tyre;
  Mesh print;  ///< size on the tyre's wall, both sides
};
RimMeshes build_rim(const Typeface& face);

}  // namespace proofstand::scene

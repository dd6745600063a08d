// A flat shape drawn out along z, its edges chamfered.
#pragma once

#include "sim/scene/mesh.h"
#include "sim/scene/outline.h"

namespace proofstand::scene {

/// From which height to which, and how much is taken off the edges at either end (45°); 0 leaves a sharp edge.
struct Heights {
  double from_m = 0.0;
  double to_m = 0.001;
  double chamfer_from_m = 0.0003;
  double chamfer_to_m = 0.0003;
};
/// Closed solid. A chamfer that would eat the whole shape is left out.
Mesh extrude(const Outline& outline, const Heights& heights);
/// The face alone, at height z, looking to +z: prints, labels, lines.
Mesh flat_face(const Outline& outline, double z_m = 0.0);

}  // namespace proofstand::scene

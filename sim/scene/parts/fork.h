// The bicycle's fork as a part, in its own plane: x along the steering axis upwards, y backwards, z to the rider's
// right, origin on the axle. Left leg at -z.
#pragma once

#include "sim/scene/mesh.h"

namespace proofstand::scene {

struct ForkMeshes {
  Mesh legs;  ///< with the crown
  Mesh ends;  ///< bosses that the axle goes through
  Mesh axle;  ///< through-axle, while it is in
};
ForkMeshes build_fork();

/// The fork's own plane to the bicycle (x forward, y up), origin on the axle.
glm::mat4 fork_frame();

}  // namespace proofstand::scene

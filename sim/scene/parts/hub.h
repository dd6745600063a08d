// The front hub as a part, in the wheel's frame (z to the rider's right, the disc side at -z).
#pragma once

#include <vector>

#include "sim/bench/setup.h"
#include "sim/scene/mesh.h"

namespace proofstand::scene {

struct HubMeshes {
  Mesh shell;  ///< barrel, both spoke flanges, the body that carries the rotor's seat
  Mesh seat;   ///< register and the seat's level face, without bosses and holes
  Mesh boss;   ///< one boss round a hole, in that hole's frame (origin in its mouth, z out)
  Mesh hole;   ///< its threaded wall and floor, in the same frame
  Mesh axle;   ///< end caps and the axle's bore
};
HubMeshes build_hub(const bench::HubPart& hub);

}  // namespace proofstand::scene

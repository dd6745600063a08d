// The rotor bolt as a part. Own frame: origin in the middle under the head, z out of the head; the shank runs to -z.
#pragma once

#include "sim/bench/setup.h"
#include "sim/scene/mesh.h"
#include "sim/scene/outline.h"

namespace proofstand::scene {

struct BoltMeshes {
  Mesh head;           ///< low dome, with the edge of the recess
  Mesh recess;         ///< the drive's pocket, walls and floor
  Mesh recess_ruined;  ///< the same with its lobes shaved round
  Mesh shank;          ///< thread, point
  Mesh patch;          ///< locking patch as it comes: a band round the thread
};
BoltMeshes build_bolt(const bench::BoltPart& part, double pitch_m);

/// Depth of the drive recess [m].
inline constexpr double kRecessDepth_m = 0.0018;
/// Contour of a recess: the drive's base contour, grown so that its tip enters.
Loop recess_contour();
/// A drop of liquid on something flat, as seen: origin under it, z up. size_m: its radius.
Mesh build_drop(double size_m);
/// Crumbs of old locker or dirt, a handful of grains within a radius.
Mesh build_crumbs(double radius_m, int count);

}  // namespace proofstand::scene

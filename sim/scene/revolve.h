// Turned parts: a profile led round the z axis.
#pragma once

#include "sim/scene/mesh.h"
#include "sim/scene/outline.h"

namespace proofstand::scene {

/// profile: points (radius, z). Open: from axis to axis (radius 0 at both ends) makes a closed solid; a profile that
/// does not end on the axis leaves a shell. Matter lies to the left of the profile's run: go up the outside (bottom to
/// top along +z), the axis on your left.
Mesh revolve(const Loop& profile, double sag_m = kNearSag_m);
/// profile closed on itself, counter-clockwise in (radius, z): a ring. Also for tyres and rims.
Mesh revolve_ring(const Loop& profile, double sag_m = kNearSag_m);
/// Round bar from z = from_m to to_m with chamfered ends.
Mesh bar(double radius_m, double from_m, double to_m, double chamfer_m = 0.0003, double sag_m = kNearSag_m);
/// Tube or ring: two radii, chamfered edges.
Mesh pipe(double inner_m, double outer_m, double from_m, double to_m, double chamfer_m = 0.0003,
          double sag_m = kNearSag_m);

}  // namespace proofstand::scene

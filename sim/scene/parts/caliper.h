// The brake caliper as a part, in the fork's plane: x along the left leg upwards, y backwards, z to the rider's right,
// origin on the axle. It stands on two posts so that its pads lie on the rotor's track.
#pragma once

#include "sim/scene/mesh.h"
#include "sim/scene/outline.h"

namespace proofstand::scene {

/// A post mount's two bolts and the middle of the pads, in the fork's plane [m].
/// source  published equations of a post mount's plane and first bolt; second bolt 74.2 mm further: from memory
struct PostMount {
  double face_m = 0.0;   ///< distance of the posts' face from the axle
  double first_m = 0.0;  ///< along the posts' line
  double second_m = 0.0;
  glm::dvec2 pads_m{0.0, 0.0};
};
/// rotor_m  [m] diameter of the rotor that the brake is set for
PostMount post_mount(double rotor_m);

struct CaliperMeshes {
  Mesh body;
  Mesh pistons;
  Mesh bolts;    ///< mounting bolts, pin
  Mesh backing;  ///< both pads' plates
  Mesh lining;
  Mesh spacer;  ///< plastic, between the pads while no rotor is
  Mesh hose;    ///< as far as the crown
  Mesh posts;   ///< of the leg
};
/// gap_out_m, gap_in_m  [m] between rotor and pads, away from the hub and towards it
CaliperMeshes build_caliper(double rotor_m, double thick_m, double gap_out_m, double gap_in_m);

}  // namespace proofstand::scene

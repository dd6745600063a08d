// Lateral runout of a fitted rotor: tilt from seat, grit and flange, humps and kinks of its own; what a dial shows.
#pragma once

#include <vector>

#include "sim/physics/seating.h"

namespace proofstand::physics {

/// A set of the rotor's own, a hump round its place.
struct Hump {
  double angle_rad = 0.0;  ///< in the rotor's frame
  double set_m = 0.0;      ///< at the middle of the track
  double phase_rad = 0.0;  ///< of its place from the nearest arm
};
/// The lateral shape of one rotor on one hub.
struct RotorShape {
  double middle_radius_m = 0.072;
  Tilt seat;    ///< plane of the seat as fitted, grit included
  Tilt flange;  ///< the hub's own
  std::vector<Hump> humps;
};

/// Lateral displacement of a point of the track, positive away from the hub. [m]
/// radius_m [m] > 0, angle_rad [rad] any
/// source  plane geometry for the tilts; humps as sim/physics/rotor_bend.h
double lateral_m(const RotorShape& shape, double radius_m, double angle_rad);
/// Total indicator reading over one turn at that radius: largest less smallest at `steps` places. [m] >= 0
double total_runout_m(const RotorShape& shape, double radius_m, int steps = 360);
/// Total reading of a plane that tilts: 2 r tilt. [m]
double tilt_runout_m(double tilt_rad, double radius_m);
/// Grit under one boss of a rigid disc: tilt h/(r_b + r_f) about the far edge of the flange; 2 r h/(r_b + r_f). [m]
/// source  geometry
double rigid_grit_runout_m(double grit_m, double boss_radius_m, double far_edge_m, double radius_m);
/// Tilt of a flange that is out by so much over its diameter, at an angle.
Tilt flange_tilt(double out_m, double flange_diameter_m, double phase_rad);
/// What a dial shows when its stylus stands at an angle to the normal. [m]
/// source  cosine error, geometry
double dial_shows_m(double moved_m, double stylus_angle_rad);

}  // namespace proofstand::physics

// Lateral runout of a mounted rotor: tilt of its seat, bends, and what a dial shows of it.
#pragma once

#include <vector>

#include "sim/physics/seating.h"

namespace proofstand::physics {

/// One hump of a bent rotor.
struct Hump {
  double angle_rad = 0.0;  ///< where it was pulled
  double set_m = 0.0;
  double arm_angle_rad = 0.0;  ///< of that place from the nearest arm
};

/// Everything that makes a track wobble. Positive: away from the wheel's middle.
struct RunoutField {
  SeatTilt tilt;  ///< seat, dirt, flange together
  std::vector<Hump> humps;
  double track_middle_m = 0.072;
};

/// Lateral position [m] at a radius and an angle. source: superposition; shapes as in rotor_bend.h
double lateral_m(const RunoutField& field, double radius_m, double angle_rad);
/// Total reading over one turn [m], from samples every 2°.
double total_runout_m(const RunoutField& field, double radius_m);
/// Total runout [m] from dirt under one boss on a rigid disc: 2 rm h/(rb + rf). source: geometry
double rigid_dirt_runout_m(double dirt_m, double bolt_radius_m, double flange_radius_m, double radius_m);
/// From a flange face out of true [m]: 2 r f/D. source: geometry
double flange_runout_m(double flange_error_m, double flange_diameter_m, double radius_m);
/// What a dial shows whose stylus leans against the face's normal [m]. source: cosine error
double dial_shown_m(double true_m, double stylus_rad);

}  // namespace proofstand::physics

#include "sim/physics/runout.h"

#include "sim/base/math.h"
#include "sim/physics/rotor_bend.h"

namespace proofstand::physics {

double lateral_m(const RotorShape& shape, double radius_m, double angle_rad) {
  double w_m = shape.seat.height_m(radius_m, angle_rad) + shape.flange.height_m(radius_m, angle_rad);
  if (shape.humps.empty()) return w_m;
  const double grows = bend_radial_1(radius_m, shape.middle_radius_m);
  for (const Hump& hump : shape.humps) {
    w_m += grows * hump.set_m * bend_shape_1(angle_rad - hump.angle_rad, hump.phase_rad);
  }
  return w_m;
}

double total_runout_m(const RotorShape& shape, double radius_m, int steps) {
  double least_m = 0.0;
  double most_m = 0.0;
  for (int i = 0; i < steps; ++i) {
    const double w_m = lateral_m(shape, radius_m, base::kTwoPi * i / steps);
    least_m = i == 0 || w_m < least_m ? w_m : least_m;
    most_m = i == 0 || w_m > most_m ? w_m : most_m;
  }
  return most_m - least_m;
}

double tilt_runout_m(double tilt_rad, double radius_m) { return 2.0 * radius_m * tilt_rad; }

double rigid_grit_runout_m(double grit_m, double boss_radius_m, double far_edge_m, double radius_m) {
  return 2.0 * radius_m * grit_m / (boss_radius_m + far_edge_m);
}

Tilt flange_tilt(double out_m, double flange_diameter_m, double phase_rad) {
  const double slope = out_m / flange_diameter_m;
  return {slope * base::cos_rad(phase_rad), slope * base::sin_rad(phase_rad), 0.0};
}

double dial_shows_m(double moved_m, double stylus_angle_rad) { return moved_m / base::cos_rad(stylus_angle_rad); }

}  // namespace proofstand::physics

#include "sim/physics/runout.h"

#include "sim/base/math.h"
#include "sim/physics/rotor_bend.h"

namespace proofstand::physics {

double lateral_m(const RunoutField& field, double radius_m, double angle_rad) {
  double w = radius_m * (field.tilt.x_1 * base::cos_rad(angle_rad) + field.tilt.y_1 * base::sin_rad(angle_rad));
  if (field.humps.empty()) return w;
  const double grows = bend_radius_factor_1(radius_m, field.track_middle_m);
  for (const Hump& hump : field.humps) {
    w += grows * hump.set_m * bend_shape_1(angle_rad - hump.angle_rad, hump.arm_angle_rad);
  }
  return w;
}

double total_runout_m(const RunoutField& field, double radius_m) {
  double least = 0.0;
  double most = 0.0;
  for (int i = 0; i < 180; ++i) {
    const double w = lateral_m(field, radius_m, base::radians(2.0 * i));
    least = i == 0 || w < least ? w : least;
    most = i == 0 || w > most ? w : most;
  }
  return most - least;
}

double rigid_dirt_runout_m(double dirt_m, double bolt_radius_m, double flange_radius_m, double radius_m) {
  return 2.0 * radius_m * dirt_m / (bolt_radius_m + flange_radius_m);
}

double flange_runout_m(double flange_error_m, double flange_diameter_m, double radius_m) {
  return 2.0 * radius_m * flange_error_m / flange_diameter_m;
}

double dial_shown_m(double true_m, double stylus_rad) { return true_m / base::cos_rad(stylus_rad); }

}  // namespace proofstand::physics

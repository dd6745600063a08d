#include "sim/physics/pad_friction.h"

#include "sim/base/math.h"

namespace proofstand::physics {

double brake_torque_nm(double friction_1, double pad_force_n, double radius_m) {
  return 2.0 * friction_1 * pad_force_n * radius_m;
}

double effective_radius_wear_m(double outer_m, double inner_m) { return 0.5 * (outer_m + inner_m); }

double effective_radius_pressure_m(double outer_m, double inner_m) {
  return (2.0 / 3.0) * (outer_m * outer_m * outer_m - inner_m * inner_m * inner_m) /
         (outer_m * outer_m - inner_m * inner_m);
}

double bedded_friction_1(double new_1, double bedded_1, double energy_j, double bedding_j) {
  return bedded_1 - (bedded_1 - new_1) * base::exp_1(-energy_j / bedding_j);
}

double filmed_friction_1(double friction_1, double covered, double film_factor) {
  return friction_1 * (1.0 - covered * (1.0 - film_factor));
}

double fade_1(double temperature_c, double from_c, double per_k) {
  if (temperature_c <= from_c) return 1.0;
  const double left = 1.0 - per_k * (temperature_c - from_c);
  return left > 0.5 ? left : 0.5;
}

double wiped_share_1(double efficiency_1, int wipes) {
  double left = 1.0;
  for (int i = 0; i < wipes; ++i) left *= 1.0 - efficiency_1;
  return left;
}

}  // namespace proofstand::physics

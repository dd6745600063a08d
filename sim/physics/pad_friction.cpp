#include "sim/physics/pad_friction.h"

#include "sim/base/assert.h"
#include "sim/base/math.h"

namespace proofstand::physics {

PadRow pad_row(PadKind kind) {
  if (kind == PadKind::Organic) return {0.45, 0.25, 11e3, 0.5, 0.35, 473.15, 0.0015};
  return {0.38, 0.22, 14e3, 0.9, 0.40, 573.15, 0.0008};
}

double bedding_friction_1(double fresh_1, double bedded_1, double energy_j, double bedding_energy_j) {
  STAND_ASSERT(bedding_energy_j > 0.0 && energy_j >= 0.0);
  return bedded_1 - (bedded_1 - fresh_1) * base::exp_1(-energy_j / bedding_energy_j);
}

double fade_factor_1(const PadRow& pad, double temperature_k) {
  if (temperature_k <= pad.fade_from_k) return 1.0;
  const double factor_1 = 1.0 - pad.fade_1_k * (temperature_k - pad.fade_from_k);
  return factor_1 > 0.5 ? factor_1 : 0.5;
}

double water_factor_1(const PadRow& pad, double wetness_1) { return 1.0 - (1.0 - pad.wet_1) * wetness_1; }

double wetness_after_1(double wetness_1, double energy_j, double drying_energy_j) {
  STAND_ASSERT(drying_energy_j > 0.0);
  return wetness_1 * base::exp_1(-energy_j / drying_energy_j);
}

double film_factor_1(double covered_1, double film_1) { return 1.0 - covered_1 * (1.0 - film_1); }

double effective_radius_worn_m(double outer_m, double inner_m) { return (outer_m + inner_m) / 2.0; }

double effective_radius_new_m(double outer_m, double inner_m) {
  STAND_ASSERT(outer_m > inner_m);
  return 2.0 / 3.0 * (outer_m * outer_m * outer_m - inner_m * inner_m * inner_m) /
         (outer_m * outer_m - inner_m * inner_m);
}

double brake_torque_nm(double friction_1, double pad_force_n, double radius_m) {
  return 2.0 * friction_1 * pad_force_n * radius_m;
}

}  // namespace proofstand::physics

#include "sim/physics/clamp_slip.h"

#include "sim/base/assert.h"
#include "sim/base/math.h"

namespace proofstand::physics {

double friction_capacity_nm(const std::vector<double>& clamp_n, double friction_1, double circle_radius_m) {
  double sum_n = 0.0;
  for (const double one_n : clamp_n) sum_n += one_n > 0.0 ? one_n : 0.0;
  return friction_1 * circle_radius_m * sum_n;
}

double slip_margin_1(double least_n, int bolts, double friction_1, double circle_radius_m, double safety_1,
                     double demand_nm) {
  STAND_ASSERT(safety_1 > 0.0 && demand_nm > 0.0);
  return friction_1 * static_cast<double>(bolts) * least_n * circle_radius_m / (safety_1 * demand_nm) - 1.0;
}

double slip_angle_rad(double play_m, double circle_radius_m) {
  STAND_ASSERT(circle_radius_m > 0.0);
  return play_m / circle_radius_m;
}

double play_in_drag_m(double angle_rad, double circle_radius_m) {
  return angle_rad > 0.0 ? angle_rad * circle_radius_m : 0.0;
}

double play_angle_rad(double hole_m, double bolt_m, double circle_radius_m) {
  STAND_ASSERT(circle_radius_m > 0.0);
  return hole_m > bolt_m ? (hole_m - bolt_m) / circle_radius_m : 0.0;
}

int drag_sense(int forward_sense) { return -forward_sense; }

int forward_sense(bool rotor_on_left) { return rotor_on_left ? 1 : -1; }

double bolt_shear_n(double demand_nm, double capacity_nm, double circle_radius_m, int bearing_bolts) {
  STAND_ASSERT(bearing_bolts >= 1 && circle_radius_m > 0.0);
  const double excess_nm = demand_nm - capacity_nm;
  return excess_nm > 0.0 ? excess_nm / (static_cast<double>(bearing_bolts) * circle_radius_m) : 0.0;
}

SlipOutcome slip_under(double demand_nm, const std::vector<double>& clamp_n, double friction_1, double circle_radius_m,
                       double play_m, int bearing_bolts) {
  SlipOutcome outcome;
  outcome.capacity_nm = friction_capacity_nm(clamp_n, friction_1, circle_radius_m);
  outcome.slips = demand_nm > outcome.capacity_nm;
  if (!outcome.slips) return outcome;
  outcome.slip_rad = slip_angle_rad(play_m > 0.0 ? play_m : 0.0, circle_radius_m);
  outcome.knock_j = (demand_nm - outcome.capacity_nm) * outcome.slip_rad;
  outcome.shear_n = bolt_shear_n(demand_nm, outcome.capacity_nm, circle_radius_m, bearing_bolts);
  return outcome;
}

double knock_speed_m_s(double energy_j, double inertia_kg_m2, double radius_m) {
  STAND_ASSERT(energy_j >= 0.0 && inertia_kg_m2 > 0.0);
  return base::sqrt_1(2.0 * energy_j / inertia_kg_m2) * radius_m;
}

double bolt_shear_strength_n(double tensile_pa, double minor_m) {
  return 0.6 * tensile_pa * base::kPi / 4.0 * minor_m * minor_m;
}

double preload_after_slips_n(double preload_n, double slip_m, int events, bool locked) {
  if (slip_m <= kLooseningSlip_m) return preload_n;
  double left_n = preload_n;
  for (int i = 0; i < events && i < 100000; ++i) left_n *= locked ? 1.0 - 0.0002 : 1.0 - 0.002;
  return left_n;
}

}  // namespace proofstand::physics

#include "sim/physics/clamp_slip.h"

#include "sim/base/assert.h"

namespace proofstand::physics {

double friction_capacity_nm(double friction_1, double bolt_radius_m, double clamp_n) {
  return friction_1 * bolt_radius_m * clamp_n;
}

double slip_margin_1(double friction_1, std::size_t bolts, double least_preload_n, double bolt_radius_m,
                     double safety_1, double torque_nm) {
  return friction_1 * static_cast<double>(bolts) * least_preload_n * bolt_radius_m / (safety_1 * torque_nm) - 1.0;
}

double slip_angle_rad(double clearance_m, double bolt_radius_m) { return clearance_m / bolt_radius_m; }

double knock_energy_j(double torque_nm, double capacity_nm, double angle_rad) {
  return torque_nm > capacity_nm ? (torque_nm - capacity_nm) * angle_rad : 0.0;
}

double bolt_shear_n(double torque_nm, double capacity_nm, double bolt_radius_m, std::size_t bearing_bolts) {
  STAND_ASSERT(bearing_bolts > 0);
  if (torque_nm <= capacity_nm) return 0.0;
  return (torque_nm - capacity_nm) / (static_cast<double>(bearing_bolts) * bolt_radius_m);
}

double bolt_shear_strength_n(double tensile_pa, double root_area_m2) { return 0.6 * tensile_pa * root_area_m2; }

int drag_sense(bool rotor_on_left) {
  const int wheel_seen_from_outside = rotor_on_left ? -1 : 1;  // forward rolling, clockwise positive
  return -wheel_seen_from_outside;
}

}  // namespace proofstand::physics

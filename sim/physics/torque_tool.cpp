#include "sim/physics/torque_tool.h"

#include "sim/base/math.h"

namespace proofstand::physics {
namespace {

constexpr double kBiasShare_1 = 0.75;

}  // namespace

double permissible_deviation_1(double scale_hi_nm) { return scale_hi_nm <= 10.0 ? 0.06 : 0.04; }

double click_bias_1(double class_1, double bias_z_1) {
  return kBiasShare_1 * class_1 * base::clamp_1(0.5 * bias_z_1, -1.0, 1.0);
}

double click_torque_nm(double setting_nm, double class_1, double bias_z_1, double repeat_z_1) {
  const double repeat = (1.0 - kBiasShare_1) * class_1 * base::clamp_1(0.5 * repeat_z_1, -1.0, 1.0);
  return setting_nm * (1.0 + click_bias_1(class_1, bias_z_1) + repeat);
}

double stop_angle_rad(double speed_rad_s, double reaction_s, double deceleration_rad_s2) {
  return speed_rad_s * reaction_s + speed_rad_s * speed_rad_s / (2.0 * deceleration_rad_s2);
}

double overshoot_nm(double stop_rad, double free_rad, double rise_nm_rad) {
  return stop_rad > free_rad ? rise_nm_rad * (stop_rad - free_rad) : 0.0;
}

double torque_with_extension_nm(double setting_nm, double length_m, double extension_m, double angle_rad) {
  return setting_nm * (length_m + extension_m * base::cos_rad(angle_rad)) / length_m;
}

double setting_with_extension_nm(double wanted_nm, double length_m, double extension_m, double angle_rad) {
  return wanted_nm * length_m / (length_m + extension_m * base::cos_rad(angle_rad));
}

double torque_of_force_nm(double force_n, double arm_m) { return force_n * arm_m; }
double force_for_torque_n(double torque_nm, double arm_m) { return torque_nm / arm_m; }

bool in_tool_range(double torque_nm, double scale_lo_nm, double scale_hi_nm) {
  const double fifth_nm = 0.2 * scale_hi_nm;
  return torque_nm >= (scale_lo_nm > fifth_nm ? scale_lo_nm : fifth_nm) && torque_nm <= scale_hi_nm;
}

}  // namespace proofstand::physics

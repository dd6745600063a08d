#include "sim/physics/torque_tool.h"

#include "sim/base/assert.h"
#include "sim/base/math.h"

namespace proofstand::physics {

ToolError tool_error(double class_1, double bias_z_1, double rep_z_1) {
  STAND_ASSERT(class_1 >= 0.0 && class_1 <= 0.2);
  // both cut off so that their sum stays within the class; 2 sigma of the bias is its two thirds
  return {class_1 * base::clamp_1(bias_z_1 / 3.0, -2.0 / 3.0, 2.0 / 3.0),
          class_1 * base::clamp_1(rep_z_1 / 7.5, -1.0 / 3.0, 1.0 / 3.0)};
}

double click_torque_nm(double setting_nm, const ToolError& error) { return setting_nm * error.factor_1(); }

bool within_range(double setting_nm, double scale_lo_nm, double scale_hi_nm) {
  const double least_nm = scale_lo_nm > 0.2 * scale_hi_nm ? scale_lo_nm : 0.2 * scale_hi_nm;
  return setting_nm >= least_nm && setting_nm <= scale_hi_nm;
}

double over_pull_nm(double past_rad, double free_rad, double stiffness_nm_rad) {
  return past_rad > free_rad ? (past_rad - free_rad) * stiffness_nm_rad : 0.0;
}

double stop_after_click_rad(double rate_rad_s, double reaction_s, double braking_rad_s2) {
  STAND_ASSERT(braking_rad_s2 > 0.0);
  return rate_rad_s * reaction_s + rate_rad_s * rate_rad_s / (2.0 * braking_rad_s2);
}

double lever_torque_nm(double hand_n, double arm_m, double pull_angle_rad) {
  return hand_n * arm_m * base::sin_rad(pull_angle_rad);
}

double hand_force_n(double torque_nm, double arm_m) {
  STAND_ASSERT(arm_m > 0.0);
  return torque_nm / arm_m;
}

double torque_with_extension_nm(double setting_nm, double length_m, double extension_m, double angle_rad) {
  STAND_ASSERT(length_m > 0.0);
  return setting_nm * (length_m + extension_m * base::cos_rad(angle_rad)) / length_m;
}

double setting_for_extension_nm(double torque_nm, double length_m, double extension_m, double angle_rad) {
  return torque_nm / torque_with_extension_nm(1.0, length_m, extension_m, angle_rad);
}

double axis_torque_nm(double torque_nm, double tilt_rad) { return torque_nm * base::cos_rad(tilt_rad); }

}  // namespace proofstand::physics

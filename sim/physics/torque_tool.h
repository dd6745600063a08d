// Torque tools: what a click means, what pulling on adds, what an extension does, and force at a distance.
#pragma once

namespace proofstand::physics {

/// Permissible deviation [1] of an adjustable click tool: 6 % to 10 N·m, 4 % above. source: ISO 6789 as restated by
/// makers' manuals
double permissible_deviation_1(double scale_hi_nm);
/// Torque [N·m] at which a tool truly lets go. bias_z, repeat_z: standard normal draws; the class is read as two
/// standard deviations of bias and repeatability together (three quarters and a quarter of it) and never exceeded.
/// source: class from ISO 6789; split from memory
double click_torque_nm(double setting_nm, double class_1, double bias_z_1, double repeat_z_1);
/// The bias alone [1], within the class.
double click_bias_1(double class_1, double bias_z_1);
/// Free travel after the click [rad] before the tool bites again. source: common practice, no source (2 to 5°)
inline constexpr double kFreeAfterClick_rad = 3.0 * 3.14159265358979323846 / 180.0;

/// Angle [rad] a hand still moves after a click: speed × reaction + speed²/(2 deceleration). source: kinematics
double stop_angle_rad(double speed_rad_s, double reaction_s, double deceleration_rad_s2);
/// Torque [N·m] above the click that it reaches: what of that angle lies beyond the free travel, times the joint's rise
/// per radian.
double overshoot_nm(double stop_rad, double free_rad, double rise_nm_rad);

/// Setting [N·m] that gives a wanted torque with an extension in line or at an angle. source: lever geometry
double setting_with_extension_nm(double wanted_nm, double length_m, double extension_m, double angle_rad);
/// Torque [N·m] a setting gives with that extension.
double torque_with_extension_nm(double setting_nm, double length_m, double extension_m, double angle_rad);
/// Torque [N·m] of a force at a distance, square to the arm. source: statics
double torque_of_force_nm(double force_n, double arm_m);
/// Force [N] that a torque needs at a distance.
double force_for_torque_n(double torque_nm, double arm_m);
/// Does a torque lie in the tool's trustworthy range (a fifth of its top to its top)? source: ISO 6789 check points 20,
/// 60, 100 %
bool in_tool_range(double torque_nm, double scale_lo_nm, double scale_hi_nm);

}  // namespace proofstand::physics

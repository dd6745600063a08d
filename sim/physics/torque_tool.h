// Torque tools and levers: accuracy class, what a click tool does after its click, hand force at a distance, adapters.
#pragma once

namespace proofstand::physics {

/// Permissible deviation of adjustable click tools, relative. source: ISO 6789 (class A, up to 10 N·m and above)
inline constexpr double kToolClassSmall_1 = 0.06;
inline constexpr double kToolClassLarge_1 = 0.04;
/// Angle that a click tool turns freely after it lets go, before the torque comes back [rad]; 2 to 5 degrees.
/// common practice, no source
inline constexpr double kFreeTravel_rad = 0.0524;
/// Stiffness of a click driver and the hand on it, at the fastener [N·m/rad]. own
inline constexpr double kToolStiffness_nm_rad = 30.0;

/// A tool's error, kept inside its class whatever the draws: bias takes at most two thirds, the rest repeats.
struct ToolError {
  double bias_1 = 0.0;  ///< relative, drawn once a tool
  double rep_1 = 0.0;   ///< relative, drawn once a pull
  [[nodiscard]] double factor_1() const { return 1.0 + bias_1 + rep_1; }
};
/// class_1 [1] 0..0.2; bias_z_1, rep_z_1 standard normal draws, used within -2.5..2.5
/// source  class ISO 6789; split into bias and repeatability own
ToolError tool_error(double class_1, double bias_z_1, double rep_z_1);
/// Torque at which it lets go. setting_nm [N·m]
double click_torque_nm(double setting_nm, const ToolError& error);
/// Is this setting within the tool's good range (from a fifth of its end)? source: ISO 6789 check points
bool within_range(double setting_nm, double scale_lo_nm, double scale_hi_nm);

/// Torque past the click: free travel first, then as stiff as joint and tool are in series.
/// past_rad [rad] turned on after the click; stiffness_nm_rad of joint and tool at that torque. [N·m] added
double over_pull_nm(double past_rad, double free_rad, double stiffness_nm_rad);
/// How far a hand goes on after a click: rate x reaction + rate^2/(2 braking). [rad]
/// source  own derivation
double stop_after_click_rad(double rate_rad_s, double reaction_s, double braking_rad_s2);

/// Torque of a force at a distance, pulled at an angle to the arm (pi/2: square). [N·m]
double lever_torque_nm(double hand_n, double arm_m, double pull_angle_rad);
/// Force at a distance that gives a torque. [N]
double hand_force_n(double torque_nm, double arm_m);
/// An adapter reaching sideways from the square: torque at the fastener for a setting, and its inverse.
/// length_m [m] hand to square, extension_m [m], angle_rad 0 in line, pi/2 no change
/// source  published calculators for wrench extensions
double torque_with_extension_nm(double setting_nm, double length_m, double extension_m, double angle_rad);
double setting_for_extension_nm(double torque_nm, double length_m, double extension_m, double angle_rad);
/// Torque about the bolt's axis when the tool is tilted. [N·m]
double axis_torque_nm(double torque_nm, double tilt_rad);

/// Newtons of a pound-force and metres of an inch. source: NIST SP 811
inline constexpr double kPoundForce_n = 4.4482216152605;
inline constexpr double kInch_m = 0.0254;

}  // namespace proofstand::physics

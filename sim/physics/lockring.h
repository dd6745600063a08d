// The lockring of a splined mount: clamp from its torque, tool push-out, holding the wheel.
#pragma once

#include "sim/physics/preload.h"

namespace proofstand::physics {

/// Usual ring of the inner-spline kind. thread 30 x 1, bearing mean 34 mm: common practice, no source
inline constexpr double kRingDiameter_m = 0.030;
inline constexpr double kRingPitch_m = 0.001;
inline constexpr double kRingBearing_m = 0.034;
/// Friction of an aluminium ring on its washer, dry; 0.11 to 0.20. from memory
inline constexpr double kRingFriction_1 = 0.15;
/// Clamp below which a ring lets the rotor play [N]. common practice, no source
inline constexpr double kRingClampLeast_n = 3000.0;

/// Levers of a ring, as any bolt's. friction_1 on thread and shoulder alike
TorqueLevers ring_levers(double diameter_m, double pitch_m, double bearing_m, double friction_1);

/// A tool standing in a ring.
struct RingTool {
  double radius_m = 0.0117;
  double clearance_m = 0.0002;
  double depth_m = 0.008;
  double draft_rad = 0.01745;  ///< flank draft and wear
};
/// Rock of the tool in its spline: atan(c/h) + draft. [rad]
double ring_tool_rock_rad(const RingTool& tool);
/// Axial force that pushes it out: (T/r)(tan a - mu), not below 0. [N] source: statics
double ring_push_out_n(const RingTool& tool, double torque_nm, double friction_1);
/// Depth that needs no axial hand: c/tan(atan mu - draft). [m]
double ring_safe_depth_m(const RingTool& tool, double friction_1);
/// Pressure on the notches or splines that bear. contact_m2 [m2] of one. [Pa]
double ring_flank_pressure_pa(double torque_nm, double radius_m, double contact_m2, int bearing);
/// Force at the tyre that holds the wheel against the tool; torque that a standing wheel holds by friction.
double hold_at_tyre_n(double torque_nm, double wheel_radius_m);
double floor_hold_nm(double wheel_kg, double friction_1, double wheel_radius_m, double gravity_m_s2);

}  // namespace proofstand::physics

// The hard stop: energy, deceleration and its limits, torque asked of the rotor, distance.
#pragma once

namespace proofstand::physics {

/// Standard gravity [m/s2]. source: ISO 80000-3
inline constexpr double kGravity_m_s2 = 9.80665;
/// Speed from which stops are quoted [m/s]: 25 km/h, as in cycle test standards (EN 1476x, from memory).
inline constexpr double kStopSpeed_m_s = 25.0 / 3.6;
/// Normal force on each pad when two fingers of a median adult pull hard (160 N at the lever) [N]. from memory, through
/// hydrostatics of a 10 mm to 22 mm brake
inline constexpr double kHardPadForce_n = 3400.0;

/// Kinetic energy, rotating parts as a share of the mass. [J]
double kinetic_energy_j(double mass_kg, double speed_m_s, double rotating_1 = 0.0);
/// Deceleration at which the rear wheel lifts: g l/h, less the slope. front_m [m] axle ahead of the mass, height_m [m]
/// slope_1 [1] downhill positive
/// source  Maximal Braking on a Standard Bicycle (2005)
double pitch_limit_m_s2(double front_m, double height_m, double slope_1 = 0.0);
/// Distance to stand: v t + v^2/(2 a). [m]
double stopping_distance_m(double speed_m_s, double deceleration_m_s2, double reaction_s = 0.0);
/// Distance corrected to the specified speed: S (v_spec/v)^2. source: EN 14766 4.6.7.5.1.9
double corrected_distance_m(double measured_m, double measured_speed_m_s, double specified_speed_m_s);
/// Braking force corrected to the intended operating force. source: ISO 4210-4
double corrected_force_n(double measured_n, double operated_n, double intended_n);
/// Deceleration that a speed and a distance imply: v^2/(2 s). [m/s2]
double implied_deceleration_m_s2(double speed_m_s, double distance_m);
/// Brake torque that a deceleration asks of the front wheel: m a R. [N·m]
double torque_demand_nm(double mass_kg, double deceleration_m_s2, double wheel_radius_m);
/// Force at the tyre of a brake torque. [N]
double tyre_force_n(double torque_nm, double wheel_radius_m);

/// Everything about one hard stop.
struct HardStopSetup {
  double mass_kg = 100.0;
  double wheel_radius_m = 0.34;
  double deceleration_limit_m_s2 = 6.18;  ///< of the rider and bike: pitching over
  double tyre_friction_1 = 0.8;           ///< dry asphalt (from memory)
  double speed_m_s = kStopSpeed_m_s;
  double pad_force_n = kHardPadForce_n;
  double pad_friction_1 = 0.45;  ///< film and bedding included
  double effective_radius_m = 0.072;
};
struct HardStop {
  double torque_nm = 0.0;  ///< that the brake can give
  double demand_nm = 0.0;  ///< that reaches the joint: no more than deceleration limits allow
  double deceleration_m_s2 = 0.0;
  double distance_m = 0.0;  ///< without reaction time
  double energy_j = 0.0;
};
/// source  ordinary mechanics
HardStop hard_stop(const HardStopSetup& setup);

}  // namespace proofstand::physics

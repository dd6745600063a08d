// A rider's hard stop: what it asks of the joint, and how long it takes.
#pragma once

namespace proofstand::physics {

inline constexpr double kGravity_m_s2 = 9.80665;

/// Kinetic energy [J]; rotating share of the mass included. source: mechanics
double kinetic_energy_j(double mass_kg, double speed_m_s, double rotating_1);
/// Deceleration [m/s²] at which a bike pitches over: g l/h. source: published text on maximal braking
double pitch_limit_m_s2(double ahead_m, double height_m);
/// Brake torque [N·m] that a deceleration asks of one wheel's brake: share × m a R. source: statics
double torque_demand_nm(double mass_kg, double deceleration_m_s2, double wheel_radius_m, double share_1);
/// Deceleration [m/s²] that a brake torque gives.
double deceleration_m_s2(double torque_nm, double wheel_radius_m, double mass_kg);
/// Stopping distance [m] with a reaction time. source: kinematics
double stopping_distance_m(double speed_m_s, double deceleration_m_s2, double reaction_s);
/// Measured distance brought to the intended speed [m]. source: EN 14766 4.6.7.5.1.9
double speed_corrected_m(double distance_m, double speed_m_s, double intended_m_s);

/// What limits a stop.
struct StopCase {
  double mass_kg = 100.0;
  double wheel_radius_m = 0.34;
  double speed_m_s = 25.0 / 3.6;
  double friction_1 = 0.45;     ///< pads on the track, films included
  double pad_force_n = 2600.0;  ///< each side, at the hand's full effort (160 N lever, from memory)
  double pad_radius_m = 0.072;
  double limit_m_s2 = 6.18;  ///< pitching over
  double tyre_1 = 0.8;       ///< tyre on road (from memory)
};
struct StopResult {
  double demand_nm = 0.0;  ///< brake torque at the strongest
  double deceleration_m_s2 = 0.0;
  double distance_m = 0.0;  ///< without reaction time
  double energy_j = 0.0;
};
/// A stop with one brake. source: the functions above
StopResult stop_of(const StopCase& stop);

}  // namespace proofstand::physics

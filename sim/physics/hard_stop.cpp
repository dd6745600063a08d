#include "sim/physics/hard_stop.h"

#include "sim/physics/pad_friction.h"

namespace proofstand::physics {

double kinetic_energy_j(double mass_kg, double speed_m_s, double rotating_1) {
  return 0.5 * mass_kg * speed_m_s * speed_m_s * (1.0 + rotating_1);
}

double pitch_limit_m_s2(double ahead_m, double height_m) { return kGravity_m_s2 * ahead_m / height_m; }

double torque_demand_nm(double mass_kg, double deceleration, double wheel_radius_m, double share_1) {
  return share_1 * mass_kg * deceleration * wheel_radius_m;
}

double deceleration_m_s2(double torque_nm, double wheel_radius_m, double mass_kg) {
  return torque_nm / (wheel_radius_m * mass_kg);
}

double stopping_distance_m(double speed_m_s, double deceleration, double reaction_s) {
  return speed_m_s * reaction_s + speed_m_s * speed_m_s / (2.0 * deceleration);
}

double speed_corrected_m(double distance_m, double speed_m_s, double intended_m_s) {
  const double ratio = intended_m_s / speed_m_s;
  return distance_m * ratio * ratio;
}

StopResult stop_of(const StopCase& s) {
  const double brake_nm = brake_torque_nm(s.friction_1, s.pad_force_n, s.pad_radius_m);
  double deceleration = deceleration_m_s2(brake_nm, s.wheel_radius_m, s.mass_kg);
  if (deceleration > s.limit_m_s2) deceleration = s.limit_m_s2;
  if (deceleration > s.tyre_1 * kGravity_m_s2) deceleration = s.tyre_1 * kGravity_m_s2;
  StopResult result;
  result.deceleration_m_s2 = deceleration;
  result.demand_nm = torque_demand_nm(s.mass_kg, deceleration, s.wheel_radius_m, 1.0);
  result.distance_m = stopping_distance_m(s.speed_m_s, deceleration, 0.0);
  result.energy_j = kinetic_energy_j(s.mass_kg, s.speed_m_s, 0.02);
  return result;
}

}  // namespace proofstand::physics

#include "sim/physics/hard_stop.h"

#include "sim/base/assert.h"
#include "sim/physics/pad_friction.h"

namespace proofstand::physics {

double kinetic_energy_j(double mass_kg, double speed_m_s, double rotating_1) {
  return 0.5 * mass_kg * speed_m_s * speed_m_s * (1.0 + rotating_1);
}

double pitch_limit_m_s2(double front_m, double height_m, double slope_1) {
  STAND_ASSERT(height_m > 0.0);
  return kGravity_m_s2 * (front_m / height_m - slope_1);
}

double stopping_distance_m(double speed_m_s, double deceleration_m_s2, double reaction_s) {
  STAND_ASSERT(deceleration_m_s2 > 0.0);
  return speed_m_s * reaction_s + speed_m_s * speed_m_s / (2.0 * deceleration_m_s2);
}

double corrected_distance_m(double measured_m, double measured_speed_m_s, double specified_speed_m_s) {
  STAND_ASSERT(measured_speed_m_s > 0.0);
  const double ratio_1 = specified_speed_m_s / measured_speed_m_s;
  return measured_m * ratio_1 * ratio_1;
}

double corrected_force_n(double measured_n, double operated_n, double intended_n) {
  STAND_ASSERT(operated_n > 0.0);
  return measured_n * intended_n / operated_n;
}

double implied_deceleration_m_s2(double speed_m_s, double distance_m) {
  STAND_ASSERT(distance_m > 0.0);
  return speed_m_s * speed_m_s / (2.0 * distance_m);
}

double torque_demand_nm(double mass_kg, double deceleration_m_s2, double wheel_radius_m) {
  return mass_kg * deceleration_m_s2 * wheel_radius_m;
}

double tyre_force_n(double torque_nm, double wheel_radius_m) {
  STAND_ASSERT(wheel_radius_m > 0.0);
  return torque_nm / wheel_radius_m;
}

HardStop hard_stop(const HardStopSetup& setup) {
  STAND_ASSERT(setup.mass_kg > 0.0 && setup.pad_friction_1 > 0.0);
  HardStop stop;
  stop.torque_nm = brake_torque_nm(setup.pad_friction_1, setup.pad_force_n, setup.effective_radius_m);
  const double brake_m_s2 = tyre_force_n(stop.torque_nm, setup.wheel_radius_m) / setup.mass_kg;
  const double grip_m_s2 = setup.tyre_friction_1 * kGravity_m_s2;
  const double limit_m_s2 = grip_m_s2 < setup.deceleration_limit_m_s2 ? grip_m_s2 : setup.deceleration_limit_m_s2;
  // a rider who feels the rear lift eases off: the joint never sees more than the limits allow
  stop.deceleration_m_s2 = brake_m_s2 < limit_m_s2 ? brake_m_s2 : limit_m_s2;
  stop.demand_nm = torque_demand_nm(setup.mass_kg, stop.deceleration_m_s2, setup.wheel_radius_m);
  stop.distance_m = stopping_distance_m(setup.speed_m_s, stop.deceleration_m_s2);
  stop.energy_j = kinetic_energy_j(setup.mass_kg, setup.speed_m_s);
  return stop;
}

}  // namespace proofstand::physics

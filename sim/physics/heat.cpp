#include "sim/physics/heat.h"

#include "sim/base/math.h"

namespace proofstand::physics {

double adiabatic_rise_k(double energy_j, double share_1, double mass_kg, double heat_j_kg_k) {
  return energy_j * share_1 / (mass_kg * heat_j_kg_k);
}

DescentPower descent_power_w(double mass_kg, double slope_1, double speed_m_s, double drag_area_m2, double air_kg_m3,
                             double rolling_1, double gravity_m_s2) {
  const double gross = mass_kg * gravity_m_s2 * speed_m_s * base::sin_rad(base::atan_rad(slope_1));
  const double air = 0.5 * air_kg_m3 * drag_area_m2 * speed_m_s * speed_m_s * speed_m_s;
  return {gross, gross - air - rolling_1 * mass_kg * gravity_m_s2 * speed_m_s};
}

double lumped_rise_k(double power_w, double conductance_w_k, double capacity_j_k, double time_s) {
  return power_w / conductance_w_k * (1.0 - base::exp_1(-time_s * conductance_w_k / capacity_j_k));
}

double steady_peak_rise_k(double rise_k, double interval_s, double time_constant_s) {
  return rise_k / (1.0 - base::exp_1(-interval_s / time_constant_s));
}

double radiation_w_m2_k(double emissivity_1, double hot_k, double air_k) {
  constexpr double kStefanBoltzmann = 5.670374419e-8;
  return emissivity_1 * kStefanBoltzmann * (hot_k * hot_k + air_k * air_k) * (hot_k + air_k);
}

double disc_heat_share_1(double disc_k, double disc_rho, double disc_c, double pad_k, double pad_rho, double pad_c) {
  const double disc = base::sqrt_1(disc_k * disc_rho * disc_c);
  return disc / (disc + base::sqrt_1(pad_k * pad_rho * pad_c));
}

}  // namespace proofstand::physics

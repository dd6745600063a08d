#include "sim/physics/heat.h"

#include "sim/base/assert.h"
#include "sim/base/math.h"

namespace proofstand::physics {
namespace {

constexpr double kStefanBoltzmann_w_m2_k4 = 5.670374419e-8;

}  // namespace

double stop_rise_k(double energy_j, double share_1, double mass_kg, double heat_j_kg_k) {
  STAND_ASSERT(mass_kg > 0.0 && heat_j_kg_k > 0.0);
  return energy_j * share_1 / (mass_kg * heat_j_kg_k);
}

double lumped_rise_k(double power_w, double conductance_w_k, double capacity_j_k, double time_s) {
  STAND_ASSERT(conductance_w_k > 0.0 && capacity_j_k > 0.0);
  return power_w / conductance_w_k * (1.0 - base::exp_1(-time_s * conductance_w_k / capacity_j_k));
}

double cooled_rise_k(double rise_k, double conductance_w_k, double capacity_j_k, double time_s) {
  STAND_ASSERT(capacity_j_k > 0.0);
  return rise_k * base::exp_1(-time_s * conductance_w_k / capacity_j_k);
}

double repeated_stops_rise_k(double stop_rise_k, double interval_s, double time_constant_s) {
  STAND_ASSERT(interval_s > 0.0 && time_constant_s > 0.0);
  return stop_rise_k / (1.0 - base::exp_1(-interval_s / time_constant_s));
}

DescentPower descent_power(double mass_kg, double slope_1, double speed_m_s, double drag_area_m2, double air_kg_m3,
                           double rolling_1, double gravity_m_s2) {
  const double sine_1 = slope_1 / base::sqrt_1(1.0 + slope_1 * slope_1);
  DescentPower power;
  power.gross_w = mass_kg * gravity_m_s2 * speed_m_s * sine_1;
  power.net_w = power.gross_w - 0.5 * air_kg_m3 * drag_area_m2 * speed_m_s * speed_m_s * speed_m_s -
                rolling_1 * mass_kg * gravity_m_s2 * speed_m_s;
  return power;
}

double biot_1(double transfer_w_m2_k, double half_thickness_m, double conductivity_w_m_k) {
  STAND_ASSERT(conductivity_w_m_k > 0.0);
  return transfer_w_m2_k * half_thickness_m / conductivity_w_m_k;
}

double fourier_1(double conductivity_w_m_k, double density_kg_m3, double heat_j_kg_k, double half_thickness_m,
                 double time_s) {
  STAND_ASSERT(half_thickness_m > 0.0);
  return conductivity_w_m_k / (density_kg_m3 * heat_j_kg_k) * time_s / (half_thickness_m * half_thickness_m);
}

double plate_convection_w_m2_k(double speed_m_s, double length_m, double viscosity_m2_s, double prandtl_1,
                               double air_conductivity_w_m_k) {
  STAND_ASSERT(speed_m_s > 0.0 && length_m > 0.0 && viscosity_m2_s > 0.0);
  const double reynolds_1 = speed_m_s * length_m / viscosity_m2_s;
  const double nusselt_1 = 0.664 * base::sqrt_1(reynolds_1) * base::pow_1(prandtl_1, 1.0 / 3.0);
  return nusselt_1 * air_conductivity_w_m_k / length_m;
}

double radiation_w_m2_k(double emissivity_1, double hot_k, double around_k) {
  return emissivity_1 * kStefanBoltzmann_w_m2_k4 * (hot_k * hot_k + around_k * around_k) * (hot_k + around_k);
}

double heat_share_1(double disc_effusivity_si, double pad_effusivity_si) {
  return disc_effusivity_si / (disc_effusivity_si + pad_effusivity_si);
}

}  // namespace proofstand::physics

// Heat of braking: a lumped rotor that warms and cools.
#pragma once

namespace proofstand::physics {

/// Temperature rise [K] of a rotor that takes all of an energy at once.
double adiabatic_rise_k(double energy_j, double share_1, double mass_kg, double heat_j_kg_k);
/// Power [W] of braking down a slope at constant speed: gross m g v sin, and net of air and rolling.
struct DescentPower {
  double gross_w = 0.0;
  double net_w = 0.0;
};
DescentPower descent_power_w(double mass_kg, double slope_1, double speed_m_s, double drag_area_m2, double air_kg_m3,
                             double rolling_1, double gravity_m_s2);
/// Rise above the air [K] after a time of constant power: P/G (1 − exp(−t G/C)). source: first-order cooling
double lumped_rise_k(double power_w, double conductance_w_k, double capacity_j_k, double time_s);
/// Peak rise [K] that repeated stops settle at: dT/(1 − exp(−t/τ)). source: geometric series
double steady_peak_rise_k(double rise_k, double interval_s, double time_constant_s);
/// Radiation as a coefficient [W/(m² K)]. source: Stefan-Boltzmann
double radiation_w_m2_k(double emissivity_1, double hot_k, double air_k);
/// Share of the heat that goes into the disc. source: contact of two half-spaces (Charron form)
double disc_heat_share_1(double disc_k, double disc_rho, double disc_c, double pad_k, double pad_rho, double pad_c);

}  // namespace proofstand::physics

// Heat of braking: rise by one stop, lumped heating and cooling, what the air takes, share of the rotor.
#pragma once

namespace proofstand::physics {

/// Rise of a rotor that takes this share of the energy at once. [K]
double stop_rise_k(double energy_j, double share_1, double mass_kg, double heat_j_kg_k);
/// Lumped rotor under steady power: rise over ambient after a time, from no rise. [K]
/// power_w [W] into the rotor, conductance_w_k [W/K], capacity_j_k [J/K]
/// valid   Biot number well below 0.1 and stops longer than a second
double lumped_rise_k(double power_w, double conductance_w_k, double capacity_j_k, double time_s);
/// Rise left after cooling for a time. [K] source: Newton's law of cooling
double cooled_rise_k(double rise_k, double conductance_w_k, double capacity_j_k, double time_s);
/// Peak rise that equal stops at equal intervals tend to: dT/(1 - exp(-interval/tau)). [K]
double repeated_stops_rise_k(double stop_rise_k, double interval_s, double time_constant_s);
/// Power of a descent: gross (without drag) and net of air and rolling. [W]
struct DescentPower {
  double gross_w = 0.0;
  double net_w = 0.0;
};
/// slope_1 [1] rise over run; drag_area_m2, air_kg_m3, rolling_1, gravity_m_s2. source: ordinary mechanics
DescentPower descent_power(double mass_kg, double slope_1, double speed_m_s, double drag_area_m2, double air_kg_m3,
                           double rolling_1, double gravity_m_s2);
/// Biot and Fourier numbers of half the thickness. conductivity_w_m_k as W/(m K)
double biot_1(double transfer_w_m2_k, double half_thickness_m, double conductivity_w_m_k);
double fourier_1(double conductivity_w_m_k, double density_kg_m3, double heat_j_kg_k, double half_thickness_m,
                 double time_s);
/// Heat transfer of a laminar plate: Nu = 0.664 Re^0.5 Pr^(1/3). [W/(m2 K)], valid Re < 5e5
/// source  ordinary heat transfer (from memory)
double plate_convection_w_m2_k(double speed_m_s, double length_m, double viscosity_m2_s, double prandtl_1,
                               double air_conductivity_w_m_k);
/// Radiation as a coefficient: eps sigma (T^2 + Ta^2)(T + Ta). temperatures in K. [W/(m2 K)]
double radiation_w_m2_k(double emissivity_1, double hot_k, double around_k);
/// Share of the heat that the disc takes, by the effusivities sqrt(k rho c) of disc and pad. [1]
/// source  contact of two half spaces (from memory)
double heat_share_1(double disc_effusivity_si, double pad_effusivity_si);

}  // namespace proofstand::physics

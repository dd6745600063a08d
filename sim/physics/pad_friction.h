// Pads on a track: torque, friction with films and bedding, effective radius, heat fade.
#pragma once

namespace proofstand::physics {

/// Brake torque [N·m] of a pad force [N] on each side. source: T = 2 µ F r, disc-brake textbook form
double brake_torque_nm(double friction_1, double pad_force_n, double radius_m);
/// Effective radius [m] by uniform wear (run-in pads): the mean. source: published handbook abstract
double effective_radius_wear_m(double outer_m, double inner_m);
/// By uniform pressure (new pads). source: the same
double effective_radius_pressure_m(double outer_m, double inner_m);
/// Friction after braking energy [J] has bedded the pads: µ∞ − (µ∞ − µ0) exp(−E/Eb). source: shape from pad run-in
/// studies; constants common practice, no source (organic 0.25 → 0.45, 11 kJ)
double bedded_friction_1(double new_1, double bedded_1, double energy_j, double bedding_j);
inline constexpr double kBeddingEnergy_j = 11000.0;
/// Friction with a film over a share of the track. source: weighted mean
double filmed_friction_1(double friction_1, double covered_1, double film_factor_1);
/// Fade with temperature [K above freezing as °C]: 1 − k (T − T1), not below a half. source: from memory
double fade_1(double temperature_c, double from_c, double per_k);
/// Film left after n wipes of an efficiency. source: geometric decay (common practice, no source)
double wiped_share_1(double efficiency_1, int wipes);

}  // namespace proofstand::physics

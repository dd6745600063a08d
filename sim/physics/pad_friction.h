// Friction of pads on the track, by kind, bedding, heat, water and film; brake torque from it.
#pragma once

#include <string_view>

namespace proofstand::physics {

enum class PadKind : unsigned char { Organic, Sintered };

/// Figures of a pad kind.
struct PadRow {
  double bedded_1 = 0.45;
  double fresh_1 = 0.25;
  double bedding_energy_j = 11e3;
  double wet_1 = 0.5;     ///< factor when soaked with water
  double oiled_1 = 0.35;  ///< factor under a full oil film
  double fade_from_k = 473.15;
  double fade_1_k = 0.0015;  ///< loss a kelvin beyond
};
/// source  bedded from memory (a published dynamometer study finds organic pads higher than sintered); bedding common
///         practice, no source; wet published pad studies; oil and fade from memory
PadRow pad_row(PadKind kind);

/// Friction after so much braking energy: mu_inf - (mu_inf - mu_0) exp(-E/E_b). [1]
/// source  shape: published car-pad studies; constants common practice, no source
double bedding_friction_1(double fresh_1, double bedded_1, double energy_j, double bedding_energy_j);
/// Fade factor: 1 - k (T - T_1), not below 0.5. temperature_k [K]. source: from memory
double fade_factor_1(const PadRow& pad, double temperature_k);
/// Water: 1 - (1 - f) W; W decays with braking energy. wetness_1 [1] 0..1. source: published wet pad studies (factor)
double water_factor_1(const PadRow& pad, double wetness_1);
double wetness_after_1(double wetness_1, double energy_j, double drying_energy_j);
/// Film: 1 - A (1 - f). covered_1, film_1 [1] 0..1
double film_factor_1(double covered_1, double film_1);

/// Effective radius of a ring pad: run-in pads (uniform wear) and new ones (uniform pressure). [m]
/// source  ordinary disc brake theory
double effective_radius_worn_m(double outer_m, double inner_m);
double effective_radius_new_m(double outer_m, double inner_m);
/// Torque of two pads: 2 mu F r. [N·m]
double brake_torque_nm(double friction_1, double pad_force_n, double radius_m);

}  // namespace proofstand::physics

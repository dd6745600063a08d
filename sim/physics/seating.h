// How a rotor lies on its seat: gaps under the bosses, what tightening closes, what order freezes in.
#pragma once

#include <cstddef>
#include <vector>

namespace proofstand::physics {

/// A plane against the seat: height = x cos φ + y sin φ per metre of radius, at angle φ.
struct SeatTilt {
  double x_1 = 0.0;
  double y_1 = 0.0;
};

/// Force per metre [N/m] that bends the clamped carrier onto one boss. source: own finite-element result (from memory),
/// 6 to 8 kN/mm
inline constexpr double kSeatStiffness_n_m = 7.0e6;
/// Share of a cocked rotor's gap that stays when its first bolt is pulled to full torque at once. source: common
/// practice, no source
inline constexpr double kFrozenShare_1 = 0.30;
/// Elastic seat against a rigid one: fitted to the contact model's runout from dirt. source: own finite-element result
/// (from memory)
inline constexpr double kSeatElastic_1 = 0.83;

/// Tilt that heights under the bosses give, as the best plane through them times kappa (1: rigid).
/// heights_m [n] per boss, equally spaced from angle 0; radius_m of their circle · source: least-squares plane
SeatTilt tilt_of_heights(const std::vector<double>& heights_m, double radius_m, double kappa_1);
/// Length of a tilt vector [rad], small angles.
double tilt_size_rad(SeatTilt tilt);
/// Clamp between rotor and seat [N] at a bolt whose gap was bent shut: F − k g, not below 0. source: own model (from
/// memory)
double interface_clamp_n(double preload_n, double gap_m);
/// Gap [m] left at a boss under a bolt's preload: what bending by the bolt does not close.
double gap_under_n(double gap_m, double preload_n);

/// One step of closing a cocked rotor: the share of the initial gap still open after a pull to `torque_share` of full
/// torque on one bolt, when the least-tight of the others stands at `others_share`. Going up together closes it all;
/// one bolt alone to full torque freezes kFrozenShare_1. returns [1] 0..1, never more than `open_before`. source: own
/// model of the trade's rule (from memory): friction under a tight head holds what is not yet closed
double cocked_open_1(double open_before, double torque_share, double others_share);

}  // namespace proofstand::physics

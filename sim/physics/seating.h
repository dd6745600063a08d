// How a rotor lies on its bosses: gaps, tilt, closing while tightening, clamp at the interface, what freezes in. The
// number of bosses is a parameter; they stand on a circle, the first at angle 0.
#pragma once

#include <vector>

namespace proofstand::physics {

/// Force that pushes a clamped rotor off one boss by a metre [N/m]. source: own finite-element result, 6.2 to 8.1e6
inline constexpr double kSeatStiffness_n_m = 7e6;
/// Share of a tilt gap that stays when one bolt goes straight to torque on a rotor that is not seated.
/// common practice, no source
inline constexpr double kFrozenShare_1 = 0.30;
/// Elastic plate against rigid disc: how much of the plane fit's tilt reaches the track. source: own finite-element
/// result
inline constexpr double kTiltGain_1 = 0.83;

/// Small tilt of a plane: its slopes along x and y. Height at (r, a) = offset + r (x cos a + y sin a).
struct Tilt {
  double x_1 = 0.0;
  double y_1 = 0.0;
  double offset_m = 0.0;
  [[nodiscard]] double size_rad() const;
  [[nodiscard]] double height_m(double radius_m, double angle_rad) const;
};

/// Least-squares plane through heights on the bosses: what a thin rotor does under all bolts tight.
/// height_m        [m], one a boss
/// boss_radius_m   [m] > 0
/// source          ordinary least squares
Tilt fit_tilt(const std::vector<double>& height_m, double boss_radius_m);
/// The plane a rigid rotor comes to rest on when pressed at one point: the least plane above all heights whose contact
/// triangle holds that point; ties by boss number.
/// press_angle_rad  where it is pressed, on the boss circle
/// source           own derivation
Tilt resting_tilt(const std::vector<double>& height_m, double boss_radius_m, double press_angle_rad);

/// Gaps between rotor and bosses: plane less height, never below 0. [m]
std::vector<double> boss_gaps_m(const std::vector<double>& height_m, double boss_radius_m, const Tilt& plane);

/// One pull at one bolt closes its gap: by the others' state a part stays.
/// gap_m            [m] at this boss before the pull
/// preload_n        [N] at the end of the pull
/// others_tight     does any other bolt already hold the rotor?
/// straight_1       [1] 0..1: were the others pulled in one go (1) or in small steps (0)?
/// returns          [m] gap left
/// source           closing force kSeatStiffness; frozen share common practice, no source
double gap_after_pull_m(double gap_m, double preload_n, bool others_tight, double straight_1);
/// Clamp between rotor and boss: preload less what still bends the rotor down. [N] >= 0
/// bend_m  [m] how far the rotor is bent down at this boss
double interface_clamp_n(double preload_n, double bend_m);
/// Tilt of a rotor that hangs on its register. gap_m [m] at the far side, across_m [m] width of the seat
double cocked_tilt_rad(double gap_m, double across_m);

}  // namespace proofstand::physics

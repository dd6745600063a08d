// Mathematical functions of our own: the same bits with every compiler and machine, unlike the platform's.
// Only + - * / sqrt floor ceil fmod and comparisons are used below these names.
#pragma once

namespace proofstand::base {

inline constexpr double kPi = 3.14159265358979323846;
inline constexpr double kTwoPi = 6.28318530717958647693;

/// Degrees to radians, exact to one rounding.
constexpr double radians(double degrees) { return degrees * (kPi / 180.0); }
/// Radians to degrees, exact to one rounding.
constexpr double degrees(double angle_rad) { return angle_rad * (180.0 / kPi); }

/// angle_rad [rad] |x| <= 1e6 · returns [1] · absolute error below 1e-15 + 1e-16 |x|
double sin_rad(double angle_rad);
/// angle_rad [rad] |x| <= 1e6 · returns [1] · absolute error below 1e-15 + 1e-16 |x|
double cos_rad(double angle_rad);
/// angle_rad [rad] away from odd multiples of pi/2 · returns [1]
double tan_rad(double angle_rad);
/// ratio_1 any · returns [rad] -pi/2..pi/2 · absolute error below 1e-15
double atan_rad(double ratio_1);
/// returns [rad] -pi..pi, the direction of (x, y); 0 at the origin
double atan2_rad(double y_1, double x_1);
/// cosine_1 [1] clamped to -1..1 · returns [rad] 0..pi
double acos_rad(double cosine_1);
/// exponent_1 any · returns [1], 0 below -745, largest finite double above 709 · relative error below 4e-16
double exp_1(double exponent_1);
/// value_1 > 0 (asserted) · returns [1] · absolute error below 1e-15 (1 + |result|)
double log_1(double value_1);
/// base_1 > 0 · returns base to the power of the exponent · relative error below 1e-15 + 5e-16 |ln result|, for
/// results within 1e-100..1e100
double pow_1(double base_1, double exponent_1);
/// Square root, correctly rounded on every platform (IEEE 754).
double sqrt_1(double value_1);
/// Remainder of angle_rad in 0 <= r < 2 pi.
double wrap_two_pi(double angle_rad);
/// value in lo..hi
constexpr double clamp_1(double value_1, double lo_1, double hi_1) {
  return value_1 < lo_1 ? lo_1 : (value_1 > hi_1 ? hi_1 : value_1);
}

}  // namespace proofstand::base

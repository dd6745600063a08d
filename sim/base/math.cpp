#include "sim/base/math.h"

#include <cmath>
#include <cstdint>
#include <cstring>

#include "sim/base/assert.h"

namespace proofstand::base {
namespace {

// pi/2 in three pieces: the first two have so few bits that k times each is exact for |k| < 2^20
constexpr double kHalfPiA = 1.5707963267341256;      // 33 bits
constexpr double kHalfPiB = 6.0771005065061922e-11;  // the next 53
constexpr double kTwoOverPi = 0.63661977236758134308;

struct Reduced {
  double rest_rad;       // -pi/4 .. pi/4
  std::int64_t quarter;  // 0..3
};

Reduced reduce(double x) {
  const double k = std::floor(x * kTwoOverPi + 0.5);
  const double rest = (x - k * kHalfPiA) - k * kHalfPiB;
  std::int64_t quarter = static_cast<std::int64_t>(k) % 4;
  if (quarter < 0) quarter += 4;
  return {rest, quarter};
}

// Taylor series; the next term is below 1e-17 at pi/4
double sin_small(double x) {
  const double z = x * x;
  double p = -1.0 / 1307674368000.0;
  p = p * z + 1.0 / 6227020800.0;
  p = p * z - 1.0 / 39916800.0;
  p = p * z + 1.0 / 362880.0;
  p = p * z - 1.0 / 5040.0;
  p = p * z + 1.0 / 120.0;
  p = p * z - 1.0 / 6.0;
  return x + x * z * p;
}

double cos_small(double x) {
  const double z = x * x;
  double p = 1.0 / 20922789888000.0;
  p = p * z - 1.0 / 87178291200.0;
  p = p * z + 1.0 / 479001600.0;
  p = p * z - 1.0 / 3628800.0;
  p = p * z + 1.0 / 40320.0;
  p = p * z - 1.0 / 720.0;
  p = p * z + 1.0 / 24.0;
  p = p * z - 0.5;
  return 1.0 + z * p;
}

double bits_to_double(std::uint64_t bits) {
  double value = 0.0;
  std::memcpy(&value, &bits, sizeof value);
  return value;
}

std::uint64_t double_to_bits(double value) {
  std::uint64_t bits = 0;
  std::memcpy(&bits, &value, sizeof bits);
  return bits;
}

// 2^n for -1022 <= n <= 1023
double power_of_two(std::int64_t n) { return bits_to_double(static_cast<std::uint64_t>(n + 1023) << 52); }

constexpr double kLn2A = 6.93147180369123816490e-1;  // high bits of ln 2, so that k times it is exact
constexpr double kLn2B = 1.90821492927058770002e-10;

}  // namespace

double sqrt_1(double value_1) { return std::sqrt(value_1); }

double sin_rad(double angle_rad) {
  const Reduced r = reduce(angle_rad);
  switch (r.quarter) {
    case 0:
      return sin_small(r.rest_rad);
    case 1:
      return cos_small(r.rest_rad);
    case 2:
      return -sin_small(r.rest_rad);
    default:
      return -cos_small(r.rest_rad);
  }
}

double cos_rad(double angle_rad) {
  const Reduced r = reduce(angle_rad);
  switch (r.quarter) {
    case 0:
      return cos_small(r.rest_rad);
    case 1:
      return -sin_small(r.rest_rad);
    case 2:
      return -cos_small(r.rest_rad);
    default:
      return sin_small(r.rest_rad);
  }
}

double tan_rad(double angle_rad) { return sin_rad(angle_rad) / cos_rad(angle_rad); }

double atan_rad(double ratio_1) {
  const bool negative = ratio_1 < 0.0;
  double x = negative ? -ratio_1 : ratio_1;
  const bool inverted = x > 1.0;
  if (inverted) x = 1.0 / x;
  // the nearest of nine known angles is taken out, so that the series runs on |t| < 0.063
  const double k = std::floor(x * 8.0 + 0.5);
  const double c = k / 8.0;
  static constexpr double kKnown[9] = {0.0,
                                       0.12435499454676143503,
                                       0.24497866312686415417,
                                       0.35877067027057222040,
                                       0.46364760900080611621,
                                       0.55859931534356243598,
                                       0.64350110879328438680,
                                       0.71882999962162450542,
                                       0.78539816339744830962};
  const double t = (x - c) / (1.0 + x * c);
  const double z = t * t;
  double p = -1.0 / 15.0;
  p = p * z + 1.0 / 13.0;
  p = p * z - 1.0 / 11.0;
  p = p * z + 1.0 / 9.0;
  p = p * z - 1.0 / 7.0;
  p = p * z + 1.0 / 5.0;
  p = p * z - 1.0 / 3.0;
  double angle = kKnown[static_cast<int>(k)] + (t + t * z * p);
  if (inverted) angle = 0.5 * kPi - angle;
  return negative ? -angle : angle;
}

double atan2_rad(double y_1, double x_1) {
  if (x_1 > 0.0) return atan_rad(y_1 / x_1);
  if (x_1 < 0.0) return y_1 >= 0.0 ? atan_rad(y_1 / x_1) + kPi : atan_rad(y_1 / x_1) - kPi;
  if (y_1 > 0.0) return 0.5 * kPi;
  return y_1 < 0.0 ? -0.5 * kPi : 0.0;
}

double acos_rad(double cosine_1) {
  const double c = clamp_1(cosine_1, -1.0, 1.0);
  return atan2_rad(std::sqrt((1.0 - c) * (1.0 + c)), c);
}

double exp_1(double exponent_1) {
  if (exponent_1 < -745.0) return 0.0;
  if (exponent_1 > 709.0) return 1.7976931348623157e308;
  const double k = std::floor(exponent_1 * 1.4426950408889634 + 0.5);
  const double r = (exponent_1 - k * kLn2A) - k * kLn2B;  // |r| <= 0.347
  double p = 1.0;
  for (int i = 14; i >= 1; --i) p = 1.0 + r * p / i;
  const std::int64_t n = static_cast<std::int64_t>(k);
  if (n < -1022) return p * power_of_two(n + 200) * power_of_two(-200);
  if (n > 1023) return p * power_of_two(1023) * 2.0;
  return p * power_of_two(n);
}

double log_1(double value_1) {
  STAND_ASSERT(value_1 > 0.0);
  double x = value_1;
  std::int64_t n = 0;
  if (x < 2.2250738585072014e-308) {  // subnormal
    x *= power_of_two(60);
    n -= 60;
  }
  const std::uint64_t bits = double_to_bits(x);
  n += static_cast<std::int64_t>(bits >> 52) - 1023;
  double m = bits_to_double((bits & 0xFFFFFFFFFFFFFULL) | (1023ULL << 52));  // 1 <= m < 2
  if (m > 1.4142135623730951) {
    m *= 0.5;
    n += 1;
  }
  // log m = 2 artanh(s), |s| <= 0.1716
  const double s = (m - 1.0) / (m + 1.0);
  const double z = s * s;
  double p = 0.0;
  for (int i = 21; i >= 3; i -= 2) p = z * (p + 1.0 / i);
  const double k = static_cast<double>(n);
  return k * kLn2A + (k * kLn2B + 2.0 * (s + s * p));
}

double pow_1(double base_1, double exponent_1) {
  STAND_ASSERT(base_1 > 0.0);
  return exp_1(exponent_1 * log_1(base_1));
}

double wrap_two_pi(double angle_rad) {
  double r = std::fmod(angle_rad, kTwoPi);
  if (r < 0.0) r += kTwoPi;
  return r >= kTwoPi ? 0.0 : r;
}

}  // namespace proofstand::base

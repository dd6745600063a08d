#include "sim/physics/hand_strength.h"

#include <array>

#include "sim/base/assert.h"
#include "sim/base/math.h"

namespace proofstand::physics {
namespace {

// in the order of HandEffort
constexpr std::array<EffortRow, kHandEffortCount> kRows = {{
    {120.0, 231.0, 342.0},
    {2.5, 4.5, 7.5},
    {25.0, 50.0, 90.0},
    {0.11, 0.22, 0.40},
    {45.0, 80.0, 140.0},
    {55.0, 100.0, 165.0},
    {120.0, 250.0, 430.0},
    {5.0, 8.0, 12.0},
    {40.0, 110.0, 220.0},
}};
constexpr double kZ95_1 = 1.6448536269514722;

}  // namespace

EffortRow effort_row(HandEffort effort) { return kRows[static_cast<std::size_t>(effort)]; }

double effort_at_si(HandEffort effort, double percentile_1) {
  STAND_ASSERT(percentile_1 >= 0.01 && percentile_1 <= 0.99);
  const EffortRow row = effort_row(effort);
  const double z_1 = normal_quantile_1(percentile_1);
  const double end_1 = z_1 < 0.0 ? row.middle_si / row.low_si : row.high_si / row.middle_si;
  return row.middle_si * base::pow_1(end_1, z_1 / kZ95_1);
}

double normal_quantile_1(double share_1) {
  STAND_ASSERT(share_1 > 0.0 && share_1 < 1.0);
  const double tail_1 = share_1 < 0.5 ? share_1 : 1.0 - share_1;
  if (tail_1 >= 0.5) return 0.0;
  const double t = base::sqrt_1(-2.0 * base::log_1(tail_1));
  const double z_1 =
      t - (2.515517 + t * (0.802853 + t * 0.010328)) / (1.0 + t * (1.432788 + t * (0.189269 + t * 0.001308)));
  return share_1 < 0.5 ? -z_1 : z_1;
}

double normal_percentile_si(double mean_si, double deviation_si, double share_1) {
  return mean_si + deviation_si * normal_quantile_1(share_1);
}

double finger_torque_nm(double pinch_n, double friction_1, double diameter_m) {
  return friction_1 * pinch_n * diameter_m;
}

double tremor_m(double acceleration_m_s2, double frequency_hz) {
  STAND_ASSERT(frequency_hz > 0.0);
  const double rate_rad_s = base::kTwoPi * frequency_hz;
  return acceleration_m_s2 / (rate_rad_s * rate_rad_s);
}

double force_error_n(double force_n) { return 0.3 + 0.03 * (force_n < 0.0 ? -force_n : force_n); }

}  // namespace proofstand::physics

#include "sim/physics/hand_strength.h"

#include <array>

#include "sim/base/math.h"

namespace proofstand::physics {

Percentiles effort_percentiles(Effort effort) {
  static constexpr std::array<Percentiles, 11> rows = {{
      {0.11, 0.22, 0.40},
      {0.06, 0.11, 0.20},
      {0.5, 0.9, 1.5},
      {2.5, 4.5, 7.5},
      {6.0, 10.0, 15.0},
      {5.0, 9.0, 15.0},
      {1.3, 2.4, 4.0},
      {45.0, 80.0, 140.0},
      {60.0, 100.0, 170.0},
      {35.0, 60.0, 105.0},
      {17.0, 30.0, 50.0},
  }};
  return rows[static_cast<std::size_t>(effort)];
}

double effort_at(Effort effort, double percentile_1) {
  const Percentiles row = effort_percentiles(effort);
  const double p = base::clamp_1(percentile_1, 0.05, 0.95);
  if (p <= 0.5) return row.p5 + (row.p50 - row.p5) * (p - 0.05) / 0.45;
  return row.p50 + (row.p95 - row.p50) * (p - 0.5) / 0.45;
}

double normal_percentile(double mean, double deviation, double z_1) { return mean + z_1 * deviation; }

double pinch_torque_nm(double friction_1, double pinch_n, double diameter_m) {
  return friction_1 * pinch_n * diameter_m;
}

double tremor_amplitude_m(double acceleration_m_s2, double frequency_hz) {
  const double omega = base::kTwoPi * frequency_hz;
  return acceleration_m_s2 / (omega * omega);
}

}  // namespace proofstand::physics

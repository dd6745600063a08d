#include "sim/physics/seating.h"

#include "sim/base/math.h"

namespace proofstand::physics {

SeatTilt tilt_of_heights(const std::vector<double>& heights_m, double radius_m, double kappa_1) {
  SeatTilt tilt;
  const std::size_t n = heights_m.size();
  if (n == 0) return tilt;
  for (std::size_t i = 0; i < n; ++i) {
    const double angle = base::kTwoPi * static_cast<double>(i) / static_cast<double>(n);
    tilt.x_1 += heights_m[i] * base::cos_rad(angle);
    tilt.y_1 += heights_m[i] * base::sin_rad(angle);
  }
  const double scale = kappa_1 * 2.0 / (static_cast<double>(n) * radius_m);
  tilt.x_1 *= scale;
  tilt.y_1 *= scale;
  return tilt;
}

double tilt_size_rad(SeatTilt tilt) { return base::sqrt_1(tilt.x_1 * tilt.x_1 + tilt.y_1 * tilt.y_1); }

double interface_clamp_n(double preload_n, double gap_m) {
  const double clamp = preload_n - kSeatStiffness_n_m * gap_m;
  return clamp > 0.0 ? clamp : 0.0;
}

double gap_under_n(double gap_m, double preload_n) {
  const double left = gap_m - preload_n / kSeatStiffness_n_m;
  return left > 0.0 ? left : 0.0;
}

double cocked_open_1(double open_before, double torque_share, double others_share) {
  const double share = base::clamp_1(torque_share, 0.0, 1.0);
  const double lag = base::clamp_1(share - others_share, 0.0, 1.0);
  // what the others' lag lets the first tight head hold open
  const double held = kFrozenShare_1 * base::clamp_1((lag - 0.6) / 0.4, 0.0, 1.0);
  const double closing = 1.0 - base::clamp_1(share / 0.3, 0.0, 1.0);
  const double open = held > closing ? held : closing;
  return open < open_before ? open : open_before;
}

}  // namespace proofstand::physics

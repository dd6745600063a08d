#include "sim/physics/instrument.h"

#include <cmath>

#include "sim/base/assert.h"
#include "sim/base/math.h"

namespace proofstand::physics {
namespace {

// a line is uncovered when it is reached within a hundredth of a micrometre
constexpr double kReached_m = 1e-8;

}  // namespace

double quantise_m(double value_m, double step_m) {
  STAND_ASSERT(step_m > 0.0);
  return std::floor(value_m / step_m + 0.5) * step_m;
}

double shown_m(double true_m, double zero_error_m, double other_error_m, double resolution_m) {
  return quantise_m(true_m + zero_error_m + other_error_m, resolution_m);
}

double abbe_error_m(double offset_m, double tilt_rad) { return offset_m * base::tan_rad(tilt_rad); }

double squeeze_error_m(double squeeze_1) { return 0.00003 * base::clamp_1(squeeze_1, 0.0, 1.0); }

MicrometerScale micrometer_scale(double shown_m) {
  constexpr double kHalf_m = 0.0005;
  MicrometerScale scale;
  scale.sleeve_m = std::floor((shown_m + kReached_m) / kHalf_m) * kHalf_m;
  scale.thimble_1 = (shown_m - scale.sleeve_m) / 0.00001;
  scale.turn_rad = shown_m / kHalf_m * base::kTwoPi;
  return scale;
}

VernierScale vernier_scale(double shown_m, double step_m) {
  STAND_ASSERT(step_m > 0.0);
  VernierScale scale;
  scale.main_m = std::floor((shown_m + kReached_m) / 0.001) * 0.001;
  scale.line = static_cast<int>(std::floor((shown_m - scale.main_m) / step_m + 0.5));
  const int whole = static_cast<int>(std::floor(0.001 / step_m + 0.5));
  if (scale.line >= whole) {
    scale.main_m += 0.001;
    scale.line = 0;
  }
  return scale;
}

double dial_hand_rad(double shown_m) { return base::wrap_two_pi(shown_m / 0.001 * base::kTwoPi); }

}  // namespace proofstand::physics

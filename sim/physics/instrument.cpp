#include "sim/physics/instrument.h"

#include <cmath>

#include "sim/base/math.h"

namespace proofstand::physics {

double quantised(double value, double step) { return step > 0.0 ? std::floor(value / step + 0.5) * step : value; }

double reading_m(double true_m, double zero_error_m, double squeeze_m, double resolution_m) {
  return quantised(true_m + zero_error_m + squeeze_m, resolution_m);
}

double abbe_error_m(double offset_m, double play_rad) { return offset_m * base::tan_rad(play_rad); }

bool proven_above(double reading, double uncertainty_m, double limit_m) {
  // 1.53 less 0.02 is 1.51: equal decimals must compare equal
  return reading - uncertainty_m >= limit_m - 1e-12;
}

MicrometerScale micrometer_scale(double reading) {
  const double half = std::floor(reading / 0.0005 + 1e-9);
  return {half * 0.0005, (reading - half * 0.0005) / 0.00001, reading / 0.0005};
}

VernierScale vernier_scale(double reading, double division_m, double spacing_m) {
  const double whole = std::floor(reading / 0.001 + 1e-9) * 0.001;
  const int line = static_cast<int>(std::floor((reading - whole) / division_m + 0.5));
  return {line, reading + line * spacing_m};
}

double dial_pointer_rad(double reading) { return base::kTwoPi * reading / 0.001; }

}  // namespace proofstand::physics

#include "sim/physics/thread_shear.h"

#include "sim/base/math.h"

namespace proofstand::physics {
namespace {

constexpr double kTan30 = 0.5773502691896258;

}  // namespace

double internal_shear_area_m2(const ThreadLimits& t, double engagement_m) {
  return base::kPi / t.pitch_m * engagement_m * t.external_major_min_m *
         (0.5 * t.pitch_m + kTan30 * (t.external_major_min_m - t.internal_pitch_max_m));
}

double external_shear_area_m2(const ThreadLimits& t, double engagement_m) {
  return base::kPi / t.pitch_m * engagement_m * t.internal_minor_max_m *
         (0.5 * t.pitch_m + kTan30 * (t.external_pitch_min_m - t.internal_minor_max_m));
}

SimpleShearAreas simple_shear_areas(Thread thread, double engagement_m) {
  const double around_m = base::kPi * thread_geometry(thread).pitch_diameter_m * engagement_m;
  return {0.75 * around_m, 0.625 * around_m, 0.5 * around_m};
}

double hub_strip_load_n(const ThreadLimits& limits, double engagement_m, double shear_pa, double strength_1) {
  return engagement_m <= 0.0 ? 0.0 : shear_pa * internal_shear_area_m2(limits, engagement_m) * strength_1;
}

}  // namespace proofstand::physics

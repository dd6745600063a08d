#include "sim/physics/thread_shear.h"

#include "sim/base/assert.h"
#include "sim/base/math.h"

namespace proofstand::physics {
namespace {

constexpr double kTan30_1 = 0.57735026918962573;

}  // namespace

double internal_shear_area_m2(const ThreadLimits& limits, double pitch_m, double engaged_m) {
  STAND_ASSERT(pitch_m > 0.0 && engaged_m >= 0.0);
  return base::kPi / pitch_m * engaged_m * limits.external_major_min_m *
         (pitch_m / 2.0 + kTan30_1 * (limits.external_major_min_m - limits.internal_pitch_max_m));
}

double external_shear_area_m2(const ThreadLimits& limits, double pitch_m, double engaged_m) {
  STAND_ASSERT(pitch_m > 0.0 && engaged_m >= 0.0);
  return base::kPi / pitch_m * engaged_m * limits.internal_minor_max_m *
         (pitch_m / 2.0 + kTan30_1 * (limits.external_pitch_min_m - limits.internal_minor_max_m));
}

double internal_shear_area_short_m2(double pitch_diameter_m, double engaged_m) {
  return base::kPi * pitch_diameter_m * 0.75 * engaged_m;
}
double external_shear_area_short_m2(double pitch_diameter_m, double engaged_m) {
  return base::kPi * pitch_diameter_m * 0.625 * engaged_m;
}
double combined_shear_area_m2(double pitch_diameter_m, double engaged_m) {
  return base::kPi * pitch_diameter_m * 0.5 * engaged_m;
}

double thread_shear_strength_pa(double tensile_pa, double ratio_1) {
  STAND_ASSERT(ratio_1 > 0.0);
  return tensile_pa / ratio_1;
}

double strip_load_n(double shear_strength_pa, double shear_area_m2) { return shear_strength_pa * shear_area_m2; }

double engaged_length_m(double length_m, double grip_m, double point_m, double thread_depth_m, double chamfer_m) {
  const double reaching_m = length_m - grip_m - point_m;
  const double threaded_m = reaching_m < thread_depth_m ? reaching_m : thread_depth_m;
  const double full_m = threaded_m - chamfer_m / 2.0;
  return full_m > 0.0 ? full_m : 0.0;
}

double engagement_for_load_m(const ThreadLimits& limits, double pitch_m, double shear_strength_pa, double load_n) {
  const double per_metre_n_m = strip_load_n(shear_strength_pa, internal_shear_area_m2(limits, pitch_m, 1.0));
  STAND_ASSERT(per_metre_n_m > 0.0);
  return load_n / per_metre_n_m;
}

double thread_strength_left_1(const ThreadHistory& history) {
  double left_1 = 1.0;
  for (int i = 0; i < history.refits && i < 500; ++i) left_1 *= 0.98;
  if (history.crossed_deep) left_1 *= 0.5;
  if (history.crossed_backed) left_1 *= 0.95;
  if (history.loaded_before_1 > 0.8) left_1 *= 0.85;
  return left_1;
}

}  // namespace proofstand::physics

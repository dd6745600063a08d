#include "sim/physics/thread_geometry.h"

#include "sim/base/assert.h"
#include "sim/base/math.h"

namespace proofstand::physics {
namespace {

// sizes whose limits stand in the standard's table: rounded there, so that the formulas are a few micrometres off
struct TableRow {
  double diameter_m = 0.0;
  double pitch_m = 0.0;
  ThreadLimits limits;
};
constexpr TableRow kTable[] = {
    {0.005, 0.0008, {0.004605, 0.004334, 0.004976, 0.004826, 0.004456, 0.004361}},
    {0.006, 0.0010, {0.005500, 0.005153, 0.005974, 0.005794, 0.005324, 0.005212}},
};

bool near(double a, double b) { return a - b < 1e-7 && b - a < 1e-7; }

}  // namespace

ThreadGeometry compute_thread(double diameter_m, double pitch_m) {
  STAND_ASSERT(pitch_m > 0.0 && diameter_m > 3.0 * pitch_m);
  ThreadGeometry t;
  t.diameter_m = diameter_m;
  t.pitch_m = pitch_m;
  t.triangle_height_m = base::sqrt_1(3.0) / 2.0 * pitch_m;
  t.pitch_diameter_m = diameter_m - 0.75 * t.triangle_height_m;
  t.minor_internal_m = diameter_m - 1.25 * t.triangle_height_m;
  t.minor_external_m = diameter_m - 17.0 / 12.0 * t.triangle_height_m;
  t.stress_diameter_m = (t.pitch_diameter_m + t.minor_external_m) / 2.0;
  t.stress_area_m2 = base::kPi / 4.0 * t.stress_diameter_m * t.stress_diameter_m;
  t.root_area_m2 = base::kPi / 4.0 * t.minor_external_m * t.minor_external_m;
  t.lead_angle_rad = base::atan_rad(pitch_m / (base::kPi * t.pitch_diameter_m));
  return t;
}

ThreadLimits thread_limits(double diameter_m, double pitch_m) {
  for (const TableRow& row : kTable) {
    if (near(row.diameter_m, diameter_m) && near(row.pitch_m, pitch_m)) return row.limits;
  }
  const ThreadGeometry t = compute_thread(diameter_m, pitch_m);
  const double p = pitch_m * 1e3;  // the tolerance formulas are written in millimetres and give micrometres
  const double d = diameter_m * 1e3;
  const double bolt_pitch_m = 90e-6 * base::pow_1(p, 0.4) * base::pow_1(d, 0.1);
  const double gap_m = (15.0 + 11.0 * p) * 1e-6;
  const double bolt_major_m = (180.0 * base::pow_1(p, 2.0 / 3.0) - 3.15 / base::sqrt_1(p)) * 1e-6;
  const double hole_minor_m = (p < 0.9 ? 433.0 * p - 190.0 * base::pow_1(p, 1.22) : 230.0 * base::pow_1(p, 0.7)) * 1e-6;
  ThreadLimits limits;
  limits.internal_pitch_max_m = t.pitch_diameter_m + 1.32 * bolt_pitch_m;
  limits.internal_minor_max_m = t.minor_internal_m + hole_minor_m;
  limits.external_major_max_m = diameter_m - gap_m;
  limits.external_major_min_m = limits.external_major_max_m - bolt_major_m;
  limits.external_pitch_max_m = t.pitch_diameter_m - gap_m;
  limits.external_pitch_min_m = limits.external_pitch_max_m - bolt_pitch_m;
  return limits;
}

double flank_play_m(const ThreadLimits& limits) {
  return (limits.internal_pitch_max_m - limits.external_pitch_min_m) / 2.0;
}

}  // namespace proofstand::physics

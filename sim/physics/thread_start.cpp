#include "sim/physics/thread_start.h"

#include "sim/base/math.h"

namespace proofstand::physics {

double half_pitch_tilt_rad(Thread thread) {
  return base::atan_rad(thread.pitch_m / (2.0 * thread_geometry(thread).pitch_diameter_m));
}

double misregistration_1(Thread thread, const ThreadStart& start) {
  const double tilt = start.tilt_rad < 0.0 ? -start.tilt_rad : start.tilt_rad;
  const double offset = start.offset_m < 0.0 ? -start.offset_m : start.offset_m;
  return thread_geometry(thread).pitch_diameter_m * base::tan_rad(tilt) / (0.5 * thread.pitch_m) +
         0.45 * offset / (2.0 * start.lead_in_m);
}

bool crosses(Thread thread, const ThreadStart& start) {
  const double m = misregistration_1(thread, start);
  if (start.turned_back) return m > 0.9;
  if (m <= 0.45) return false;
  return start.phase_1 > 1.0 - base::clamp_1((m - 0.45) / 0.45, 0.0, 1.0);
}

double free_tilt_rad(Thread thread, double radial_clearance_m, double turns_1) {
  if (turns_1 <= 0.0) return 0.5 * base::kPi;
  return base::atan_rad(radial_clearance_m / (turns_1 * thread.pitch_m));
}

}  // namespace proofstand::physics

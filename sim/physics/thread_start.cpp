#include "sim/physics/thread_start.h"

#include "sim/base/math.h"

namespace proofstand::physics {
namespace {

double size_of(double value) { return value < 0.0 ? -value : value; }

}  // namespace

double half_pitch_tilt_rad(double pitch_m, double pitch_diameter_m) {
  return base::atan_rad(pitch_m / (2.0 * pitch_diameter_m));
}

double start_misregistration_1(const StartAttempt& start, double pitch_m, double pitch_diameter_m) {
  return pitch_diameter_m * base::tan_rad(size_of(start.tilt_rad)) / (0.5 * pitch_m) +
         0.45 * size_of(start.offset_m) / (2.0 * start.lead_in_m);
}

bool start_crosses(const StartAttempt& start, double pitch_m, double pitch_diameter_m) {
  const double m = start_misregistration_1(start, pitch_m, pitch_diameter_m);
  if (start.turned_back) return m > 0.9;
  if (m <= 0.45) return false;
  return start.phase_1 > 1.0 - base::clamp_1((m - 0.45) / 0.45, 0.0, 1.0);
}

double free_tilt_rad(double play_m, double pitch_m, double turns_1) {
  return base::atan_rad(play_m / (turns_1 * pitch_m));
}

double crossed_torque_nm(double turns_1) {
  const double driven_1 = turns_1 - 0.25;
  const double torque_nm = 0.03 + (driven_1 > 0.0 ? 1.5 * driven_1 : 0.0);
  return torque_nm < 4.0 ? torque_nm : 4.0;
}

double start_drop_m(double pitch_m) { return 0.4 * pitch_m; }

double turn_back_to_drop_rad(double phase_1) { return base::kTwoPi * base::clamp_1(phase_1, 0.0, 1.0); }

}  // namespace proofstand::physics

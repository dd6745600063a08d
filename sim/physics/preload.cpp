#include "sim/physics/preload.h"

#include "sim/base/assert.h"
#include "sim/base/math.h"

namespace proofstand::physics {
namespace {

// 1/(2 cos 30 degrees): half the flank angle widens the thread's friction by this
constexpr double kFlank_1 = 0.57735026918962573;

}  // namespace

double bearing_diameter_m(double head_m, double hole_m) { return (head_m + hole_m) / 2.0; }

double bearing_diameter_even_m(double head_m, double hole_m) {
  STAND_ASSERT(head_m > hole_m);
  return 2.0 / 3.0 * (head_m * head_m * head_m - hole_m * hole_m * hole_m) / (head_m * head_m - hole_m * hole_m);
}

TorqueLevers torque_levers(const ThreadGeometry& thread, double bearing_m, const BoltFriction& friction) {
  STAND_ASSERT(friction.thread_1 >= 0.0 && friction.head_1 >= 0.0);
  TorqueLevers levers;
  levers.pitch_m = thread.pitch_m / base::kTwoPi;
  levers.thread_m = kFlank_1 * thread.pitch_diameter_m * friction.thread_1;
  levers.head_m = friction.head_1 * bearing_m / 2.0;
  return levers;
}

double preload_from_torque_n(double torque_nm, const TorqueLevers& levers, double prevailing_nm) {
  const double clamping_nm = torque_nm - prevailing_nm;
  return clamping_nm > 0.0 ? clamping_nm / levers.tighten_m() : 0.0;
}

double torque_from_preload_nm(double preload_n, const TorqueLevers& levers, double prevailing_nm) {
  return preload_n * levers.tighten_m() + prevailing_nm;
}

double loosening_torque_nm(double preload_n, const TorqueLevers& levers, double lock_nm) {
  const double torque_nm = preload_n * levers.loosen_m() + lock_nm;
  return torque_nm > 0.0 ? torque_nm : 0.0;
}

double nut_factor_1(const TorqueLevers& levers, double diameter_m) { return levers.tighten_m() / diameter_m; }

double short_form_preload_n(double torque_nm, double nut_factor_1, double diameter_m) {
  STAND_ASSERT(nut_factor_1 > 0.0 && diameter_m > 0.0);
  return torque_nm / (nut_factor_1 * diameter_m);
}

double short_form_torque_nm(double preload_n, double nut_factor_1, double diameter_m) {
  return nut_factor_1 * diameter_m * preload_n;
}

double handbook_torque_nm(double preload_n, double lead_m, double diameter_m, double friction_1) {
  return preload_n * (0.159 * lead_m + 1.156 * friction_1 * diameter_m);
}

double most_preload_n(double nominal_n, double torque_high_1, double scatter_1) {
  return torque_high_1 * (1.0 + scatter_1) * nominal_n;
}

double least_preload_n(double nominal_n, double torque_low_1, double scatter_1, int sharing, double relaxation_1) {
  STAND_ASSERT(sharing >= 1);
  const double initial_n = torque_low_1 * (1.0 - scatter_1 / base::sqrt_1(static_cast<double>(sharing))) * nominal_n;
  return initial_n * (1.0 - relaxation_1);
}

double combined_uncertainty_1(double first_1, double second_1) {
  return base::sqrt_1(first_1 * first_1 + second_1 * second_1);
}

}  // namespace proofstand::physics

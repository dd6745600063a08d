#include "sim/physics/prevailing.h"

#include "sim/base/math.h"

namespace proofstand::physics {

double patch_torque_nm(double new_nm, int uses_before) {
  double torque_nm = new_nm;
  for (int i = 0; i < uses_before; ++i) torque_nm *= kPatchDecay_1;
  return torque_nm;
}

bool patch_locks(double new_nm, int uses_before) {
  return kPatchOutShare_1 * patch_torque_nm(new_nm, uses_before) >= kPatchSpent_nm;
}

double patch_drag_nm(double full_nm, double turns_1) {
  const double share = base::clamp_1((turns_1 - 2.5) / 2.0, 0.0, 1.0);
  return kFreeDrag_nm + (full_nm - kFreeDrag_nm > 0.0 ? full_nm * share : 0.0);
}

double crossed_drag_nm(double turns_1) {
  const double driven = turns_1 - 0.25;
  const double torque_nm = kFreeDrag_nm + (driven > 0.0 ? 1.5 * driven : 0.0);
  return torque_nm < 4.0 ? torque_nm : 4.0;
}

double cure_1(double time_s) { return time_s <= 0.0 ? 0.0 : 1.0 - base::exp_1(-time_s / (8.0 * 3600.0)); }

double locker_break_nm(Thread thread, double engagement_m, double shear_pa, double cured_1) {
  const double d2 = thread_geometry(thread).pitch_diameter_m;
  return cured_1 * shear_pa * base::kPi * d2 * engagement_m * 0.5 * d2;
}

double locker_held_m3(Thread thread, double engagement_m, double gap_m) {
  return base::kPi * thread_geometry(thread).pitch_diameter_m * engagement_m * gap_m;
}

double locker_surplus_m3(double applied_m3, Thread thread, double engagement_m, double gap_m) {
  const double surplus = applied_m3 - locker_held_m3(thread, engagement_m, gap_m);
  return surplus > 0.0 ? surplus : 0.0;
}

double crevice_creep_m(double surface_tension_n_m, double gap_m, double viscosity_pa_s, double time_s) {
  return base::sqrt_1(surface_tension_n_m * gap_m * time_s / (3.0 * viscosity_pa_s));
}

}  // namespace proofstand::physics

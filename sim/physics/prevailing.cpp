#include "sim/physics/prevailing.h"

#include "sim/base/assert.h"
#include "sim/base/math.h"

namespace proofstand::physics {
namespace {

constexpr double kWetLocker_nm = 0.08;  // full thread of wet locker, as felt; common practice, no source

// volume of the gap between bolt and hole
double gap_volume_m3(const ThreadGeometry& thread, double engaged_m, double gap_m) {
  return base::kPi * thread.pitch_diameter_m * engaged_m * gap_m;
}

}  // namespace

double patch_drag_nm(double full_nm, int uses) {
  STAND_ASSERT(uses >= 0);
  double drag_nm = full_nm;
  for (int i = 0; i < uses && i < 200; ++i) drag_nm *= kPatchDecay_1;
  return drag_nm;
}

double patch_drag_at_nm(double full_nm, double turns_1) {
  const double share_1 = base::clamp_1((turns_1 - kPatchStart_turns_1) / kPatchRise_turns_1, 0.0, 1.0);
  return kFreeThread_nm + full_nm * share_1;
}

double locker_cured_1(double age_s) { return age_s <= 0.0 ? 0.0 : 1.0 - base::exp_1(-age_s / kLockerCure_s); }

double locker_breakloose_nm(const ThreadGeometry& thread, double engaged_m, double strength_1) {
  const double flank_m2 = base::kPi * thread.pitch_diameter_m * engaged_m;
  return kLockerShear_pa * strength_1 * flank_m2 * thread.pitch_diameter_m / 2.0;
}

double wet_locker_drag_nm(double wetted_1) { return kWetLocker_nm * base::clamp_1(wetted_1, 0.0, 1.0); }

double old_locker_drag_nm(double full_nm, double worked_1) {
  // crumbs are pushed out turn by turn; after four turns an eighth is left
  return worked_1 <= 0.0 ? full_nm : full_nm * base::exp_1(-worked_1 * 0.52);
}

double locker_surplus_m3(double drop_m3, const ThreadGeometry& thread, double engaged_m, double gap_m) {
  const double surplus_m3 = drop_m3 - gap_volume_m3(thread, engaged_m, gap_m);
  return surplus_m3 > 0.0 ? surplus_m3 : 0.0;
}

double locker_wetted_1(double locker_m3, const ThreadGeometry& thread, double engaged_m, double gap_m) {
  const double room_m3 = gap_volume_m3(thread, engaged_m, gap_m);
  return room_m3 > 0.0 ? base::clamp_1(locker_m3 / room_m3, 0.0, 1.0) : 0.0;
}

double capillary_creep_m(double tension_n_m, double gap_m, double time_s, double viscosity_pa_s) {
  STAND_ASSERT(viscosity_pa_s > 0.0 && time_s >= 0.0);
  return base::sqrt_1(tension_n_m * gap_m * time_s / (3.0 * viscosity_pa_s));
}

}  // namespace proofstand::physics

#include "sim/physics/wear_profile.h"

#include <array>

#include "sim/base/assert.h"
#include "sim/base/math.h"

namespace proofstand::physics {
namespace {

constexpr double kRotorWear_m3_j = 0.07e-9 / 1e3;  // volume a joule, both faces together

double smooth_1(double share_1) {
  const double u = base::clamp_1(share_1, 0.0, 1.0);
  return u * u * (3.0 - 2.0 * u);
}

}  // namespace

WearProfile make_wear_profile(double diameter_m, double new_thickness_m, double worn_m) {
  const TrackRadii radii = track_radii(diameter_m);
  WearProfile profile;
  profile.new_thickness_m = new_thickness_m;
  profile.worn_m = worn_m;
  profile.pad_inner_m = radii.lining_inner_m;
  profile.pad_outer_m = radii.lining_outer_m;
  return profile;
}

double thickness_at_m(const WearProfile& profile, double radius_m) {
  STAND_ASSERT(profile.edge_m > 0.0);
  const double in_1 = smooth_1((radius_m - profile.pad_inner_m) / profile.edge_m);
  const double out_1 = smooth_1((profile.pad_outer_m - radius_m) / profile.edge_m);
  return profile.new_thickness_m - profile.worn_m * in_1 * out_1;
}

double thickness_under_m(const WearProfile& profile, double inner_m, double outer_m) {
  // the profile falls from the inner lip and rises to the outer one: the foot rests on one of its edges
  const double at_inner_m = thickness_at_m(profile, inner_m);
  const double at_outer_m = thickness_at_m(profile, outer_m);
  return at_inner_m > at_outer_m ? at_inner_m : at_outer_m;
}

double thinnest_m(const WearProfile& profile) {
  return thickness_at_m(profile, (profile.pad_inner_m + profile.pad_outer_m) / 2.0);
}

double jaw_reads_m(const WearProfile& profile, JawKind kind, double radius_m, double face_m, double rim_radius_m) {
  if (kind == JawKind::Blade) {
    return thickness_under_m(profile, rim_radius_m - size_m(Size::VernierBlade), rim_radius_m);
  }
  const double outer_m = radius_m + face_m / 2.0;
  return thickness_under_m(profile, radius_m - face_m / 2.0, outer_m < rim_radius_m ? outer_m : rim_radius_m);
}

double wear_from_energy_m(double energy_j, double swept_m2) {
  STAND_ASSERT(swept_m2 > 0.0);
  return kRotorWear_m3_j * energy_j / swept_m2;
}

double swept_area_m2(double inner_m, double outer_m, double open_1) {
  return base::kPi * (outer_m * outer_m - inner_m * inner_m) * (1.0 - open_1);
}

double nominal_diameter_m(double measured_m) {
  constexpr std::array<double, 7> kUsual_m = {0.120, 0.140, 0.160, 0.180, 0.200, 0.203, 0.220};
  double best_m = 0.0;
  double best_off_m = 0.0025;
  for (const double size : kUsual_m) {
    const double off_m = measured_m > size ? measured_m - size : size - measured_m;
    if (off_m < best_off_m) {
      best_off_m = off_m;
      best_m = size;
    }
  }
  return best_m;
}

bool proven_above(double reading_m, double uncertainty_m, double limit_m) {
  // a hundredth of a micrometre for sums of decimal fractions
  return reading_m - uncertainty_m >= limit_m - 1e-8;
}

}  // namespace proofstand::physics

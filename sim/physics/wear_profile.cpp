#include "sim/physics/wear_profile.h"

#include "sim/base/math.h"

namespace proofstand::physics {
namespace {

double smooth(double u) {
  const double c = base::clamp_1(u, 0.0, 1.0);
  return c * c * (3.0 - 2.0 * c);
}

}  // namespace

double thickness_at_m(const TrackWear& w, double radius_m) {
  return w.thickness_new_m -
         w.worn_m * smooth((radius_m - w.pad_inner_m) / w.edge_m) * smooth((w.pad_outer_m - radius_m) / w.edge_m);
}

double flat_reading_m(const TrackWear& w, double radius_m, double width_m) {
  // thickness only falls towards the middle of the path, so the thickest place lies under an end of the jaws
  const double inner_m = base::clamp_1(radius_m - 0.5 * width_m, w.track_inner_m, w.track_outer_m);
  const double outer_m = base::clamp_1(radius_m + 0.5 * width_m, w.track_inner_m, w.track_outer_m);
  const double a = thickness_at_m(w, inner_m);
  const double b = thickness_at_m(w, outer_m);
  return a > b ? a : b;
}

double thinnest_m(const TrackWear& w) { return thickness_at_m(w, 0.5 * (w.pad_inner_m + w.pad_outer_m)); }

double wear_from_energy_m(double energy_j, double swept_area) { return 0.07e-12 * energy_j / swept_area; }

double swept_area_m2(double outer_m, double inner_m, double open_share_1) {
  return base::kPi * (outer_m * outer_m - inner_m * inner_m) * (1.0 - open_share_1);
}

double nominal_diameter_m(double measured_m) {
  static constexpr double sizes_mm[] = {120, 140, 160, 165, 170, 180, 183, 185, 190, 200, 203, 205, 210, 220, 223};
  double nearest_m = 0.0;
  double off_m = 0.0012;
  for (const double size_mm : sizes_mm) {
    const double away_m = measured_m - 0.001 * size_mm;
    const double distance_m = away_m < 0.0 ? -away_m : away_m;
    if (distance_m < off_m) {
      off_m = distance_m;
      nearest_m = 0.001 * size_mm;
    }
  }
  return nearest_m;
}

}  // namespace proofstand::physics

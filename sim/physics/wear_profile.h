// Thickness of a worn track over its radius, and what jaws of different width read of it.
#pragma once

namespace proofstand::physics {

/// A track and its wear.
struct TrackWear {
  double thickness_new_m = 0.0018;
  double worn_m = 0.0;           ///< lost in the middle, both faces together
  double track_outer_m = 0.080;  ///< radii
  double track_inner_m = 0.065;
  double pad_outer_m = 0.079;  ///< where the lining runs
  double pad_inner_m = 0.0655;
  double edge_m = 0.0005;  ///< width over which a lip rises
};

/// Thickness [m] at a radius: unworn outside the pads' path, an S-shaped lip at its edges. source: own model of the
/// unworn lip that workshops describe (common practice, no source)
double thickness_at_m(const TrackWear& wear, double radius_m);
/// What flat jaws of a width read [m]: the thickest place under them, centred at a radius. source: geometry of a flat
/// anvil
double flat_reading_m(const TrackWear& wear, double radius_m, double width_m);
/// Thinnest place of the whole track [m].
double thinnest_m(const TrackWear& wear);
/// Wear [m] of both faces together from braking energy [J] over a swept area [m²]; rate 0.07 mm³/kJ (0.02 to 0.2).
/// source: own back-calculation (common practice, no source)
double wear_from_energy_m(double energy_j, double swept_area_m2);
/// Swept area [m²] of one face, less its openings. source: geometry
double swept_area_m2(double outer_m, double inner_m, double open_share_1);
/// Nominal diameter [m] nearest to a measured one, among those that exist; 0 when none lies within 1.2 mm.
/// source: common practice (140, 160, 180, 203), the others from memory
double nominal_diameter_m(double measured_m);

}  // namespace proofstand::physics

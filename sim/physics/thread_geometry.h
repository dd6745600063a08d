// Metric screw thread geometry: basic diameters, stress area, and the limits of the usual fit.
#pragma once

namespace proofstand::physics {

/// Basic sizes of a 60 degree metric thread.
struct ThreadGeometry {
  double diameter_m = 0.0;
  double pitch_m = 0.0;
  double triangle_height_m = 0.0;  ///< H, of the sharp fundamental triangle
  double pitch_diameter_m = 0.0;   ///< d2 = D2
  double minor_internal_m = 0.0;   ///< D1
  double minor_external_m = 0.0;   ///< d3, rounded root
  double stress_diameter_m = 0.0;  ///< (d2 + d3)/2
  double stress_area_m2 = 0.0;
  double root_area_m2 = 0.0;  ///< of d3
  double lead_angle_rad = 0.0;
};

/// Basic sizes from diameter and pitch: d2 = d - 3/4 H, D1 = d - 5/4 H, d3 = d - 17/12 H, H = sqrt(3)/2 P.
/// diameter_m  [m] > 3 pitch_m
/// pitch_m     [m] > 0
/// valid       every ISO metric coarse or fine thread, single start
/// errors      none; ranges are asserted
/// source      ISO 68-1 and ISO 724; stress area ISO 898-1
ThreadGeometry compute_thread(double diameter_m, double pitch_m);

/// Limits of a 6H hole and a 6g bolt, for shear areas and play.
struct ThreadLimits {
  double internal_pitch_max_m = 0.0;  ///< D2 max
  double internal_minor_max_m = 0.0;  ///< D1 max
  double external_major_max_m = 0.0;  ///< d max
  double external_major_min_m = 0.0;  ///< d min
  double external_pitch_max_m = 0.0;  ///< d2 max
  double external_pitch_min_m = 0.0;  ///< d2 min
};

/// Limits of the 6H/6g fit: the table's for M5x0.8 and M6x1, the tolerance formulas unrounded for others.
/// diameter_m, pitch_m  [m] as above
/// valid                diameters 2.8 to 90 mm
/// source               ISO 965-1 and ISO 965-2 (from memory; D2 max of M5 published)
ThreadLimits thread_limits(double diameter_m, double pitch_m);

/// Largest radial play at the flanks of a 6H/6g pair, half the difference of the pitch diameters.
/// returns  [m]; 0.122 mm for M5x0.8
/// source   own derivation from the limits above
double flank_play_m(const ThreadLimits& limits);

}  // namespace proofstand::physics

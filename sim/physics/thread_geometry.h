// Metric screw threads: the 60° profile's diameters, areas and lead.
#pragma once

namespace proofstand::physics {

/// A metric thread, M5×0.8 by default.
struct Thread {
  double diameter_m = 0.005;
  double pitch_m = 0.0008;
};
inline constexpr Thread kM5{0.005, 0.0008};
inline constexpr Thread kM6{0.006, 0.001};

struct ThreadGeometry {
  double triangle_m = 0.0;         ///< height H of the fundamental triangle
  double pitch_diameter_m = 0.0;   ///< d2, external and internal alike
  double minor_internal_m = 0.0;   ///< D1
  double minor_external_m = 0.0;   ///< d3, rounded root
  double stress_diameter_m = 0.0;  ///< ds = (d2 + d3)/2
  double stress_area_m2 = 0.0;     ///< As
  double root_area_m2 = 0.0;       ///< of d3
  double lead_rad = 0.0;           ///< lead angle at d2
};

/// Basic dimensions of the 60° profile.
/// thread      [m]  diameter > 0, 0 < pitch < diameter/2
/// source      ISO 68-1 and ISO 724 (diameters), ISO 898-1 (stress area)
ThreadGeometry thread_geometry(Thread thread);

}  // namespace proofstand::physics

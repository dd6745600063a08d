// Shear areas of engaged threads and the load that strips them.
#pragma once

#include "sim/physics/thread_geometry.h"

namespace proofstand::physics {

/// Limits of size that matter for stripping.
struct ThreadLimits {
  double pitch_m = 0.0008;
  double external_major_min_m = 0.004826;
  double external_pitch_min_m = 0.004361;
  double internal_pitch_max_m = 0.004605;
  double internal_minor_max_m = 0.004334;
};
/// M5×0.8, 6H in the hub, 6g on the bolt.
/// source: internal pitch diameter from a published table of ISO 965 limits; the others from memory of ISO 965-2
inline constexpr ThreadLimits kM5Limits{};

/// Shear area of the internal (hub) thread [m²] over an engaged length [m].
/// source: FED-STD-H28/2B table II.B.1 equation 2a, metric form
double internal_shear_area_m2(const ThreadLimits& limits, double engagement_m);
/// Shear area of the external (bolt) thread [m²]. source: the same, equation 4a
double external_shear_area_m2(const ThreadLimits& limits, double engagement_m);
/// Simplified areas [m²]: internal pi d2 3/4 L, external pi d2 5/8 L, both together pi d2 1/2 L.
/// source: the same, equations 3, 5, 7
struct SimpleShearAreas {
  double internal_m2 = 0.0;
  double external_m2 = 0.0;
  double combined_m2 = 0.0;
};
SimpleShearAreas simple_shear_areas(Thread thread, double engagement_m);

/// Shear strength [Pa] of a tapped thread in 6061-T6 (tensile strength 310 MPa over 1.7): what tests of stripping gave.
/// source: FED-STD-H28/2B 70.7.1; tensile strength from a material data sheet
inline constexpr double kHubThreadShear_pa = 310e6 / 1.7;

/// Axial load [N] that strips the hub's thread. strength_1: of a sound thread (0..1). valid: hub weaker than bolt
double hub_strip_load_n(const ThreadLimits& limits, double engagement_m, double shear_pa, double strength_1);

/// What a thread's strength is multiplied by: refitting without cleaning, a crossed start driven on, an over-torqued
/// visit. source: common practice, no source
inline constexpr double kRefitStrength_1 = 0.98;
inline constexpr double kCrossedStrength_1 = 0.5;
inline constexpr double kCrossedBackedOutStrength_1 = 0.95;
inline constexpr double kOverloadedStrength_1 = 0.85;

}  // namespace proofstand::physics

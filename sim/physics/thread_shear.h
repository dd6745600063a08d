// How much a thread can carry before it strips, from the length engaged and the strength of hub and bolt.
#pragma once

#include "sim/physics/thread_geometry.h"

namespace proofstand::physics {

/// Ultimate strengths of hub materials. 6061-T6: 310 MPa in tension (published data sheet).
inline constexpr double kHubTensile_pa = 310e6;
/// Shear strength of 6061-T6 in tables: 207 MPa (published data sheet).
inline constexpr double kHubShear_pa = 207e6;
/// Tensile strength over the effective shear strength of a thread: nominal and pessimistic.
/// source: FED-STD-H28/2B 70.7.1, 1929 tests between 1.7 and 2.0
inline constexpr double kThreadShearRatio_1 = 1.7;
inline constexpr double kThreadShearRatioLow_1 = 2.0;

/// Least shear area of the hole's thread, where the bolt's crests cut it out.
/// engaged_m  [m] >= 0, length of full thread in engagement
/// returns    [m2]
/// source     FED-STD-H28/2B table II.B.1, equation 2a
double internal_shear_area_m2(const ThreadLimits& limits, double pitch_m, double engaged_m);
/// Least shear area of the bolt's thread. source: same, equation 4a
double external_shear_area_m2(const ThreadLimits& limits, double pitch_m, double engaged_m);
/// Short forms from the pitch diameter alone: hole (3/4), bolt (5/8), both of like strength (1/2).
/// source: same, equations 3, 5 and 7
double internal_shear_area_short_m2(double pitch_diameter_m, double engaged_m);
double external_shear_area_short_m2(double pitch_diameter_m, double engaged_m);
double combined_shear_area_m2(double pitch_diameter_m, double engaged_m);

/// Effective shear strength of a thread: tensile strength over the ratio above. [Pa]
double thread_shear_strength_pa(double tensile_pa, double ratio_1 = kThreadShearRatio_1);
/// Axial load that strips: shear strength times shear area. [N]
double strip_load_n(double shear_strength_pa, double shear_area_m2);
/// Length of full thread in engagement: what reaches into the hole, less the bolt's point, at most the hole's thread;
/// half the entry chamfer counts.
/// length_m, grip_m, point_m, thread_depth_m, chamfer_m  [m] >= 0
/// returns  [m] >= 0
/// source   chamfer: FED-STD-H28/2B 70.7.2; the rest geometry
double engaged_length_m(double length_m, double grip_m, double point_m, double thread_depth_m, double chamfer_m);
/// Engaged length at which the hub's thread is as strong as this load. [m]
double engagement_for_load_m(const ThreadLimits& limits, double pitch_m, double shear_strength_pa, double load_n);

/// What is left of a hub thread's strength after what happened to it; multiply the strip load with it.
struct ThreadHistory {
  int refits = 0;                ///< bolt taken out and screwed in again, uncleaned
  bool crossed_deep = false;     ///< crossed and driven for more than a turn
  bool crossed_backed = false;   ///< crossed and backed out within half a turn
  double loaded_before_1 = 0.0;  ///< largest load before, of the strip load then
};
/// returns  [1] 0..1: 0.98 a refit, 0.5 crossed deep, 0.95 crossed and backed out, 0.85 once loaded beyond 0.8
/// source   common practice, no source
double thread_strength_left_1(const ThreadHistory& history);

}  // namespace proofstand::physics

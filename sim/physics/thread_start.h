// Starting a thread by hand: when it catches clean and when it crosses.
#pragma once

#include "sim/physics/thread_geometry.h"

namespace proofstand::physics {

/// How a bolt stands at its hole.
struct ThreadStart {
  double tilt_rad = 0.0;     ///< against the hole's axis
  double phase_1 = 0.0;      ///< 0..1 between the two thread starts
  bool turned_back = false;  ///< turned backwards until it dropped
  double offset_m = 0.0;     ///< sideways
  double lead_in_m =
      0.000125;  ///< radial clearance and chamfer that forgive the offset; M5 6H/6g at most (from memory)
};

/// Tilt at which one side rides a groove too high [rad]: atan(P/(2 d2)). source: geometry
double half_pitch_tilt_rad(Thread thread);
/// Misregistration [1]: tilt and offset against half a pitch. source: own geometric argument
double misregistration_1(Thread thread, const ThreadStart& start);
/// Does it cross? Never below 0.45; after turning back only above 0.9. source: thresholds own judgement, from memory
bool crosses(Thread thread, const ThreadStart& start);
/// Tilt [rad] that the thread leaves the bolt after some good turns: atan(c/(n P)). source: geometry
double free_tilt_rad(Thread thread, double radial_clearance_m, double turns_1);

}  // namespace proofstand::physics

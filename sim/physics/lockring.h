// The splined mount's lockring: axial clamp of a fine, large thread, and the tool that turns it.
#pragma once

#include "sim/physics/preload.h"

namespace proofstand::physics {

/// An M30×1 ring on a 34 mm shoulder with a friction for both. source: common practice, no source (measure the real
/// part)
Fastener lockring_fastener(double friction_1);
/// Axial push-out [N] of a ring tool that rocks in its spline: (T/r)(tan(atan(c/h) + draft) − µ). source: own, statics
/// (from memory)
double tool_push_out_n(double torque_nm, double radius_m, double clearance_m, double depth_m, double draft_rad,
                       double friction_1);
/// Depth [m] that needs no axial hand. source: the same
double safe_depth_m(double clearance_m, double draft_rad, double friction_1);
/// Force at the tyre [N] that holds the wheel against a torque. source: statics
double hold_force_n(double torque_nm, double wheel_radius_m);

}  // namespace proofstand::physics

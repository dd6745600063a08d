// One tick of turning a fastener: how far it gives way to a limited torque, and what that does to preload, thread and
// hub.
#pragma once

#include "sim/bench/bolt_model.h"

namespace proofstand::bench {

/// What a fastener answered in one tick.
struct BoltAnswer {
  double moved_rad = 0.0;  ///< turned, positive in
  double torque_nm = 0.0;  ///< on it at the end of the tick, positive in
  bool held = false;       ///< it took all the torque there was and turned no further
  bool came_out = false;   ///< its thread has left the hole
};

/// Turns a fastener whose thread has caught, inwards or outwards, with at most that torque and by at most that angle.
/// Keeps the visit's peaks and turns, the hole's preload, stretch, stripping; emits "cracked" at a tight fastener's
/// first motion outwards.
/// limit_nm >= 0, most_rad >= 0, sense +1 in (clockwise), -1 out
BoltAnswer turn_bolt(const World& world, HandId hand, BoltId bolt, int sense, double limit_nm, double most_rad);

/// Bolts that hold the rotor now, this one left out.
std::int64_t others_holding(const World& world, BoltId bolt);

}  // namespace proofstand::bench

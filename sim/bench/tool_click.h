// The click mechanism of a torque tool: lets go at its setting, travels freely, then bites again.
#pragma once

#include "sim/bench/world.h"

namespace proofstand::bench {

/// Torque at which the tool held lets go now [N·m]; without bound for tools that have no such mechanism, or while it
/// has let go.
double trip_limit_nm(const World& world, HandId hand);
/// It lets go: "clicked".
void let_go(const World& world, HandId hand);
/// Still travelling freely after a click?
bool in_free_travel(const VisitState& visit);
/// Travels freely by at most that; returns how far.
double run_free_rad(const World& world, HandId hand, double most_rad);
/// The hand has eased off: the mechanism latches again for the next pull.
void latch_again(const World& world, HandId hand, double hand_nm);
/// Draws the repeatability of the next pull.
void draw_repeat(const World& world, HandId hand);

}  // namespace proofstand::bench

// What is told at hand-over of the joint: every bolt, every boss, the rotor, and what the joint is worth on a hard
// stop.
#pragma once

#include "sim/bench/world.h"

namespace proofstand::bench {

/// Emits left_bolt and left_boss for every position, left_rotor for the rotor on the hub, left_joint.
void close_joint(const World& world);

/// Clamp between rotor and hub at each position [N].
std::vector<double> clamps_n(const World& world);

}  // namespace proofstand::bench

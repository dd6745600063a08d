// A visit to a fastener, by a tool or by fingers: opened when it is seated, told in one record when it is off.
#pragma once

#include "sim/bench/world.h"

namespace proofstand::bench {

/// Opens the visit of this hand to the bolt in that hole; draws its friction.
void open_visit(const World& world, HandId hand, BoltId bolt);
/// Closes it: settling, then "loosened", "snugged", "tightened" as they apply. Nothing when none is open.
void close_visit(const World& world, HandId hand);

/// Torque from which a visit counts as a pull [N·m]: more than fingers give. common practice, no source
inline constexpr double kPull_nm = 0.3;

}  // namespace proofstand::bench

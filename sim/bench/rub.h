// How the rotor on the hub runs between its pads.
#pragma once

#include "sim/bench/world.h"

namespace proofstand::bench {

/// Over one turn, wheel in the bike, lever free.
struct Rub {
  double share_1 = 0.0;    ///< share of the turn in which it touches on either side
  double torque_nm = 0.0;  ///< mean drag
  double gap_out_m = 0.0;  ///< least gap left outside, 0 when it touches
  double gap_in_m = 0.0;   ///< and inside
};
/// Nothing rubs without a rotor.
/// source: overlap of pads as rigid blocks of 24 degrees on an elastic wheel and seal, own derivation
Rub rub_in_caliper(const World& world);

}  // namespace proofstand::bench

// The pointer's way, steadied for hands that shake: its mean over the last moments.
#pragma once

#include <vector>

#include "sim/base/ticks.h"
#include "sim/hand/gesture_space.h"

namespace proofstand::hand {

class SteadyPointer {
 public:
  /// window  [ticks] over which to average; 0: not at all
  void steady_over(base::Tick window) { window_ = window; }
  /// The pointer is there from this tick on.
  void put(base::Tick now, const Spot& spot);
  /// A new beginning: what was before does not count.
  void begin(base::Tick now, const Spot& spot);
  /// Mean over the window that ends now; the last place when not steadied.
  [[nodiscard]] Spot at(base::Tick now) const;

 private:
  struct Sample {
    base::Tick since = 0;
    Spot spot;
  };
  base::Tick window_ = 0;
  std::vector<Sample> samples_;  // oldest first; those that ended before the window are dropped
};

}  // namespace proofstand::hand

// Closed loops over one cord: pull, twirl, press until something is felt or seen. Private to this floor.
#pragma once

#include <functional>

#include "sim/hand/reaching.h"

namespace proofstand::hand {

/// A full pull: cord drawn out as far as it gives force.
inline constexpr double kFullLead_rad = base::radians(79.0);

/// One pull round an axis. The first half says what to do, the second what came of it.
struct Pull {
  double sense_1 = 1.0;                     ///< +1 clockwise, -1 the other way
  double rate_rad_s = base::radians(40.0);  ///< how fast the cord's end is drawn on
  double careful_lead_rad = 0.0;            ///< below this lead the cord is taken up quickly first; 0: never
  double most_lead_rad = kFullLead_rad;     ///< no harder than this
  double press_n = 0.0;                     ///< press kept up after a fresh grip; 0: none
  bool press_more = false;  ///< felt to ride up, the tool is pressed with all there is and held straight
  std::function<bool(const bench::HandSense&)> until;
  bool done = false;     ///< `until` came true
  bool stalled = false;  ///< as hard as allowed, and nothing moved for a second
};
/// Pulls until it is done or stalled, with fresh grips where the reach ends. Leaves the cord as it is.
Task pull(Work& work, HandId hand, Pull& plan);

/// Fingers walk something round.
struct Twirl {
  double sense_1 = 1.0;
  double share_1 = 1.0;  ///< of the fingers' rate
  std::function<bool()> until;
  bool done = false;
  bool stalled = false;  ///< it stood for more than half a second
};
/// Twirls until it is done or stalled; slackens.
Task twirl(Work& work, HandId hand, Twirl& plan);

/// Presses along the axis with about this force until it is felt to be home or a second has passed; keeps pressing.
Task press(Work& work, HandId hand, double force_n);
/// Cord's end along the axis for a press [µm].
std::int64_t press_aim_um(double force_n);
/// Lets go of pull and press, stays where it is.
Task slacken(Work& work, HandId hand);

}  // namespace proofstand::hand

// Taking, bringing, letting go: what every procedure of the modelled hand begins and ends with. Private to this floor.
#pragma once

#include "sim/hand/work.h"

namespace proofstand::hand {

/// Waits until the hand is where it was sent.
Task settle(Work& work, HandId hand);
/// Slackens and draws away; what stays by itself is let go of.
Task draw_away(Work& work, HandId hand);
/// Draws away and puts back what is held.
Task empty(Work& work, HandId hand);
/// Holds this thing, by this grip unless None; what the hand held before goes back, what the other hand holds is
/// passed.
Task take(Work& work, HandId hand, ThingId thing, Grip grip);
/// Holds it differently, where it is.
Task grip_at(Work& work, HandId hand, Grip grip);
/// A place with its point and the tilt with which a thing comes there.
struct Pose {
  ThingId thing = kNoThing;
  PlaceKind place = PlaceKind::None;
  BoltId bolt = kNoBolt;
  std::int64_t u_um = 0;
  std::int64_t v_urad = 0;
  std::int64_t tilt_x_urad = 0;
  std::int64_t tilt_y_urad = 0;
};
/// Brings what is held to a place. Stuck when it does not get there.
Task bring(Work& work, HandId hand, Pose pose);
/// Lays what is held on the bench or in the tray, where it is let go of.
Task lay(Work& work, HandId hand, Pose pose);
/// Rests empty fingers on a place; what was held goes back first.
Task touch(Work& work, HandId hand, Pose pose);
/// The thing that a place belongs to when a line does not say: hub places to the wheel, the rest to what is fitted.
ThingId owner_of(Work& work, PlaceKind place, ThingId said);
/// Is this hand still where it was brought?
bool rests_at(Work& work, HandId hand, PlaceKind place, BoltId bolt);
/// Forgets a hold that stands, when this hand had it.
void forget_hold(Work& work, HandId hand);

constexpr double kMicro = 1e6;
/// Metres or radians as an action counts them.
inline std::int64_t micro(double value) {
  const double scaled = value * kMicro;
  return static_cast<std::int64_t>(scaled < 0.0 ? scaled - 0.5 : scaled + 0.5);
}

}  // namespace proofstand::hand

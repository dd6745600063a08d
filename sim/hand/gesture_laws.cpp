#include "sim/hand/gesture_laws.h"

namespace proofstand::hand {

using bench::Contact;
using bench::ThingKind;

Motion motion_of(const bench::HoldSight& hold, ThingKind held) {
  if (hold.near) return Motion::None;
  const bool holds = hold.holding != event::kNoThing;
  if (holds && held == ThingKind::Bottle) return Motion::Drops;
  if (hold.hold.contact == Contact::Face) return Motion::Face;
  if (hold.hold.turns) return Motion::Turn;
  return hold.hold.presses ? Motion::Along : Motion::None;
}

double tap_turn_rad(const bench::HoldSight& hold) { return base::radians(hold.hold.twirls ? 20.0 : 5.0); }

double notch_turn_rad(const bench::HoldSight& hold, ThingKind held) {
  switch (hold.hold.contact) {
    case Contact::BoltFingers:
    case Contact::KeyShaft:
    case Contact::DriverShaft:
      return base::radians(60.0);
    case Contact::Setting:
      return hold.line_rad;
    case Contact::Instrument:
      return held == ThingKind::Micrometer || held == ThingKind::Vernier ? base::radians(36.0) : 0.0;
    default:
      return 0.0;
  }
}

FacePress face_press(ThingKind held) {
  if (held == ThingKind::Pick) return {2, {1.0, 3.0, 3.0}, 1};
  return {3, {5.0, 15.0, 30.0}, 1};
}

bool bent(const bench::HoldSight& hold, double leads_1) {
  const bench::HandHold& row = hold.hold;
  if (!row.turns || row.twirls || row.reach_rad <= 0.0) return false;
  const double end_rad = row.reach_rad - kBent_rad;
  if (leads_1 >= 0.0 && hold.hand_turn_rad >= end_rad) return true;
  return leads_1 <= 0.0 && hold.hand_turn_rad <= -end_rad;
}

}  // namespace proofstand::hand

// Where a hand stands and what its cord could move there: all that turning a pointer into aims needs to know of the
// bench. A trainee feels and sees every field of it.
#pragma once

#include "sim/bench/bench.h"
#include "sim/bench/hand_contact.h"

namespace proofstand::bench {

struct HoldSight {
  HandStage stage = HandStage::Free;
  ThingId holding = event::kNoThing;
  Grip grip = Grip::None;
  ThingId at_thing = event::kNoThing;
  PlaceKind at_place = PlaceKind::None;
  BoltId at_bolt = event::kNoBolt;
  bool near = false;  ///< held 20 mm off, touching nothing
  bool kept = false;
  bool gloved = false;
  HandHold hold;             ///< contact, axes, reach and rate of this hold
  double hand_turn_rad = 0;  ///< where the hand is round its axis, from where the grip was taken
  double hand_along_m = 0;   ///< and along it, positive inwards
  std::int64_t turn_level = 0;
  std::int64_t along_level = 0;  ///< 0..512 each
  double face_radius_m = 0;      ///< where it is on a face, and how hard it presses
  double face_angle_rad = 0;
  double face_press_n = 0;
  double tilt_x_rad = 0;  ///< of a tool in its seat
  double tilt_y_rad = 0;
  double line_rad = 0;  ///< of a torque tool's setting handle: turn from one engraved line to the next; else 0
};

/// How a hand stands now.
HoldSight see_hold(const Bench& bench, HandId hand);
/// Does anything but a hand keep this thing where it is? A rotor with no bolt in the hub, a bolt in the tray are loose.
bool see_loose(const Bench& bench, ThingId thing);

}  // namespace proofstand::bench

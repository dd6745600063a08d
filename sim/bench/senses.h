// What a person at the bench can perceive, and nothing more: felt in a hand, or seen. The modelled hand, hints and exam
// texts read the bench through this file only.
#pragma once

#include <vector>

#include "sim/bench/bench.h"

namespace proofstand::bench {

/// Felt in one hand now.
struct HandSense {
  HandStage stage = HandStage::Free;
  ThingId holding = event::kNoThing;
  Grip grip = Grip::None;
  double turn_rad = 0.0;      ///< how far the hand has turned since this grip was taken, clockwise positive
  double lead_rad = 0.0;      ///< how far the cord's end runs ahead of it
  double torque_nm = 0.0;     ///< pull of the hand now, either way; 0 when slack
  double fastener_rad = 0.0;  ///< how far the fastener has turned in this visit, in positive
  double reach_left_rad =
      0.0;  ///< until the wrist is bent and a fresh grip is due, in the direction pulled; large when none is
  double press_n = 0.0;
  std::int64_t clicks = 0;  ///< clicks of the torque tool in this visit
  std::int64_t slips = 0;   ///< slips felt in this recess so far
  bool home = false;        ///< the tool is at full depth: a dull tap, hardly any wiggle
  bool caught = false;      ///< the bolt's thread has caught in the hole
  bool dropped = false;     ///< turning back, it dropped into its start
  bool dead_stop = false;   ///< moved a hair and stands: play taken up, or a head bearing
  bool bears = false;       ///< the head has come to bear
};
HandSense sense_hand(const Bench& bench, HandId hand);

/// Seen at one bolt position.
struct BoltSight {
  bool present = false;
  ThingId thing = event::kNoThing;
  double head_gap_m = 0.0;     ///< under the head, as far as the eye tells (0.2 mm steps)
  bool askew = false;          ///< head visibly tilted
  bool recess_ruined = false;  ///< shaved lobes
  bool recess_dirty = false;
  bool boss_dirty = false;  ///< visible only while no rotor lies on it
};
BoltSight see_bolt(const Bench& bench, BoltId bolt);

/// Where a thing is, as anyone can see.
Whereabouts see_where(const Bench& bench, ThingId thing);
/// Where the wheel is, and whether it turns.
WheelAt see_wheel(const Bench& bench);
bool see_wheel_turning(const Bench& bench);
double see_wheel_angle_rad(const Bench& bench);
/// Rotor on the hub, or kNoThing; printed side out?
ThingId see_rotor_on_hub(const Bench& bench);
bool see_printed_out(const Bench& bench);
/// Of a rotor in a hand or lying down: is its printed side the one that faces out of the hand, or up?
bool see_printed_up(const Bench& bench, ThingId rotor);
/// Is there a locking patch on a bolt's thread that has not been worn off?
bool see_patch(const Bench& bench, ThingId bolt);
/// Length of a loose bolt under its head [m], as a ruler tells it.
double see_bolt_length_m(const Bench& bench, ThingId bolt);
/// What an instrument's scale shows [m], to its resolution; a dial's pointer likewise.
double see_scale_m(const Bench& bench, ThingId instrument);
/// Largest less smallest reading of a standing dial since it was set [m], and turns under it.
double see_dial_sweep_m(const Bench& bench, ThingId instrument);
double see_dial_turns_1(const Bench& bench, ThingId instrument);
/// Figure a torque tool stands at [N·m], to its scale's line.
double see_setting_nm(const Bench& bench, ThingId tool);
/// Does the fold of this rag look black? Fresh folds left.
bool see_rag_black(const Bench& bench, ThingId rag);
std::int64_t see_folds_left(const Bench& bench, ThingId rag);
/// Share of a braking face that is visibly wet; and that the wipe under way has passed over (what the eye follows).
double see_wet_share_1(const Bench& bench, ThingId rotor, bool printed_face);
double see_wiped_share_1(const Bench& bench, HandId hand, bool printed_face);
/// Stamp on a rotor [m], 0 when it bears none; diameter printed [m], 0 when worn off; has an arrow; resin pads only.
double see_stamp_m(const Bench& bench, ThingId rotor);
double see_marked_diameter_m(const Bench& bench, ThingId rotor);
bool see_arrow(const Bench& bench, ThingId rotor);

}  // namespace proofstand::bench

#include "sim/bench/hand_tick.h"

#include "sim/bench/bolt_start.h"
#include "sim/bench/hand_contact.h"
#include "sim/bench/hand_law.h"
#include "sim/bench/instrument.h"
#include "sim/bench/rotor_turn.h"
#include "sim/bench/tool_work.h"
#include "sim/bench/wheel.h"
#include "sim/bench/wiping.h"

namespace proofstand::bench {
namespace {

bool is_tool_contact(Contact contact) {
  switch (contact) {
    case Contact::KeyShaft:
    case Contact::DriverShaft:
    case Contact::KeyHandle:
    case Contact::DriverHandle:
    case Contact::CrossHandle:
    case Contact::PalmOnEnd:
      return true;
    default:
      return false;
  }
}

double within_reach(const HandState& hand, const HandHold& hold, double most_rad) {
  if (hold.twirls) return most_rad;
  return base::clamp_1(hand.turn.hand_1 + most_rad, -hold.reach_rad, hold.reach_rad) - hand.turn.hand_1;
}

// a hand that turns rotor or wheel
void step_turning(const World& world, HandId hand_id, const HandHold& hold) {
  HandState& hand = world.hand(hand_id);
  const AxisLaw law = turn_law();
  if (hold.twirls) {
    step_twirl(hand.turn, law, hold.rate_rad_s);
  } else {
    step_cord(hand.turn, law);
  }
  const double most_rad =
      hold.twirls ? twirl_limit_1(hand.turn, hold.rate_rad_s) : step_limit_1(hand.turn, law, law.pull_fastest_1);
  double moved_rad = within_reach(hand, hold, most_rad);
  if (hand.turn.level == 0) moved_rad = 0.0;
  if (hold.contact == Contact::RotorHold) {
    const bool on_hub = hand.at_thing == world.state.seat.rotor;
    const double limit_nm = hold.full_nm * force_share_1(hand.turn.level);
    if (on_hub && moved_rad != 0.0) moved_rad = turn_rotor_rad(world, hand_id, limit_nm, moved_rad);
  } else if (moved_rad != 0.0) {
    turn_wheel_by_hand(world, -moved_rad);
  }
  move_hand(hand.turn, moved_rad);
}

void step_instrument_cords(HandState& hand, const HandHold& hold) {
  if (hold.turns) step_twirl(hand.turn, turn_law(), hold.rate_rad_s);
  if (hold.presses) step_cord(hand.along, along_law());
}

bool face_rests(const HandState& hand) {
  return hand.face_radius_m == hand.aim_radius_m && hand.face_angle_rad == hand.aim_angle_rad &&
         hand.face_press_n == hand.aim_press_n;
}

bool cords_rest(const HandState& hand, const HandHold& hold) {
  const bool turn = !hold.turns || cord_rests(hand.turn, hold.twirls);
  const bool along = !hold.presses || cord_rests(hand.along, false);
  return turn && along;
}

}  // namespace

void step_hand(const World& world, HandId hand_id) {
  HandState& hand = world.hand(hand_id);
  const HandHold hold = hold_of(world, hand);
  if (is_tool_contact(hold.contact)) {
    step_tool(world, hand_id, hold);
    return;
  }
  switch (hold.contact) {
    case Contact::Setting:
      step_setting(world, hand_id, hold);
      break;
    case Contact::BoltFingers:
      step_fingers(world, hand_id, hold);
      break;
    case Contact::RotorHold:
    case Contact::TyreHand:
    case Contact::TyreFingers:
      step_turning(world, hand_id, hold);
      break;
    case Contact::Face:
      if (world.kind(hand.holding) == ThingKind::Rag) {
        step_wipe(world, hand_id);
      } else {
        step_instrument(world, hand_id);
      }
      break;
    case Contact::Instrument:
      step_instrument_cords(hand, hold);
      step_instrument(world, hand_id);
      break;
    default:
      break;
  }
}

bool hand_rests(const World& world, HandId hand_id) {
  const HandState& hand = world.hand(hand_id);
  if (hand.stage == HandStage::Busy) return true;
  const HandHold hold = hold_of(world, hand);
  if (hand.stage == HandStage::Free) return hold.contact != Contact::Setting || cords_rest(hand, hold);
  switch (hold.contact) {
    case Contact::None:
    case Contact::Rest:
      return true;
    case Contact::Face:
      return face_rests(hand) && !slid_on(world, hand_id);
    case Contact::Instrument:
      return cords_rest(hand, hold) && face_rests(hand);
    default:
      return cords_rest(hand, hold);
  }
}

}  // namespace proofstand::bench

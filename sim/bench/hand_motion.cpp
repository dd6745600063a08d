#include "sim/bench/hand_motion.h"

#include "sim/bench/bolt_start.h"
#include "sim/bench/bolt_visit.h"
#include "sim/bench/contact.h"
#include "sim/bench/draft.h"
#include "sim/bench/hand_arrive.h"
#include "sim/bench/hand_check.h"
#include "sim/bench/hand_contact.h"
#include "sim/bench/hand_law.h"
#include "sim/bench/instrument.h"
#include "sim/bench/rotor_turn.h"

namespace proofstand::bench {
namespace {

using event::ActionKind;

// the hand stays where it is while it changes its hold
bool stays(const World& world, const event::Action& action) {
  if (action.kind == ActionKind::GripAt || action.kind == ActionKind::Regrip) return true;
  const ThingId held = world.hand(action.hand()).holding;
  return action.kind == ActionKind::TurnOver && held != event::kNoThing && world.kind(held) == ThingKind::Rag;
}

void make_busy(const World& world, HandState& hand, base::Tick ticks) {
  hand.stage = HandStage::Busy;
  hand.kept = false;
  hand.busy_until = world.state.tick + ticks;
}

}  // namespace

base::Tick motion_ticks(ActionKind kind) {
  switch (kind) {
    case ActionKind::Take:
      return base::ticks_from(0.35);
    case ActionKind::Touch:
    case ActionKind::Near:
      return base::ticks_from(0.30);
    case ActionKind::Bring:
      return base::ticks_from(0.40);
    case ActionKind::PutBack:
    case ActionKind::TurnOver:
      return base::ticks_from(0.40);
    case ActionKind::Pass:
    case ActionKind::Regrip:
      return base::ticks_from(0.35);
    case ActionKind::GripAt:
      return base::ticks_from(0.25);
    case ActionKind::Glove:
      return base::ticks_from(0.60);
    default:
      return 0;
  }
}

bool is_motion(ActionKind kind) { return motion_ticks(kind) > 0; }

PlaceKind place_of_grip(Grip grip) {
  switch (grip) {
    case Grip::Arms:
      return PlaceKind::Arms;
    case Grip::InnerEdge:
      return PlaceKind::InnerEdge;
    case Grip::Track:
      return PlaceKind::TrackOuter;
    default:
      return PlaceKind::Edge;
  }
}

Refusal begin_motion(const World& world, const event::Action& action) {
  const Refusal refusal = check_motion(world, action);
  if (refusal != Refusal::None) return refusal;
  HandState& hand = world.hand(action.hand());
  if (!stays(world, action) && hand.stage == HandStage::At) leave_place(world, action.hand());
  slacken(hand.turn);
  slacken(hand.along);
  hand.turn.level = 0;
  hand.along.level = 0;
  const base::Tick ticks = motion_ticks(action.kind);
  make_busy(world, hand, ticks);
  hand.pending = action;
  hand.has_pending = true;
  const bool wheel = (action.kind == ActionKind::Take && world.kind(thing_of(action)) == ThingKind::Wheel) ||
                     (hand.holding != event::kNoThing && world.kind(hand.holding) == ThingKind::Wheel);
  const bool pass = action.kind == ActionKind::Pass;
  if (wheel || pass) {
    const HandId other_id = World::other(action.hand());
    HandState& other = world.hand(other_id);
    if (other.stage == HandStage::At) leave_place(world, other_id);
    make_busy(world, other, ticks);
    other.has_pending = false;
  }
  return Refusal::None;
}

Refusal leave(const World& world, HandId hand_id) {
  HandState& hand = world.hand(hand_id);
  if (hand.holding != event::kNoThing && world.kind(hand.holding) == ThingKind::Wheel) return Refusal::WouldFall;
  if (hand.stage != HandStage::At) return Refusal::NothingToDo;
  const ThingId held = hand.holding;
  const bool dial = held != event::kNoThing && world.kind(held) == ThingKind::DialGauge && !hand.near;
  const bool bolt = held != event::kNoThing && world.kind(held) == ThingKind::Bolt;
  leave_place(world, hand_id);
  if (bolt && hand.holding == event::kNoThing) {
    world.emit("put_down", {{"hand", hand_value(hand_id)}, {"thing", thing_value(held)}});
  }
  if (dial && world.state.instruments[world.thing(held).part].standing) {
    hand.holding = event::kNoThing;
    hand.grip = Grip::None;
    world.state.things[event::index_of(held)].where = Whereabouts::Standing;
    world.emit("put_down", {{"hand", hand_value(hand_id)}, {"thing", thing_value(held)}});
  }
  return Refusal::None;
}

void leave_place(const World& world, HandId hand_id) {
  HandState& hand = world.hand(hand_id);
  if (!hand.near && hand.at_place != PlaceKind::None) {
    const Contact contact = hold_of(world, hand).contact;
    const bool bolt_held = hand.holding != event::kNoThing && world.kind(hand.holding) == ThingKind::Bolt;
    if (bolt_held && hand.at_place == PlaceKind::Hole) {
      leave_bolt(world, hand_id);
    } else {
      close_visit(world, hand_id);
    }
    end_wipe(world, hand_id);
    if (hand.holding != event::kNoThing && is_instrument(world.kind(hand.holding))) leave_instrument(world, hand_id);
    const bool holds_rotor = hand.holding != event::kNoThing && world.kind(hand.holding) == ThingKind::Rotor;
    if (!holds_rotor) end_touch(world, hand_id);
    const bool on_rotor = contact == Contact::RotorHold && hand.at_thing == world.state.seat.rotor;
    hand.stage = HandStage::Free;
    if (on_rotor) let_go_of_rotor(world, hand_id);
  }
  hand.stage = HandStage::Free;
  hand.at_thing = event::kNoThing;
  hand.at_place = PlaceKind::None;
  hand.at_bolt = event::kNoBolt;
  hand.near = false;
  hand.kept = false;
  hand.u_1 = 0.0;
  hand.v_1 = 0.0;
  hand.tilt_x_rad = 0.0;
  hand.tilt_y_rad = 0.0;
  reset_cord(hand.turn);
  reset_cord(hand.along);
}

}  // namespace proofstand::bench

#include "sim/bench/hand_arrive.h"

#include "sim/bench/bolt_start.h"
#include "sim/bench/bolt_visit.h"
#include "sim/bench/contact.h"
#include "sim/bench/draft.h"
#include "sim/bench/fluid.h"
#include "sim/bench/hand_check.h"
#include "sim/bench/hand_contact.h"
#include "sim/bench/hand_law.h"
#include "sim/bench/hand_motion.h"
#include "sim/bench/instrument.h"
#include "sim/bench/rotor_seat.h"
#include "sim/bench/surface.h"
#include "sim/bench/wheel.h"

namespace proofstand::bench {
namespace {

using event::ActionKind;

constexpr double kPerMicro = 1e-6;  // the actions' steps are µm and µrad

double from_steps(std::int64_t steps) { return static_cast<double>(steps) * kPerMicro; }

Whereabouts in_hand(HandId hand) { return hand == HandId::Left ? Whereabouts::LeftHand : Whereabouts::RightHand; }

ThingState& thing_state(const World& world, ThingId thing) { return world.state.things[event::index_of(thing)]; }

void hold(const World& world, HandId hand_id, ThingId thing, Grip grip) {
  HandState& hand = world.hand(hand_id);
  const ThingKind kind = world.kind(thing);
  hand.holding = thing;
  hand.grip = grip == Grip::None ? natural_grip(kind) : grip;
  thing_state(world, thing).where = in_hand(hand_id);
  if (kind == ThingKind::Rotor) begin_rotor_touch(world, hand_id, thing);
  if (kind == ThingKind::Rag) soil_by_rag(world, hand_id, thing);
}

void tell_took(const World& world, HandId hand, ThingId thing) {
  world.emit("took", {{"hand", hand_value(hand)}, {"thing", thing_value(thing)}, {"skin", skin_value(world, hand)}});
}

void tell_put_down(const World& world, HandId hand, ThingId thing) {
  world.emit("put_down", {{"hand", hand_value(hand)}, {"thing", thing_value(thing)}});
}

Refusal take_wheel(const World& world, HandId hand_id, ThingId wheel) {
  const Refusal refusal = move_wheel(world, hand_id, WheelAt::Hands);
  if (refusal != Refusal::None) return refusal;
  for (HandState& hand : world.state.hands) {
    hand.holding = wheel;
    hand.grip = Grip::Both;
    hand.stage = HandStage::Free;
  }
  tell_took(world, hand_id, wheel);
  return Refusal::None;
}

Refusal take(const World& world, HandId hand_id, const event::Action& action) {
  const ThingId thing = thing_of(action);
  const ThingKind kind = world.kind(thing);
  if (endangered(world, hand_id, thing, PlaceKind::Body)) return Refusal::None;
  if (kind == ThingKind::Wheel) return take_wheel(world, hand_id, thing);
  if (kind == ThingKind::DialGauge) take_dial_away(world, thing);
  const bool off_hub = world.state.seat.rotor == thing;
  if (off_hub) take_rotor_off(world, hand_id);
  hold(world, hand_id, thing, static_cast<Grip>(action.numbers[2]));
  tell_took(world, hand_id, thing);
  return Refusal::None;
}

void rest_at(const World& world, HandState& hand, const event::Action& action) {
  hand.stage = HandStage::At;
  hand.at_thing = thing_of(action);
  hand.at_place = place_of(action);
  hand.at_bolt = numbered_place(hand.at_place) ? bolt_of(action) : event::kNoBolt;
  hand.arrived = world.state.tick;
  reset_cord(hand.turn);
  reset_cord(hand.along);
}

Refusal touch(const World& world, HandId hand_id, const event::Action& action) {
  HandState& hand = world.hand(hand_id);
  if (endangered(world, hand_id, thing_of(action), place_of(action))) return Refusal::None;
  rest_at(world, hand, action);
  hand.u_1 = from_steps(action.numbers[4]);
  hand.v_1 = from_steps(action.numbers[5]);
  hand.grip = natural_touch(hand.at_place);
  begin_touch(world, hand_id, hand.at_thing, hand.at_place, hand.at_bolt, hand.u_1, hand.v_1);
  if (hand.at_place == PlaceKind::BoltHead) open_visit(world, hand_id, hand.at_bolt);
  return Refusal::None;
}

Refusal come_near(const World& world, HandId hand_id, const event::Action& action) {
  rest_at(world, world.hand(hand_id), action);
  world.hand(hand_id).near = true;
  return Refusal::None;
}

// things laid on bench or tray are let go of at once
void lay(const World& world, HandId hand_id, Whereabouts where) {
  HandState& hand = world.hand(hand_id);
  const ThingId thing = hand.holding;
  end_touch(world, hand_id);
  thing_state(world, thing).where = where;
  hand.holding = event::kNoThing;
  hand.grip = Grip::None;
  hand.stage = HandStage::Free;
  tell_put_down(world, hand_id, thing);
  if (world.kind(thing) == ThingKind::Rotor) lay_down(world, thing);
}

Refusal bring_wheel(const World& world, HandId hand_id, PlaceKind place) {
  const ThingId wheel = world.hand(hand_id).holding;
  const Refusal refusal = move_wheel(world, hand_id, place == PlaceKind::ForkEnds ? WheelAt::Bike : WheelAt::Stand);
  if (refusal != Refusal::None) {
    for (HandState& hand : world.state.hands) hand.stage = HandStage::Free;
    return refusal;
  }
  for (HandState& hand : world.state.hands) {
    hand.holding = event::kNoThing;
    hand.grip = Grip::None;
    hand.stage = HandStage::Free;
  }
  tell_put_down(world, hand_id, wheel);
  return Refusal::None;
}

// the rotor hangs by itself; the hand that brought it still has its fingers on it
void hang_rotor(const World& world, HandId hand_id, double angle_rad) {
  HandState& hand = world.hand(hand_id);
  const ThingId rotor = hand.holding;
  put_rotor_on(world, hand_id, angle_rad);
  hand.holding = event::kNoThing;
  hand.at_thing = rotor;
  hand.at_place = place_of_grip(hand.grip);
  tell_put_down(world, hand_id, rotor);
}

Refusal bring(const World& world, HandId hand_id, const event::Action& action) {
  HandState& hand = world.hand(hand_id);
  const ThingKind kind = world.kind(hand.holding);
  const PlaceKind place = place_of(action);
  if (kind == ThingKind::Wheel) return bring_wheel(world, hand_id, place);
  if (endangered(world, hand_id, thing_of(action), place)) return Refusal::None;
  const bool puts = kind == ThingKind::Rotor || kind == ThingKind::Bolt || is_tool(kind) || kind == ThingKind::Bottle;
  if (puts && (place == PlaceKind::BenchTop || place == PlaceKind::Tray) && thing_of(action) != hand.holding) {
    if (kind != ThingKind::Bottle) {
      lay(world, hand_id,
          place == PlaceKind::Tray && kind != ThingKind::Rotor ? Whereabouts::Tray : Whereabouts::OnBench);
      return Refusal::None;
    }
  }
  rest_at(world, hand, action);
  hand.u_1 = from_steps(action.numbers[4]);
  hand.v_1 = from_steps(action.numbers[5]);
  hand.tilt_x_rad = from_steps(action.numbers[6]);
  hand.tilt_y_rad = from_steps(action.numbers[7]);
  if (is_tool(kind) && place == PlaceKind::BoltRecess) {
    open_visit(world, hand_id, hand.at_bolt);
  } else if (kind == ThingKind::Bolt && place == PlaceKind::Hole) {
    stand_bolt_in_hole(world, hand_id, hand.at_bolt);
  } else if (kind == ThingKind::Rotor) {
    hang_rotor(world, hand_id, hand.v_1);
  } else if (kind == ThingKind::Rag) {
    begin_wipe(world, hand_id);
  } else if (is_instrument(kind)) {
    const Refusal refusal = bring_instrument(world, hand_id);
    if (refusal != Refusal::None) {
      hand.near = true;  // it only got there, it touches nothing
      leave_place(world, hand_id);
      return refusal;
    }
  }
  return Refusal::None;
}

Refusal pass(const World& world, HandId hand_id) {
  HandState& hand = world.hand(hand_id);
  const HandId other_id = World::other(hand_id);
  const ThingId thing = hand.holding;
  const Grip grip = hand.grip;
  end_touch(world, hand_id);
  hand.holding = event::kNoThing;
  hand.grip = Grip::None;
  world.hand(other_id).stage = HandStage::Free;
  hold(world, other_id, thing, grip);
  world.hand(other_id).turned_over = hand.turned_over;
  tell_put_down(world, hand_id, thing);
  tell_took(world, other_id, thing);
  return Refusal::None;
}

Refusal grip_at(const World& world, HandId hand_id, Grip grip) {
  HandState& hand = world.hand(hand_id);
  hand.grip = grip;
  reset_cord(hand.turn);
  reset_cord(hand.along);
  if (hand.holding == event::kNoThing) return Refusal::None;
  const ThingKind kind = world.kind(hand.holding);
  if (kind == ThingKind::Rotor) begin_rotor_touch(world, hand_id, hand.holding);
  if (kind == ThingKind::Rag && hand.at_place != PlaceKind::None) begin_wipe(world, hand_id);
  return Refusal::None;
}

Refusal regrip(const World& world, HandId hand_id) {
  HandState& hand = world.hand(hand_id);
  reset_cord(hand.turn);
  reset_cord(hand.along);
  const bool key = hand.holding != event::kNoThing && world.kind(hand.holding) == ThingKind::LKey;
  VisitState& visit = world.state.visits[static_cast<std::size_t>(hand_id)];
  if (key && visit.open) visit.depth_m = 0.0;  // lifted, turned back by a lobe, set in again
  visit.torque_nm = 0.0;
  visit.press_n = 0.0;
  return Refusal::None;
}

Refusal turn_over(const World& world, HandId hand_id) {
  HandState& hand = world.hand(hand_id);
  switch (world.kind(hand.holding)) {
    case ThingKind::Rotor: {
      ThingState& rotor = thing_state(world, hand.holding);
      rotor.inner_up = !rotor.inner_up;
      look_over(world, hand_id);
      break;
    }
    case ThingKind::Rag:
      turn_rag(world, hand_id);
      break;
    default:
      hand.turned_over = !hand.turned_over;
      break;
  }
  return Refusal::None;
}

Refusal put_back(const World& world, HandId hand_id) {
  const bool rotor = world.kind(world.hand(hand_id).holding) == ThingKind::Rotor;
  lay(world, hand_id, rotor ? Whereabouts::OnBench : Whereabouts::Tray);
  return Refusal::None;
}

Refusal finish(const World& world, HandId hand_id, const event::Action& action) {
  switch (action.kind) {
    case ActionKind::Take:
      return take(world, hand_id, action);
    case ActionKind::Touch:
      return touch(world, hand_id, action);
    case ActionKind::Near:
      return come_near(world, hand_id, action);
    case ActionKind::Bring:
      return bring(world, hand_id, action);
    case ActionKind::PutBack:
      return put_back(world, hand_id);
    case ActionKind::Pass:
      return pass(world, hand_id);
    case ActionKind::GripAt:
      return grip_at(world, hand_id, static_cast<Grip>(action.numbers[1]));
    case ActionKind::Regrip:
      return regrip(world, hand_id);
    case ActionKind::TurnOver:
      return turn_over(world, hand_id);
    case ActionKind::Glove:
      glove(world, hand_id, action.numbers[1] != 0);
      return Refusal::None;
    default:
      return Refusal::None;
  }
}

}  // namespace

bool endangered(const World& world, HandId hand, ThingId thing, PlaceKind place) {
  if (!wheel_spins(world.state)) return false;
  const bool at_wheel = world.kind(thing) == ThingKind::Wheel || thing == world.state.seat.rotor ||
                        numbered_place(place) || place == PlaceKind::HubSeat;
  if (!at_wheel) return false;
  world.emit("endangered", {{"hand", hand_value(hand)},
                            {"skin", skin_value(world, hand)},
                            {"how", world.word("endangered", "how", "turning_rotor")}});
  world.state.stopped = true;
  return true;
}

void begin_rotor_touch(const World& world, HandId hand_id, ThingId rotor) {
  HandState& hand = world.hand(hand_id);
  end_touch(world, hand_id);
  const double rim_m = world.setup.rotors[world.thing(rotor).part].diameter_m / 2.0;
  const PlaceKind place = place_of_grip(hand.grip);
  const double radius_m = place == PlaceKind::TrackOuter ? rim_m - 0.0075 : rim_m;
  begin_touch(world, hand_id, rotor, place, event::kNoBolt, radius_m, 0.0);
}

Refusal arrive(const World& world, HandId hand_id) {
  HandState& hand = world.hand(hand_id);
  const bool was_at = hand.at_place != PlaceKind::None;
  hand.stage = was_at ? HandStage::At : HandStage::Free;
  if (!hand.has_pending) return Refusal::None;
  const event::Action action = hand.pending;
  hand.has_pending = false;
  hand.pending = event::Action{};
  const bool shared = action.kind == ActionKind::Pass ||
                      (action.kind == ActionKind::Take && world.kind(thing_of(action)) == ThingKind::Wheel) ||
                      (hand.holding != event::kNoThing && world.kind(hand.holding) == ThingKind::Wheel);
  // a shared motion has kept the other hand busy until now as well
  if (shared) world.hand(World::other(hand_id)).stage = HandStage::Free;
  const Refusal now = check_motion(world, action);
  return now == Refusal::None ? finish(world, hand_id, action) : now;
}

}  // namespace proofstand::bench

#include "sim/bench/bench_actions.h"

#include <algorithm>

#include "sim/bench/bolt_start.h"
#include "sim/bench/bolt_visit.h"
#include "sim/bench/card.h"
#include "sim/bench/closing_joint.h"
#include "sim/bench/closing_surface.h"
#include "sim/bench/draft.h"
#include "sim/bench/fluid.h"
#include "sim/bench/hand_check.h"
#include "sim/bench/hand_contact.h"
#include "sim/bench/hand_law.h"
#include "sim/bench/hand_motion.h"
#include "sim/bench/hand_tick.h"
#include "sim/bench/instrument.h"
#include "sim/bench/rotor_seat.h"
#include "sim/bench/start_surfaces.h"
#include "sim/bench/tool_work.h"
#include "sim/bench/wheel.h"

namespace proofstand::bench {
namespace {

using event::ActionKind;

constexpr double kPerMicro = 1e-6;
constexpr double kPerMilli = 1e-3;
constexpr double kMostAim_rad = 1.0e4;
constexpr double kMostAlong_m = 1.0;
constexpr double kCollarDrawn_m = -0.001;

Refusal refuse(const World& world, const event::Action& action, Refusal why) {
  const bool by_hand = !event::spec_of(action.kind).fields.empty() &&
                       event::spec_of(action.kind).fields.front().step == event::Step::Hand && action.numbers[0] >= 0 &&
                       action.numbers[0] < static_cast<std::int64_t>(event::kHands);
  Draft refused(world, "refused");
  refused.with_if(by_hand, "hand", static_cast<double>(action.numbers[0]));
  refused.choose("why", code_of(why)).emit();
  return why;
}

Refusal aim_turn(const World& world, HandState& hand, double angle_rad) {
  const HandHold hold = hold_of(world, hand);
  if (!hold.turns) return Refusal::NothingToDo;
  if (hold.contact == Contact::Setting) {
    const ToolState& tool = world.state.tools[world.thing(hand.holding).part];
    if (!tool.unlocked && hand.along.target_1 >= kCollarDrawn_m) return Refusal::Locked;
  }
  aim_cord(hand.turn, base::clamp_1(angle_rad, -kMostAim_rad, kMostAim_rad), hold.twirls);
  hand.kept = false;
  return Refusal::None;
}

Refusal aim_along(const World& world, HandState& hand, double depth_m) {
  if (!hold_of(world, hand).presses) return Refusal::NothingToDo;
  aim_cord(hand.along, base::clamp_1(depth_m, -kMostAlong_m, kMostAlong_m), false);
  hand.kept = false;
  return Refusal::None;
}

Refusal aim_face(const World& world, HandState& hand, const event::Action& action) {
  const Contact contact = hold_of(world, hand).contact;
  if (hand.stage != HandStage::At || (contact != Contact::Face && contact != Contact::Instrument)) {
    return Refusal::NothingToDo;
  }
  const bool rag = world.kind(hand.holding) == ThingKind::Rag;
  hand.aim_radius_m = base::clamp_1(static_cast<double>(action.numbers[1]) * kPerMicro, 0.0, 1.0);
  hand.aim_angle_rad = base::clamp_1(static_cast<double>(action.numbers[2]) * kPerMicro, -kMostAim_rad, kMostAim_rad);
  hand.aim_press_n = base::clamp_1(static_cast<double>(action.numbers[3]) * kPerMilli, 0.0, rag ? 30.0 : 5.0);
  hand.kept = false;
  return Refusal::None;
}

Refusal slack(HandState& hand) {
  slacken(hand.turn);
  slacken(hand.along);
  hand.aim_radius_m = hand.face_radius_m;
  hand.aim_angle_rad = hand.face_angle_rad;
  hand.aim_press_n = 0.0;
  hand.kept = false;
  return Refusal::None;
}

Refusal throw_off(const World& world, HandId hand_id, double rate_rad_s) {
  const HandState& hand = world.hand(hand_id);
  const Contact contact = hold_of(world, hand).contact;
  if (contact != Contact::TyreHand && contact != Contact::TyreFingers) return Refusal::NothingToDo;
  leave_place(world, hand_id);
  throw_wheel(world, hand_id, rate_rad_s);
  return Refusal::None;
}

Refusal tip(HandState& hand, const event::Action& action) {
  if (hand.stage != HandStage::At) return Refusal::NothingToDo;
  hand.tilt_x_rad = static_cast<double>(action.numbers[1]) * kPerMicro;
  hand.tilt_y_rad = static_cast<double>(action.numbers[2]) * kPerMicro;
  return Refusal::None;
}

Refusal act(const World& world, const event::Action& action) {
  if (is_motion(action.kind)) return begin_motion(world, action);
  const HandId hand_id = action.hand();
  HandState& hand = world.hand(hand_id);
  switch (action.kind) {
    case ActionKind::Leave:
      return leave(world, hand_id);
    case ActionKind::AimTurn:
      return aim_turn(world, hand, static_cast<double>(action.numbers[1]) * kPerMicro);
    case ActionKind::AimAlong:
      return aim_along(world, hand, static_cast<double>(action.numbers[1]) * kPerMicro);
    case ActionKind::AimFace:
      return aim_face(world, hand, action);
    case ActionKind::Slack:
      return slack(hand);
    case ActionKind::Keep:
      hand.kept = hand.stage == HandStage::At;
      return hand.kept ? Refusal::None : Refusal::NothingToDo;
    case ActionKind::Throw:
      return throw_off(world, hand_id, static_cast<double>(action.numbers[1]) * kPerMicro);
    case ActionKind::Tip:
      return tip(hand, action);
    case ActionKind::Squeeze:
      return squeeze(world, hand_id, action.numbers[1]);
    default:
      return Refusal::NotPartOfThisJob;
  }
}

void arrive_due(const World& world, HandId hand_id) {
  HandState& hand = world.hand(hand_id);
  if (hand.stage != HandStage::Busy || hand.busy_until > world.state.tick) return;
  const event::Action arriving = hand.pending;
  const Refusal refusal = arrive(world, hand_id);
  if (refusal != Refusal::None) refuse(world, arriving, refusal);
  if (!hand.has_waiting || hand.stage == HandStage::Busy || world.state.stopped) return;
  const event::Action next = hand.waiting;
  hand.has_waiting = false;
  hand.waiting = event::Action{};
  const Refusal now = act(world, next);
  if (now != Refusal::None) refuse(world, next, now);
}

}  // namespace

Refusal apply_action(const World& world, const event::Action& action) {
  if (event::spec_of(action.kind).later) return refuse(world, action, Refusal::NotPartOfThisJob);
  const Refusal numbers = check_numbers(world, action);
  if (numbers != Refusal::None) return refuse(world, action, numbers);
  switch (action.kind) {
    case ActionKind::Write: {
      const Refusal refusal = write_card(world, static_cast<CardEntryId>(action.numbers[0]), action.text);
      return refusal == Refusal::None ? refusal : refuse(world, action, refusal);
    }
    case ActionKind::Gap:
      world.state.gap_ticks += action.numbers[0];
      world.emit("gap", {{"time", base::seconds(action.numbers[0])}});
      return Refusal::None;
    case ActionKind::HandOver:
      hand_over(world);
      return Refusal::None;
    default:
      break;
  }
  HandState& hand = world.hand(action.hand());
  if (hand.stage == HandStage::Busy) {
    hand.waiting = action;
    hand.has_waiting = true;
    return Refusal::None;
  }
  const Refusal refusal = act(world, action);
  return refusal == Refusal::None ? refusal : refuse(world, action, refusal);
}

void step_bench(const World& world) {
  BenchState& state = world.state;
  if (state.wheel.spin_open && wheel_stops_at(world) <= state.tick) end_spin(world);
  for (const HandId hand : {HandId::Left, HandId::Right}) {
    arrive_due(world, hand);
    if (state.stopped) return;
  }
  const bool due = instrument_due_at(world) <= state.tick;
  for (const HandId hand : {HandId::Left, HandId::Right}) {
    const HandState& now = world.hand(hand);
    if (now.stage == HandStage::Busy) continue;
    const bool reads =
        due && now.stage == HandStage::At && now.holding != event::kNoThing && is_instrument(world.kind(now.holding));
    if (reads || !hand_rests(world, hand)) step_hand(world, hand);
  }
  if (dial_stands(state)) step_dial(world);
}

base::Tick next_due(const World& world) {
  base::Tick next = kNever;
  for (const HandState& hand : world.state.hands) {
    if (hand.stage == HandStage::Busy) next = std::min(next, hand.busy_until);
  }
  if (world.state.wheel.spin_open) next = std::min(next, wheel_stops_at(world));
  next = std::min(next, instrument_due_at(world));
  return std::max(next, world.state.tick + 1);
}

bool at_rest(const World& world) {
  if (!hand_rests(world, HandId::Left) || !hand_rests(world, HandId::Right)) return false;
  return !(dial_stands(world.state) && world.state.wheel.spin_open);
}

void hand_over(const World& world) {
  BenchState& state = world.state;
  for (const HandId hand : {HandId::Left, HandId::Right}) close_visit(world, hand);
  close_joint(world);
  close_surfaces(world);
  world.emit("handed_over", {{"time", base::seconds(state.tick - state.gap_ticks)},
                             {"wheel_in_bike", state.wheel.at == WheelAt::Bike ? 1.0 : 0.0}});
  state.handed_over = true;
}

void start_state(const World& world) {
  BenchState& state = world.state;
  state.things.assign(world.setup.things.size(), ThingState{});
  for (std::size_t i = 0; i < world.setup.things.size(); ++i) {
    switch (world.setup.things[i].kind) {
      case ThingKind::Wheel:
      case ThingKind::WheelStand:
      case ThingKind::Bike:
      case ThingKind::Bench:
      case ThingKind::Tray:
      case ThingKind::Card:
      case ThingKind::Sheet:
      case ThingKind::Gloves:
        state.things[i].where = Whereabouts::Fixed;
        break;
      default:
        break;
    }
  }
  state.bolts.assign(world.setup.bolts.size(), BoltState{});
  for (std::size_t i = 0; i < world.setup.bolts.size(); ++i) {
    const BoltPart& part = world.setup.bolts[i];
    BoltState& bolt = state.bolts[i];
    bolt.recess_wear_m = part.recess_wear_m;
    bolt.recess_debris_m = part.recess_debris_m;
    bolt.patch_uses = part.patch_uses;
    bolt.grease_kg_m2 = part.grease_kg_m2;
    bolt.oil_kg_m2 = part.oil_kg_m2;
  }
  state.holes.assign(world.setup.bolt_count(), HoleState{});
  state.tools.assign(world.setup.tools.size(), ToolState{});
  start_surfaces(world);
  start_tools(world);
  start_rotor(world);
  start_bolts(world);
  start_figures(world);
}

}  // namespace proofstand::bench

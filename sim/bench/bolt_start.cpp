#include "sim/bench/bolt_start.h"

#include <algorithm>

#include "sim/base/math.h"
#include "sim/base/random.h"
#include "sim/bench/bolt_turn.h"
#include "sim/bench/bolt_visit.h"
#include "sim/bench/hand_law.h"
#include "sim/bench/rotor_seat.h"
#include "sim/physics/thread_geometry.h"
#include "sim/physics/thread_start.h"

namespace proofstand::bench {
namespace {

constexpr double kOvershoot_turns = 0.25;  // turned back no further than this past the drop, it is still at its start
constexpr double kStartTold_turns = 0.5;
constexpr double kBackedOut_1 = 0.95;  // thread strength left when a crossed start is backed out at once
constexpr double kUsed_turns = 3.0;    // from here a patch has been worked

bool crosses(const World& world, const HandState& hand, const HoleState& hole) {
  physics::StartAttempt start;
  start.tilt_rad = hole.tilt_rad;
  start.phase_1 = hole.phase_from_1;
  start.turned_back = hole.turned_back;
  start.offset_m = hand.holding != event::kNoThing ? hand.u_1 : 0.0;
  const HubPart& hub = world.setup.hub;
  const physics::ThreadGeometry thread = physics::compute_thread(hub.thread_diameter_m, hub.thread_pitch_m);
  return physics::start_crosses(start, thread.pitch_m, thread.pitch_diameter_m);
}

// nothing of an earlier run in and its pulls counts for the next
void forget_pulls(HoleState& hole) {
  hole.turns_1 = 0.0;
  hole.phase_1 = 0.0;
  hole.preload_n = 0.0;
  hole.peak_n = 0.0;
  hole.torque_nm = 0.0;
  hole.embed_m = 0.0;
  hole.snug = false;
  hole.rounds = 0;
}

void catch_thread(const World& world, HandId hand, BoltId bolt) {
  HoleState& hole = hole_of(world, bolt);
  hole.crossed = crosses(world, world.hand(hand), hole);
  hole.started = true;
  forget_pulls(hole);
  hole.cracked = false;
  hole.set_locker_1 = 0.0;
  const BoltModel model = bolt_model(world, bolt, 0.0);
  hole.snug_turns_1 = model.bears_turns_1 - hole.gap_m / model.pitch_m;
  SeatState& seat = world.state.seat;
  if (seat.rotor != event::kNoThing) seat.angle_rad = std::min(seat.angle_rad, seat.play_rad);
}

// a bolt that has not caught: turning back finds the start, turning on runs into it
void turn_loose(const World& world, HandId hand, BoltId bolt, double moved_rad) {
  HoleState& hole = hole_of(world, bolt);
  VisitState& visit = world.state.visits[static_cast<std::size_t>(hand)];
  const double turns = moved_rad / base::kTwoPi;
  hole.phase_1 += turns;
  if (turns < 0.0) {
    if (hole.phase_1 <= 0.0) {
      hole.phase_1 += 1.0;
      hole.turned_back = true;
      visit.dropped = true;
    } else if (hole.turned_back && hole.phase_1 < 1.0 - kOvershoot_turns) {
      hole.turned_back = false;  // turned past it: the start is gone again until the next drop
      visit.dropped = false;
    }
    hole.phase_from_1 = hole.phase_1;
  } else if (hole.phase_1 >= 1.0) {
    catch_thread(world, hand, bolt);
  }
}

void tell_bolt_out(const World& world, HandId hand, BoltId bolt, ThingId thing) {
  world.emit("bolt_out", {{"hand", static_cast<double>(hand)},
                          {"bolt", static_cast<double>(event::index_of(bolt))},
                          {"thing", static_cast<double>(event::index_of(thing))}});
}

void empty_hole(const World& world, BoltId bolt) {
  HoleState& hole = hole_of(world, bolt);
  BoltState& part = bolt_state(world, bolt);
  if (hole.turns_1 >= kUsed_turns || hole.snug) ++part.patch_uses;
  hole.bolt = event::kNoThing;
  hole.started = false;
  hole.crossed = false;
  hole.turned_back = false;
  hole.start_told = false;
  hole.caught_crossed_deep = false;
  hole.start_torque_nm = 0.0;
  hole.tilt_rad = 0.0;
  hole.phase_from_1 = 0.0;
  hole.closed_m = 0.0;
  forget_pulls(hole);
}

void take_into_fingers(const World& world, HandId hand, BoltId bolt) {
  HandState& state = world.hand(hand);
  const HoleState& hole = hole_of(world, bolt);
  const ThingId thing = hole.bolt;
  const bool told = hole.start_told;
  if (hole.crossed && !hole.caught_crossed_deep) hole_of(world, bolt).strip_1 *= kBackedOut_1;
  close_visit(world, hand);
  empty_hole(world, bolt);
  state.holding = thing;
  state.grip = Grip::Fingers;
  state.stage = HandStage::Free;
  state.at_thing = event::kNoThing;
  state.at_place = PlaceKind::None;
  state.at_bolt = event::kNoBolt;
  reset_cord(state.turn);
  reset_cord(state.along);
  world.state.things[event::index_of(thing)].where =
      hand == HandId::Left ? Whereabouts::LeftHand : Whereabouts::RightHand;
  if (told) tell_bolt_out(world, hand, bolt, thing);
  tell_bolts_in(world);
}

}  // namespace

void stand_bolt_in_hole(const World& world, HandId hand, BoltId bolt) {
  const HandState& state = world.hand(hand);
  HoleState& hole = hole_of(world, bolt);
  hole.bolt = state.holding;
  BoltState& part = bolt_state(world, bolt);
  const std::uint64_t index = world.thing(state.holding).part;
  const double x = state.tilt_x_rad, y = state.tilt_y_rad;
  hole.tilt_rad = base::sqrt_1(x * x + y * y);
  hole.phase_1 =
      base::draw_unit({world.setup.seed, "phase of a thread", index, static_cast<std::uint64_t>(++part.starts)});
  hole.phase_from_1 = hole.phase_1;
  open_visit(world, hand, bolt);
  tell_bolts_in(world);
}

bool leave_bolt(const World& world, HandId hand) {
  HandState& state = world.hand(hand);
  const BoltId bolt = state.at_bolt;
  HoleState& hole = hole_of(world, bolt);
  if (hole.started) {
    close_visit(world, hand);
    world.state.things[event::index_of(hole.bolt)].where = Whereabouts::InHole;
    state.holding = event::kNoThing;
    state.grip = Grip::None;
    return true;
  }
  close_visit(world, hand);
  empty_hole(world, bolt);
  tell_bolts_in(world);
  return false;
}

void step_fingers(const World& world, HandId hand, const HandHold& hold) {
  HandState& state = world.hand(hand);
  const BoltId bolt = state.at_bolt;
  const AxisLaw law = turn_law();
  step_twirl(state.turn, law, hold.rate_rad_s);
  const double lead = state.turn.end_1 - state.turn.hand_1;
  const double most_rad = twirl_limit_1(state.turn, hold.rate_rad_s);
  VisitState& visit = world.state.visits[static_cast<std::size_t>(hand)];
  if (state.turn.level == 0 || lead == 0.0) {
    visit.torque_nm = 0.0;
    move_hand(state.turn, 0.0);
    return;
  }
  double moved_rad = most_rad;
  if (hole_of(world, bolt).started) {
    const double limit_nm = hold.full_nm * force_share_1(state.turn.level);
    const BoltAnswer answer =
        turn_bolt(world, hand, bolt, lead > 0.0 ? +1 : -1, limit_nm, most_rad < 0.0 ? -most_rad : most_rad);
    moved_rad = answer.moved_rad;
    if (answer.came_out) {
      take_into_fingers(world, hand, bolt);
      return;
    }
    tell_start_when_due(world, hand, bolt);
  } else {
    turn_loose(world, hand, bolt, moved_rad);
  }
  visit.hand_rad += moved_rad;
  move_hand(state.turn, moved_rad);
}

void tell_start_when_due(const World& world, HandId hand, BoltId bolt) {
  HoleState& hole = hole_of(world, bolt);
  if (hole.start_told || hole.turns_1 < kStartTold_turns) return;
  hole.start_told = true;
  std::string_view by = "fingers";
  const ThingId held = world.hand(hand).holding;
  if (held != event::kNoThing && world.kind(held) == ThingKind::LKey) by = "key";
  if (held != event::kNoThing &&
      (world.kind(held) == ThingKind::Driver || world.kind(held) == ThingKind::ClickDriver)) {
    by = "driver";
  }
  world.emit("started", {{"hand", static_cast<double>(hand)},
                         {"bolt", static_cast<double>(event::index_of(bolt))},
                         {"thing", static_cast<double>(event::index_of(hole.bolt))},
                         {"by", world.word("started", "by", by)},
                         {"tilt", hole.tilt_rad},
                         {"turned_back", hole.turned_back ? 1.0 : 0.0},
                         {"crossed", hole.crossed ? 1.0 : 0.0},
                         {"torque", std::max(0.0, hole.start_torque_nm)}});
}

void drop_bolt(const World& world, HandId hand) {
  HandState& state = world.hand(hand);
  const BoltId bolt = state.at_bolt;
  const ThingId thing = hole_of(world, bolt).bolt;
  close_visit(world, hand);
  empty_hole(world, bolt);
  world.state.things[event::index_of(thing)].where = Whereabouts::Tray;
  state.stage = HandStage::Free;
  state.at_thing = event::kNoThing;
  state.at_place = PlaceKind::None;
  state.at_bolt = event::kNoBolt;
  reset_cord(state.turn);
  reset_cord(state.along);
  tell_bolt_out(world, hand, bolt, thing);
  tell_bolts_in(world);
}

void start_bolts(const World& world) {
  for (std::size_t i = 0; i < world.state.holes.size(); ++i) {
    HoleState& hole = world.state.holes[i];
    const BossPart& boss = world.setup.hub.bosses[i];
    hole.dirt_m = boss.dirt_m;
    hole.old_locker_nm = boss.old_locker_nm;
    hole.strip_1 = boss.thread_strength_1;
    hole.grease_kg_m2 = boss.grease_kg_m2;
  }
  compute_gaps(world);
  for (std::size_t i = 0; i < world.setup.fitted_bolts.size() && i < world.state.holes.size(); ++i) {
    const ThingId thing = world.setup.fitted_bolts[i];
    if (thing == event::kNoThing) continue;
    HoleState& hole = world.state.holes[i];
    hole.bolt = thing;
    hole.started = true;
    hole.start_told = true;
    hole.snug = true;
    hole.set_locker_1 = world.setup.fitted_locker_1;
    world.state.things[event::index_of(thing)].where = Whereabouts::InHole;
    const BoltId bolt = static_cast<BoltId>(i);
    const BoltModel loose = bolt_model(world, bolt, draw_friction_z_1(world, bolt));
    hole.snug_turns_1 = std::min(loose.bears_turns_1, loose.bottom_turns_1) - hole.gap_m / loose.pitch_m;
    hole.turns_1 = hole.snug_turns_1;
    const BoltModel model = bolt_model(world, bolt, draw_friction_z_1(world, bolt));
    const double patch_nm = drag_in_nm(model, hole, hole.turns_1);
    hole.torque_nm = world.setup.fitted_torque_nm;
    const double wanted_n = std::max(0.0, (hole.torque_nm - patch_nm) / model.in_nm_per_n);
    hole.preload_n = std::min(wanted_n, model.yield_n);
    hole.turns_1 = turns_at_1(model, hole, hole.preload_n);
    hole.peak_n = hole.preload_n;
    hole.closed_m = std::min(hole.gap_m, hole.preload_n / model.seat_n_per_m);
    hole.embed_m = 2.0e-6;
  }
  tell_bolts_in(world);
}

}  // namespace proofstand::bench

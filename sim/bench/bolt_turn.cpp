#include "sim/bench/bolt_turn.h"

#include <algorithm>

#include "sim/base/math.h"
#include "sim/bench/hand_contact.h"
#include "sim/bench/rotor_seat.h"
#include "sim/bench/rotor_turn.h"
#include "sim/bench/tool_seat.h"

namespace proofstand::bench {
namespace {

constexpr double kHardening_1 = 0.03;      // slope past yield, of the elastic one
constexpr double kStrippedShare_1 = 0.08;  // what a stripped thread still carries
constexpr double kLockerCrumbs_nm = 0.12;  // drag of a cured film after it has sheared
constexpr double kTight_nm = 0.3;          // locker that counts as tight without any preload
constexpr double kNowhere_turns = 1.0e3;   // where a broken bolt would bear

struct Turning {
  const World& world;
  HandId hand = HandId::Right;
  BoltId bolt = event::kNoBolt;
  HoleState& hole;
  BoltState& part;
  VisitState& visit;
  BoltModel model;
};

double yield_now_n(const Turning& t) {
  const double hardened = t.model.yield_n + kHardening_1 * t.model.bolt_n_per_m * t.part.stretch_m;
  return std::min(hardened, t.model.most_n);
}

// past yield the bolt grows longer: the line from which its preload counts moves along
void stretch(Turning& t, double turns_1) {
  const double yield_n = yield_now_n(t);
  if (preload_at_n(t.model, t.hole, turns_1) <= yield_n) return;
  const double beyond_m = (turns_1 - turns_at_1(t.model, t.hole, yield_n)) * t.model.pitch_m;
  const double plastic_m = beyond_m * (1.0 - kHardening_1);
  t.part.stretch_m += plastic_m;
  t.hole.snug_turns_1 += plastic_m / t.model.pitch_m;
  if (t.part.stretch_m < t.model.break_stretch_m) return;
  t.part.broken = true;
  t.hole.snug_turns_1 = turns_1 + kNowhere_turns;
}

void strip(Turning& t, double turns_1) {
  double force_n = preload_at_n(t.model, t.hole, turns_1);
  if (force_n <= 0.0 || force_n < t.model.strip_n) return;
  if (!t.hole.stripped) {
    t.hole.stripped = true;
    t.hole.strip_1 *= kStrippedShare_1;
    t.model.strip_n *= kStrippedShare_1;
  }
  // the thread carries no more: the head stays down and the bolt turns without drawing on
  const double carried_turns = turns_at_1(t.model, t.hole, t.model.strip_n) - t.hole.snug_turns_1;
  t.hole.snug_turns_1 = turns_1 - carried_turns;
}

void note_torque(Turning& t, double torque_nm) {
  t.visit.torque_nm = torque_nm;
  t.visit.peak_in_nm = std::max(t.visit.peak_in_nm, torque_nm);
  t.visit.peak_out_nm = std::max(t.visit.peak_out_nm, -torque_nm);
  if (t.visit.clicks > 0) t.visit.peak_after_nm = std::max(t.visit.peak_after_nm, torque_nm);
  if (torque_nm > 0.0 && t.hole.preload_n > 0.0) t.hole.torque_nm = std::max(0.0, torque_nm);
}

void note_snug(Turning& t) {
  if (t.hole.snug || t.hole.preload_n < kHolding_n) return;
  t.hole.snug = true;
  t.visit.snugged_now = true;
  t.visit.others_snug = others_holding(t.world, t.bolt);
  t.visit.rotor_held = rotor_held_by(t.world, World::other(t.hand));
}

// how far in the bolt can go with this torque, in turns
double reachable_turns_1(const Turning& t, double limit_nm, double drag_nm) {
  const double force_n = (limit_nm - drag_nm) / t.model.in_nm_per_n;
  const double yield_n = yield_now_n(t);
  double turns = turns_at_1(t.model, t.hole, std::min(force_n, yield_n));
  if (force_n > yield_n) {
    const double soft_n_per_m = kHardening_1 * t.model.bolt_n_per_m;
    turns += yield_n < t.model.most_n ? (force_n - yield_n) / soft_n_per_m / t.model.pitch_m : kNowhere_turns;
  }
  if (force_n >= t.model.strip_n) turns += kNowhere_turns;
  return turns;
}

BoltAnswer held(Turning& t, int sense, double limit_nm) {
  t.visit.sliding = false;
  BoltAnswer answer;
  answer.held = true;
  answer.torque_nm = sense > 0 ? limit_nm : -limit_nm;
  note_torque(t, answer.torque_nm);
  return answer;
}

BoltAnswer turn_in(Turning& t, double limit_nm, double most_rad) {
  const double from_turns = t.hole.turns_1;
  const double drag_nm = drag_in_nm(t.model, t.hole, from_turns);
  const double rest_gain = t.visit.sliding ? 1.0 : t.model.rest_gain_1;
  const double needed_nm = drag_nm + t.hole.preload_n * t.model.in_nm_per_n * rest_gain;
  if (limit_nm < needed_nm || from_turns >= t.model.bottom_turns_1) return held(t, +1, limit_nm);

  const double asked_turns = from_turns + most_rad / base::kTwoPi;
  const double to_turns =
      std::min({asked_turns, t.model.bottom_turns_1, std::max(from_turns, reachable_turns_1(t, limit_nm, drag_nm))});
  BoltAnswer answer;
  answer.moved_rad = (to_turns - from_turns) * base::kTwoPi;
  t.hole.turns_1 = to_turns;
  stretch(t, to_turns);
  strip(t, to_turns);
  t.hole.preload_n = preload_at_n(t.model, t.hole, to_turns);
  t.hole.peak_n = std::max(t.hole.peak_n, t.hole.preload_n);
  t.hole.closed_m = std::min(t.hole.gap_m, t.hole.preload_n / t.model.seat_n_per_m);
  answer.held = to_turns < asked_turns;
  answer.torque_nm =
      answer.held ? limit_nm : drag_in_nm(t.model, t.hole, to_turns) + t.hole.preload_n * t.model.in_nm_per_n;
  t.visit.sliding = !answer.held;
  t.visit.turned_in_rad += answer.moved_rad;
  if (t.hole.crossed && to_turns > 1.0 && !t.hole.caught_crossed_deep) {
    t.hole.caught_crossed_deep = true;
    t.hole.strip_1 *= 0.5;
  }
  if (to_turns <= 0.5) t.hole.start_torque_nm = std::max(t.hole.start_torque_nm, answer.torque_nm);
  note_torque(t, answer.torque_nm);
  note_snug(t);
  press_rotor(t.world, t.bolt);
  return answer;
}

void tell_cracked(Turning& t, double torque_nm) {
  const HandState& hand = t.world.hand(t.hand);
  t.hole.cracked = true;
  t.visit.cracked_now = true;
  const bool with_tool = hand.holding != event::kNoThing;
  const double item = static_cast<double>(event::index_of(hand.holding));
  const double share = t.visit.depth_m / full_depth_m();
  if (with_tool) {
    t.world.emit("cracked", {{"hand", static_cast<double>(t.hand)},
                             {"bolt", static_cast<double>(event::index_of(t.bolt))},
                             {"tool", item},
                             {"peak_torque", torque_nm},
                             {"depth_share", share}});
  } else {
    t.world.emit("cracked", {{"hand", static_cast<double>(t.hand)},
                             {"bolt", static_cast<double>(event::index_of(t.bolt))},
                             {"peak_torque", torque_nm}});
  }
}

BoltAnswer turn_out(Turning& t, double limit_nm, double most_rad) {
  const double from_turns = t.hole.turns_1;
  const double rest_gain = t.visit.sliding ? 1.0 : t.model.rest_gain_1;
  const double needed_nm =
      drag_out_nm(t.model, t.hole, from_turns) + t.model.lock_nm + t.hole.preload_n * t.model.out_nm_per_n * rest_gain;
  if (limit_nm < needed_nm) return held(t, -1, limit_nm);

  const bool tight = t.hole.preload_n >= kHolding_n || t.model.lock_nm >= kTight_nm;
  note_torque(t, -needed_nm);
  if (tight && !t.hole.cracked) tell_cracked(t, needed_nm);
  if (t.hole.set_locker_1 > 0.0) {  // the film has sheared: crumbs drag from now on
    t.hole.set_locker_1 = 0.0;
    t.hole.old_locker_nm = std::max(t.hole.old_locker_nm, kLockerCrumbs_nm);
  }
  BoltAnswer answer;
  const double to_turns = std::max(0.0, from_turns - most_rad / base::kTwoPi);
  answer.moved_rad = -(from_turns - to_turns) * base::kTwoPi;
  answer.came_out = to_turns <= 0.0;
  t.hole.turns_1 = to_turns;
  t.hole.preload_n = preload_at_n(t.model, t.hole, to_turns);
  t.hole.closed_m = std::min(t.hole.gap_m, t.hole.preload_n / t.model.seat_n_per_m);
  answer.torque_nm = -(drag_out_nm(t.model, t.hole, to_turns) + t.hole.preload_n * std::max(0.0, t.model.out_nm_per_n));
  t.visit.sliding = true;
  t.visit.torque_nm = answer.torque_nm;
  t.visit.turned_out_rad -= answer.moved_rad;
  if (t.hole.preload_n <= 0.0) t.hole.torque_nm = 0.0;
  press_rotor(t.world, t.bolt);
  return answer;
}

}  // namespace

BoltAnswer turn_bolt(const World& world, HandId hand, BoltId bolt, int sense, double limit_nm, double most_rad) {
  VisitState& visit = world.state.visits[static_cast<std::size_t>(hand)];
  Turning turning = {world,
                     hand,
                     bolt,
                     hole_of(world, bolt),
                     bolt_state(world, bolt),
                     visit,
                     bolt_model(world, bolt, visit.friction_z_1)};
  return sense > 0 ? turn_in(turning, limit_nm, most_rad) : turn_out(turning, limit_nm, most_rad);
}

std::int64_t others_holding(const World& world, BoltId bolt) {
  std::int64_t count = 0;
  for (std::size_t i = 0; i < world.state.holes.size(); ++i) {
    if (i != event::index_of(bolt) && world.state.holes[i].preload_n >= kHolding_n) ++count;
  }
  return count;
}

}  // namespace proofstand::bench

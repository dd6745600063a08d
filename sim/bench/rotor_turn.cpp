#include "sim/bench/rotor_turn.h"

#include <algorithm>

#include "sim/base/math.h"
#include "sim/base/random.h"
#include "sim/bench/bolt_model.h"
#include "sim/bench/hand_contact.h"
#include "sim/bench/rotor_seat.h"

namespace proofstand::bench {
namespace {

constexpr double kEaseLeast_1 = 0.30, kEaseMost_1 = 0.90;  // of the play; common practice, no source
constexpr double kToldFrom_1 = 0.05;                       // of the play: less motion makes no record
constexpr double kTakenUp_1 = 0.05;                        // of the play left: counts as taken up

// friction under the bolts that a hand must overcome
double friction_nm(const World& world) {
  double preload_n = 0.0;
  for (const HoleState& hole : world.state.holes) preload_n += hole.preload_n;
  return preload_n * world.setup.brake.seat_friction_1 * world.setup.hub.hole_circle_m / 2.0;
}

void tell_turned(const World& world, HandId hand) {
  SeatState& seat = world.state.seat;
  const double moved_rad = seat.angle_rad - seat.turn_from_rad;
  seat.turn_open = false;
  const double size = moved_rad < 0.0 ? -moved_rad : moved_rad;
  if (size < kToldFrom_1 * seat.play_rad) return;
  world.emit("rotor_turned",
             {{"hand", static_cast<double>(hand)},
              {"rotor", static_cast<double>(rotor_item(world.setup, seat.rotor))},
              {"sense", world.word("rotor_turned", "sense", moved_rad < 0.0 ? "against_bolts" : "with_bolts")},
              {"clearance", clearance_m(world)},
              {"snug", static_cast<double>(snug_bolts(world.state))}});
}

bool on_rotor(const World& world, HandId hand) {
  const HandState& state = world.hand(hand);
  return world.state.seat.rotor != event::kNoThing && state.stage == HandStage::At &&
         state.at_thing == world.state.seat.rotor && hold_of(world, state).contact == Contact::RotorHold;
}

}  // namespace

double turn_rotor_rad(const World& world, HandId hand, double limit_nm, double most_rad) {
  SeatState& seat = world.state.seat;
  if (!any_started(world.state)) return most_rad;  // nothing to bear on: rotor and wheel simply turn
  if (limit_nm < friction_nm(world)) return 0.0;
  const double to_rad = base::clamp_1(seat.angle_rad - most_rad, 0.0, seat.play_rad);
  const double moved_rad = seat.angle_rad - to_rad;
  if (moved_rad == 0.0) return 0.0;
  if (!seat.turn_open) {
    seat.turn_open = true;
    seat.turn_from_rad = seat.angle_rad;
  }
  seat.angle_rad = to_rad;
  if (to_rad == 0.0 || to_rad == seat.play_rad) tell_turned(world, hand);
  return moved_rad;
}

void let_go_of_rotor(const World& world, HandId hand) {
  SeatState& seat = world.state.seat;
  if (seat.rotor == event::kNoThing) return;
  if (seat.turn_open) tell_turned(world, hand);
  if (!any_started(world.state) || snug_bolts(world.state) > 0 || on_rotor(world, World::other(hand))) return;
  const std::uint64_t part = world.thing(seat.rotor).part;
  const double share =
      base::draw_between({world.setup.seed, "rotor eases", part, static_cast<std::uint64_t>(++seat.eased_count)},
                         kEaseLeast_1, kEaseMost_1);
  const double eased_rad = std::max(seat.angle_rad, share * seat.play_rad);
  if (eased_rad - seat.angle_rad < kToldFrom_1 * seat.play_rad) return;
  seat.angle_rad = eased_rad;
  world.emit("rotor_eased",
             {{"rotor", static_cast<double>(rotor_item(world.setup, seat.rotor))}, {"clearance", clearance_m(world)}});
}

bool rotor_held_by(const World& world, HandId hand) {
  const SeatState& seat = world.state.seat;
  return on_rotor(world, hand) && seat.angle_rad <= kTakenUp_1 * seat.play_rad;
}

bool rotor_stands(const World& world, HandId hand) {
  if (!on_rotor(world, hand) || !any_started(world.state)) return false;
  const Cord& cord = world.hand(hand).turn;
  if (cord.level == 0) return false;
  const SeatState& seat = world.state.seat;
  return cord.end_1 > cord.hand_1 ? seat.angle_rad == 0.0 : seat.angle_rad == seat.play_rad;
}

double clearance_m(const World& world) { return world.state.seat.angle_rad * world.setup.hub.hole_circle_m / 2.0; }

std::int64_t snug_bolts(const BenchState& state) {
  return std::count_if(state.holes.begin(), state.holes.end(),
                       [](const HoleState& hole) { return hole.preload_n >= kHolding_n; });
}

}  // namespace proofstand::bench

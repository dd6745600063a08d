#include "sim/bench/wheel.h"

#include <cmath>

#include "sim/bench/dial.h"
#include "sim/bench/draft.h"
#include "sim/bench/rub.h"
#include "sim/bench/wiping.h"

namespace proofstand::bench {
namespace {

// front wheel with its tyre, and its bearings with their seals
constexpr double kWheelInertia_kg_m2 = 0.10;
constexpr double kBearingDrag_nm = 0.012;
constexpr double kTicks_s = static_cast<double>(base::kTicksPerSecond);

double magnitude(double x) { return x < 0.0 ? -x : x; }

/// Ticks until a spin falls to the standing rate.
double run_s(const WheelState& wheel) {
  const double over = magnitude(wheel.rate_rad_s) - kStandingRate_rad_s;
  return over > 0.0 ? over / wheel.drag_rad_s2 : 0.0;
}

bool at_wheel(const World& world, const HandState& hand) {
  if (hand.stage != HandStage::At || hand.at_thing == event::kNoThing) return false;
  if (hand.at_place == PlaceKind::Tyre || hand.at_place == PlaceKind::Rim) return true;
  if (hand.at_place == PlaceKind::BoltRecess || hand.at_place == PlaceKind::BoltHead) return true;
  return hand.at_thing == world.state.seat.rotor && world.state.seat.rotor != event::kNoThing;
}

}  // namespace

double wheel_angle_rad(const BenchState& state) {
  const WheelState& wheel = state.wheel;
  if (!wheel.spin_open) return wheel.angle_rad;
  double t = static_cast<double>(state.tick - wheel.spin_tick) / kTicks_s;
  const double last = run_s(wheel);
  if (t > last) t = last;
  const double sign = wheel.rate_rad_s < 0.0 ? -1.0 : 1.0;
  return wheel.angle_rad + wheel.rate_rad_s * t - sign * 0.5 * wheel.drag_rad_s2 * t * t;
}

double wheel_rate_rad_s(const BenchState& state) {
  const WheelState& wheel = state.wheel;
  if (!wheel.spin_open) return 0.0;
  const double t = static_cast<double>(state.tick - wheel.spin_tick) / kTicks_s;
  if (t >= run_s(wheel)) return 0.0;
  const double sign = wheel.rate_rad_s < 0.0 ? -1.0 : 1.0;
  return wheel.rate_rad_s - sign * wheel.drag_rad_s2 * t;
}

bool wheel_spins(const BenchState& state) {
  return state.wheel.spin_open && magnitude(wheel_rate_rad_s(state)) > kStandingRate_rad_s;
}

void tell_wheel(const World& world) {
  world.emit("wheel_at", {{"place", static_cast<double>(world.state.wheel.at)}});
  world.emit("wheel_turning", {{"turning", wheel_spins(world.state) ? 1.0 : 0.0}});
}

void throw_wheel(const World& world, HandId hand_id, double rate_rad_s) {
  const double rate = base::clamp_1(rate_rad_s, -kFastestThrow_rad_s, kFastestThrow_rad_s);
  if (magnitude(rate) <= kStandingRate_rad_s || world.state.wheel.at == WheelAt::Hands) return;
  if (world.state.wheel.spin_open) end_spin(world);
  WheelState& wheel = world.state.wheel;
  const bool in_bike = wheel.at == WheelAt::Bike;
  const Rub rub = in_bike ? rub_in_caliper(world) : Rub{};
  wheel.rate_rad_s = rate;
  wheel.spin_tick = world.state.tick;
  wheel.spin_from_rad = wheel.angle_rad;
  wheel.spin_peak_rad_s = magnitude(rate);
  wheel.spin_open = true;
  wheel.drag_rad_s2 = (kBearingDrag_nm + rub.torque_nm) / kWheelInertia_kg_m2;
  wheel.rub_share_1 = rub.share_1;
  world.emit("wheel_turning", {{"turning", 1.0}});
  const HandId other = World::other(hand_id);
  if (!at_wheel(world, world.hand(other))) return;
  Draft danger(world, "endangered");
  danger.with("hand", hand_value(other)).with("skin", world.hand(other).gloved ? 1.0 : 0.0);
  danger.choose("how", "turning_rotor").emit();
  world.state.stopped = true;
}

void turn_wheel_by_hand(const World& world, double delta_rad) {
  WheelState& wheel = world.state.wheel;
  if (wheel.spin_open) return;
  wheel.angle_rad += delta_rad;
  slide_under_hands(world, delta_rad);
}

base::Tick wheel_stops_at(const World& world) {
  const WheelState& wheel = world.state.wheel;
  if (!wheel.spin_open) return INT64_MAX;
  return wheel.spin_tick + static_cast<base::Tick>(std::ceil(run_s(wheel) * kTicks_s));
}

void end_spin(const World& world) {
  WheelState& wheel = world.state.wheel;
  if (!wheel.spin_open) return;
  const double angle = wheel_angle_rad(world.state);
  const bool in_bike = wheel.at == WheelAt::Bike;
  const double turns = magnitude(angle - wheel.spin_from_rad) / base::kTwoPi;
  Draft spun(world, "wheel_spun");
  spun.choose("at", in_bike ? "bike" : "stand").with("turns", base::clamp_1(turns, 0.0, 10000.0));
  spun.with("rate", wheel.spin_peak_rad_s).with("rub_heard", wheel.rub_share_1 > 0.0 ? 1.0 : 0.0);
  spun.with("rub_share", wheel.rub_share_1).with("forward", wheel.rate_rad_s > 0.0 ? 1.0 : 0.0).emit();
  // a wheel's angle is kept small, so that its sines stay exact over a long day
  wheel.angle_rad = base::wrap_two_pi(angle);
  wheel.rate_rad_s = 0.0;
  wheel.spin_tick = world.state.tick;
  wheel.spin_open = false;
  world.emit("wheel_turning", {{"turning", 0.0}});
}

Refusal move_wheel(const World& world, HandId hand_id, WheelAt to) {
  WheelState& wheel = world.state.wheel;
  if (to == wheel.at) return Refusal::AlreadyThere;
  if (wheel_spins(world.state)) return Refusal::WheelTurning;
  if (dial_stands(world.state)) return Refusal::ToolInTheWay;
  for (const HandId id : {hand_id, World::other(hand_id)}) {
    const ThingId held = world.hand(id).holding;
    if (held != event::kNoThing && world.kind(held) != ThingKind::Wheel) return Refusal::BothHandsNeeded;
  }
  if (to == WheelAt::Bike && world.state.seat.rotor != event::kNoThing) {
    const double diameter = world.setup.rotors[world.thing(world.state.seat.rotor).part].diameter_m;
    constexpr double caliper_room_m = 0.004;  // beyond the size it was set for
    const double largest = world.setup.brake.rotor_diameter_m + caliper_room_m;
    if (diameter > largest || diameter > world.setup.brake.frame_limit_m) return Refusal::DoesNotFit;
  }
  if (wheel.spin_open) end_spin(world);
  const WheelAt from = wheel.at;
  wheel.at = to;
  world.emit("wheel_moved", {{"to", static_cast<double>(to)},
                             {"from", static_cast<double>(from)},
                             {"loose", static_cast<double>(loose_bolts(world))}});
  world.emit("wheel_at", {{"place", static_cast<double>(to)}});
  return Refusal::None;
}

std::int64_t loose_bolts(const World& world) {
  // a tenth of what the sheet's torque makes with an everyday nut factor
  constexpr double nut_factor_1 = 0.2;
  const double sheet_n = world.setup.sheet_torque_nm / (nut_factor_1 * world.setup.hub.thread_diameter_m);
  std::int64_t loose = 0;
  for (const HoleState& hole : world.state.holes) {
    if (hole.bolt == event::kNoThing || hole.preload_n < 0.1 * sheet_n) ++loose;
  }
  return loose;
}

}  // namespace proofstand::bench

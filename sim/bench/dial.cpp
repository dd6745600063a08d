#include "sim/bench/dial.h"

#include "sim/base/math.h"
#include "sim/bench/card_truth.h"
#include "sim/bench/draft.h"
#include "sim/bench/hand_law.h"
#include "sim/bench/jaws.h"
#include "sim/bench/rotor_pose.h"
#include "sim/bench/surface.h"
#include "sim/bench/wheel.h"

namespace proofstand::bench {
namespace {

// the base is set down by hand, slower than a free hand moves; a dial has about this much travel
constexpr double kPressSpeed_m_s = 0.005;
constexpr double kLeastTold_rad = 0.05 * base::kTwoPi;
constexpr double kSnug_n = 400.0;

/// Where the track stands under the tip, outwards from where it was set [m].
double track_under_tip_m(const World& world, const InstrumentState& state) {
  const bool outside = state.inner_face != world.state.seat.printed_out;
  // the rotor turns counter-clockwise under a tip that stands still
  const double w = runout_at_m(world, state.radius_m, base::wrap_two_pi(state.angle_rad - state.turned_rad));
  return outside ? w : -w;
}

void read_pointer(const World& world, InstrumentState& state, const InstrumentPart& part) {
  const double in_m = state.pressed_m + track_under_tip_m(world, state) - state.zero_m;
  state.opening_m = in_m > 0.0 ? in_m : 0.0;
  state.shown_m = scale_m(part, state.opening_m);
  if (state.shown_m < state.least_m) state.least_m = state.shown_m;
  if (state.shown_m > state.most_m) state.most_m = state.shown_m;
}

void start_sweep(const World& world, InstrumentState& state, const InstrumentPart& part) {
  state.angle_rad = base::wrap_two_pi(state.angle_rad - state.turned_rad);
  state.turned_rad = 0.0;
  state.told_rad = 0.0;
  state.last_wheel_rad = wheel_angle_rad(world.state);
  state.least_m = 1.0;
  state.most_m = 0.0;
  read_pointer(world, state, part);
}

double turned_rad(const InstrumentState& state) {
  return state.turned_rad < 0.0 ? -state.turned_rad : state.turned_rad;
}

void tell_sweep(const World& world, ThingId dial, InstrumentState& state) {
  state.told_rad = turned_rad(state);
  std::int64_t snug = 0;
  for (const HoleState& hole : world.state.holes) {
    if (hole.preload_n > kSnug_n) ++snug;
  }
  const double shown_m = state.most_m - state.least_m;
  Draft watched(world, "watched_runout");
  watched.with("instrument", thing_value(dial));
  watched.with("rotor", static_cast<double>(rotor_item(world.setup, state.rotor)));
  watched.with("turns", base::clamp_1(state.told_rad / base::kTwoPi, 0.0, 1000.0));
  watched.with("shown", base::clamp_1(shown_m, 0.0, 0.02));
  watched.with("truth", base::clamp_1(total_runout_at_m(world, state.radius_m), 0.0, 0.02));
  watched.with("snug", static_cast<double>(snug)).emit();
  note_runout(world, state.rotor, shown_m);
}

}  // namespace

Refusal stand_dial(const World& world, HandId hand_id) {
  HandState& hand = world.hand(hand_id);
  const ThingId rotor = rotor_at(world, hand);
  if (rotor == event::kNoThing || face_of(hand.at_place) < 0) return Refusal::DoesNotFit;
  if (world.state.seat.rotor != rotor) return Refusal::NothingToDo;
  if (world.state.wheel.at == WheelAt::Hands) return Refusal::BothHandsNeeded;
  InstrumentState& state = world.state.instruments[world.thing(hand.holding).part];
  const InstrumentPart& part = world.setup.instruments[world.thing(hand.holding).part];
  hand.face_angle_rad = base::wrap_two_pi(hand.v_1);
  state = InstrumentState{};
  state.standing = true;
  state.rotor = rotor;
  state.inner_face = hand.at_place == PlaceKind::TrackInner;
  const TrackGrid grid = track_grid(world.setup.rotors[world.thing(rotor).part]);
  state.radius_m = base::clamp_1(hand.u_1, grid.inner_m, grid.outer_m);
  // runout is told in the hub's frame, seen from outside
  const double printed = rotor_angle_rad(hand);
  state.angle_rad = base::wrap_two_pi(world.state.seat.printed_out ? printed : -printed);
  state.zero_m = track_under_tip_m(world, state);
  start_sweep(world, state, part);
  return Refusal::None;
}

void press_dial(const World& world, HandId hand_id) {
  HandState& hand = world.hand(hand_id);
  InstrumentState& state = world.state.instruments[world.thing(hand.holding).part];
  const InstrumentPart& part = world.setup.instruments[world.thing(hand.holding).part];
  if (!state.standing) return;
  const double moved_m = step_limit_1(hand.along, along_law(), kPressSpeed_m_s);
  move_hand(hand.along, moved_m);
  if (moved_m == 0.0) return;
  state.pressed_m = base::clamp_1(state.pressed_m + moved_m, 0.0, part.range_m);
  start_sweep(world, state, part);
}

void take_dial_away(const World& world, ThingId dial) {
  InstrumentState& state = world.state.instruments[world.thing(dial).part];
  if (!state.standing) return;
  if (turned_rad(state) - state.told_rad >= kLeastTold_rad && world.state.seat.rotor == state.rotor) {
    tell_sweep(world, dial, state);
  }
  state.standing = false;
}

void step_dial(const World& world) {
  for (std::size_t i = 0; i < world.setup.things.size(); ++i) {
    if (world.setup.things[i].kind != ThingKind::DialGauge) continue;
    InstrumentState& state = world.state.instruments[world.setup.things[i].part];
    if (!state.standing || world.state.seat.rotor != state.rotor) continue;
    const double wheel_rad = wheel_angle_rad(world.state);
    if (wheel_rad == state.last_wheel_rad) continue;
    state.turned_rad += wheel_rad - state.last_wheel_rad;
    state.last_wheel_rad = wheel_rad;
    read_pointer(world, state, world.setup.instruments[world.setup.things[i].part]);
    const bool first_turn = state.told_rad < base::kTwoPi && turned_rad(state) >= base::kTwoPi;
    if (first_turn) tell_sweep(world, static_cast<ThingId>(i), state);
  }
}

bool dial_stands(const BenchState& state) {
  for (const InstrumentState& instrument : state.instruments) {
    if (instrument.standing) return true;
  }
  return false;
}

}  // namespace proofstand::bench

#include "sim/bench/rotor_seat.h"

#include <algorithm>

#include "sim/base/math.h"
#include "sim/base/random.h"
#include "sim/bench/bolt_model.h"
#include "sim/bench/fluid.h"
#include "sim/physics/interaction.h"
#include "sim/physics/seating.h"
#include "sim/physics/settling.h"

namespace proofstand::bench {
namespace {

constexpr double kCockedLeast_m = 0.00002, kCockedMost_m = 0.00025;
constexpr double kFreezing_n = 3500.0;  // preload that locks it in
constexpr std::int64_t kFlatBolts = 3;  // bolts holding that pull the rotor flat
constexpr double kEmbedFull_n = 5000.0;
constexpr double kDirtyFrom_m = 0.00001;
constexpr double kShank_m = 0.004976;

std::uint64_t part_of(const World& world, ThingId thing) { return world.thing(thing).part; }

double tilt_share_1(const World& world, std::size_t position, double phase_rad) {
  return 0.5 * (1.0 + base::cos_rad(position_angle_rad(world.setup, position) - phase_rad));
}

void set_gap(const World& world, std::size_t position, double gap_m) {
  HoleState& hole = world.state.holes[position];
  if (hole.gap_m == gap_m) return;
  if (hole.started && hole.bolt != event::kNoThing) {
    const BoltModel model = bolt_model(world, static_cast<BoltId>(position), 0.0);
    if (hole.preload_n > 0.0) {  // the bolt keeps its force, its line moves
      hole.gap_m = gap_m;
      hole.snug_turns_1 += hole.turns_1 - turns_at_1(model, hole, hole.preload_n);
      return;
    }
    hole.snug_turns_1 -= (gap_m - hole.gap_m) / model.pitch_m;
  }
  hole.gap_m = gap_m;
}

std::int64_t holding(const BenchState& state) {
  std::int64_t count = 0;
  for (const HoleState& hole : state.holes) count += hole.preload_n >= kHolding_n ? 1 : 0;
  return count;
}

}  // namespace

double position_angle_rad(const BenchSetup& setup, std::size_t position) {
  return base::kTwoPi * static_cast<double>(position) / static_cast<double>(setup.bolt_count());
}

double whole_play_rad(const World& world) {
  if (world.state.seat.rotor == event::kNoThing) return 0.0;
  const RotorPart& rotor = world.setup.rotors[part_of(world, world.state.seat.rotor)];
  const double slack_m = std::max(0.0, rotor.hole_diameter_m - kShank_m);
  return slack_m / (rotor.hole_circle_m / 2.0);
}

bool any_started(const BenchState& state) {
  return std::any_of(state.holes.begin(), state.holes.end(), [](const HoleState& hole) { return hole.started; });
}

std::int64_t bolts_in(const BenchState& state) {
  return std::count_if(state.holes.begin(), state.holes.end(),
                       [](const HoleState& hole) { return hole.bolt != event::kNoThing; });
}

void tell_bolts_in(const World& world) {
  world.emit("bolts_in", {{"count", static_cast<double>(bolts_in(world.state))}});
}

bool arrow_forward(bool printed_out) { return printed_out; }

void put_rotor_on(const World& world, HandId hand, double angle_rad) {
  const ThingId rotor = world.hand(hand).holding;
  const std::uint64_t part = part_of(world, rotor);
  SeatState& seat = world.state.seat;
  const std::uint64_t count = static_cast<std::uint64_t>(++seat.fitted_count);
  const std::uint64_t seed = world.setup.seed;
  ThingState& thing = world.state.things[event::index_of(rotor)];
  seat.rotor = rotor;
  seat.printed_out = !thing.inner_up;
  seat.play_rad = whole_play_rad(world);
  seat.angle_rad = base::clamp_1(
      seat.play_rad * base::draw_between({seed, "rotor in its play", part, count}, 0.35, 0.95) + angle_rad, 0.0,
      seat.play_rad);
  seat.cocked_m = base::draw_between({seed, "rotor hangs cocked", part, count}, kCockedLeast_m, kCockedMost_m);
  seat.cocked_phase_rad = base::draw_between({seed, "rotor hangs that way", part, count}, 0.0, base::kTwoPi);
  seat.frozen_m = 0.0;
  seat.turn_open = false;
  thing.where = Whereabouts::OnHub;
  compute_gaps(world);
  const bool wet = seat_wet(world, rotor);
  const double item = static_cast<double>(rotor_item(world.setup, rotor));
  if (world.setup.rotors[part].has_arrow) {
    world.emit("rotor_on", {{"hand", static_cast<double>(hand)},
                            {"rotor", item},
                            {"printed_out", seat.printed_out ? 1.0 : 0.0},
                            {"arrow_forward", arrow_forward(seat.printed_out) ? 1.0 : 0.0},
                            {"wet", wet ? 1.0 : 0.0}});
  } else {
    world.emit("rotor_on", {{"hand", static_cast<double>(hand)},
                            {"rotor", item},
                            {"printed_out", seat.printed_out ? 1.0 : 0.0},
                            {"wet", wet ? 1.0 : 0.0}});
  }
  world.emit("rotor_fitted", {{"rotor", item}});
}

void take_rotor_off(const World& world, HandId hand) {
  SeatState& seat = world.state.seat;
  const ThingId rotor = seat.rotor;
  world.state.things[event::index_of(rotor)].inner_up = !seat.printed_out;
  const std::int64_t fitted = seat.fitted_count, eased = seat.eased_count;
  seat = SeatState{};
  seat.fitted_count = fitted;
  seat.eased_count = eased;
  compute_gaps(world);
  world.emit("rotor_off",
             {{"hand", static_cast<double>(hand)}, {"rotor", static_cast<double>(rotor_item(world.setup, rotor))}});
  world.emit("rotor_fitted", {});
}

void start_rotor(const World& world) {
  SeatState& seat = world.state.seat;
  seat.rotor = world.setup.fitted_rotor;
  if (seat.rotor == event::kNoThing) {
    world.emit("rotor_fitted", {});
    return;
  }
  ThingState& thing = world.state.things[event::index_of(seat.rotor)];
  thing.where = Whereabouts::OnHub;
  seat.printed_out = true;
  seat.play_rad = whole_play_rad(world);
  compute_gaps(world);
  world.emit("rotor_fitted", {{"rotor", static_cast<double>(rotor_item(world.setup, seat.rotor))}});
}

void compute_gaps(const World& world) {
  const SeatState& seat = world.state.seat;
  const std::size_t count = world.state.holes.size();
  for (std::size_t i = 0; i < count; ++i) {
    double gap_m = 0.0;
    if (seat.rotor != event::kNoThing) {
      // grit lifts the rotor at its boss; seen from it the far side stays down
      for (std::size_t k = 0; k < count; ++k) {
        const double dirt_m = world.state.holes[k].dirt_m;
        if (dirt_m > 0.0) gap_m += dirt_m * tilt_share_1(world, i, position_angle_rad(world.setup, k));
      }
      gap_m = std::max(0.0, gap_m - world.state.holes[i].dirt_m);
      if (seat.frozen_m > 0.0) gap_m += seat.frozen_m * tilt_share_1(world, i, seat.cocked_phase_rad);
    }
    set_gap(world, i, gap_m);
  }
}

void press_rotor(const World& world, BoltId bolt) {
  SeatState& seat = world.state.seat;
  if (seat.rotor == event::kNoThing || (seat.cocked_m <= 0.0 && seat.frozen_m <= 0.0)) return;
  const std::int64_t now_holding = holding(world.state);
  if (seat.cocked_m > 0.0) {
    if (now_holding >= kFlatBolts) {
      seat.cocked_m = 0.0;
    } else if (hole_of(world, bolt).preload_n > kFreezing_n) {
      seat.frozen_m = physics::kFrozenShare_1 * seat.cocked_m;
      seat.cocked_m = 0.0;
      compute_gaps(world);
    }
  } else if (now_holding == 0) {  // loose again: it hangs as askew as it was held
    seat.cocked_m = seat.frozen_m;
    seat.frozen_m = 0.0;
    compute_gaps(world);
  }
}

void share_preload(const World& world, BoltId bolt, double gained_n) {
  std::vector<double> preload_n;
  std::vector<bool> locked;
  for (const HoleState& hole : world.state.holes) {
    preload_n.push_back(hole.preload_n);
    locked.push_back(hole.preload_n > 0.0);
  }
  const std::size_t pulled = event::index_of(bolt);
  static const physics::InteractionRow row = physics::boss_seat_interaction();
  const std::vector<double> after_n = physics::pull_one_weak_n(row, preload_n, locked, pulled, gained_n);
  for (std::size_t i = 0; i < after_n.size(); ++i) {
    HoleState& hole = world.state.holes[i];
    if (i == pulled || !locked[i] || after_n[i] == hole.preload_n) continue;
    const BoltModel model = bolt_model(world, static_cast<BoltId>(i), 0.0);
    hole.preload_n = after_n[i];
    hole.snug_turns_1 += hole.turns_1 - turns_at_1(model, hole, hole.preload_n);
  }
}

void settle_bolt(const World& world, BoltId bolt) {
  HoleState& hole = hole_of(world, bolt);
  if (hole.bolt == event::kNoThing || !hole.started || hole.preload_n <= 0.0) return;
  const BoltModel model = bolt_model(world, bolt, 0.0);
  const double full_m = hole.dirt_m > kDirtyFrom_m ? physics::kDirtyEmbed_m : physics::kCleanEmbed_m;
  const double lost_m = physics::embed_in_pull_m(full_m, hole.embed_m, hole.preload_n, kEmbedFull_n);
  if (lost_m <= 0.0) return;
  hole.embed_m += lost_m;
  hole.snug_turns_1 += lost_m / model.pitch_m;
  hole.preload_n = preload_at_n(model, hole, hole.turns_1);
  hole.closed_m = std::min(hole.gap_m, hole.preload_n / model.seat_n_per_m);
}

}  // namespace proofstand::bench

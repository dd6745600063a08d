// Whatever hands do: the bench must go the same way by any route through time, and never break.
#include <rapidcheck.h>

#include <cmath>

#include "sim/bench/bench.h"
#include "sim/bench/surface.h"
#include "sim/bench/wiping.h"
#include "tests/support/catch.h"
#include "tests/support/random_actions.h"

namespace proofstand::bench {
namespace {

using testing::SixBolt;

bool equal_events(const std::vector<event::Record>& a, const std::vector<event::Record>& b) {
  if (a.size() != b.size()) return false;
  for (std::size_t i = 0; i < a.size(); ++i) {
    if (a[i].tick != b[i].tick || a[i].kind != b[i].kind || a[i].unknown != b[i].unknown) return false;
    if (a[i].values != b[i].values) return false;
  }
  return true;
}

struct Draw {
  SixBolt job = testing::six_bolt();
  std::vector<event::Action> actions;
};

Draw drawn(double nonsense_1) {
  Draw draw;
  const auto seed = *rc::gen::arbitrary<std::uint64_t>();
  const auto count = static_cast<std::size_t>(*rc::gen::inRange(1, 120));
  draw.job.setup.seed = seed;
  draw.job.setup.wheel_in_bike = seed % 5 == 0;
  // a bench with nothing fitted lets hands get at seats and holes
  if (seed % 2 == 0) {
    draw.job.setup.fitted_bolts.assign(6, event::kNoThing);
    if (seed % 4 == 0) draw.job.setup.fitted_rotor = event::kNoThing;
  }
  draw.actions = testing::random_actions(draw.job, seed, count, nonsense_1);
  return draw;
}

// every value finite, within the range its field declares, and an index that exists
void check_declared(const Bench& bench, const event::Record& record) {
  const event::Kind& kind = bench.vocabulary().kinds[record.kind];
  RC_ASSERT_FALSE(kind.later);
  for (std::size_t i = 0; i < kind.fields.size(); ++i) {
    const event::Field& field = kind.fields[i];
    const double value = record.values[i];
    RC_ASSERT(std::isfinite(value));
    if (!record.knows(i)) continue;
    double most = field.hi_si;
    if (field.type == event::FieldType::Choice) most = static_cast<double>(field.choices.size()) - 1.0;
    if (field.type == event::FieldType::Item) {
      most = static_cast<double>(bench.vocabulary().sets[field.set].items.size()) - 1.0;
    }
    if (value < field.lo_si || value > most) RC_FAIL(kind.name + " " + field.name + " = " + std::to_string(value));
    if (field.type != event::FieldType::Quantity) RC_ASSERT(value == std::floor(value));
  }
}

void finish(Bench& bench) {
  bench.advance_to(bench.tick() + 30 * base::kTicksPerSecond);
  bench.apply(event::make_hand_over(bench.tick()));
}

// danger: quiet stretches that are skipped end elsewhere than ticked through, and a replay diverges from the run
TEST_CASE("advancing equals ticking through, bit for bit") {
  REQUIRE(rc::check("advance_to equals tick_through_to", [] {
    const Draw draw = drawn(0.05);
    Bench quick(draw.job.setup);
    Bench slow(draw.job.setup);
    for (const event::Action& action : draw.actions) {
      if (quick.over()) break;
      slow.tick_through_to(action.tick);
      quick.advance_to(action.tick);
      if (quick.state_hash() != slow.state_hash()) RC_FAIL(Bench::first_difference(quick.state(), slow.state()));
      RC_ASSERT(slow.apply(action) == quick.apply(action));
    }
    slow.tick_through_to(quick.tick() + 7200);
    quick.advance_to(quick.tick() + 7200);
    RC_ASSERT(Bench::first_difference(quick.state(), slow.state()) == "");
    RC_ASSERT(quick.state_hash() == slow.state_hash());
    RC_ASSERT(equal_events(quick.events(), slow.events()));
  }));
}

// danger: a file edited by hand, or a broken device, brings the bench down
TEST_CASE("no action, however nonsensical, breaks the bench") {
  REQUIRE(rc::check("garbage is refused or suffered", [] {
    const Draw draw = drawn(static_cast<double>(*rc::gen::inRange(0, 80)) * 0.01);
    Bench bench(draw.job.setup);
    for (const event::Action& action : draw.actions) {
      if (bench.over()) break;
      bench.apply(action);
    }
    finish(bench);
    for (const event::Record& record : bench.events()) check_declared(bench, record);
  }));
}

// danger: going on from a snapshot gives another job than the straight run
TEST_CASE("a restored bench goes on as if nothing had been") {
  REQUIRE(rc::check("snapshot, restore, go on", [] {
    const Draw draw = drawn(0.05);
    const auto cut = static_cast<std::size_t>(*rc::gen::inRange<std::size_t>(0, draw.actions.size() + 1));
    Bench straight(draw.job.setup);
    Bench first(draw.job.setup);
    for (std::size_t i = 0; i < cut && !first.over(); ++i) {
      straight.apply(draw.actions[i]);
      first.apply(draw.actions[i]);
    }
    auto restored = Bench::restore(draw.job.setup, first.snapshot(), first.events());
    RC_ASSERT(restored.has_value());
    Bench second = std::move(restored).value();
    RC_ASSERT(second.state_hash() == first.state_hash());
    RC_ASSERT(Bench::first_difference(second.state(), first.state()) == "");
    for (std::size_t i = cut; i < draw.actions.size() && !straight.over(); ++i) {
      straight.apply(draw.actions[i]);
      second.apply(draw.actions[i]);
    }
    finish(straight);
    finish(second);
    RC_ASSERT(Bench::first_difference(straight.state(), second.state()) == "");
    RC_ASSERT(straight.state_hash() == second.state_hash());
    RC_ASSERT(equal_events(straight.events(), second.events()));
  }));
}

// danger: a copy shares something with its original, and a rewind changes the past
TEST_CASE("copies evolve equally and apart") {
  REQUIRE(rc::check("copies", [] {
    const Draw draw = drawn(0.05);
    Bench bench(draw.job.setup);
    for (std::size_t i = 0; i < draw.actions.size() / 2 && !bench.over(); ++i) bench.apply(draw.actions[i]);
    const base::Digest before = bench.state_hash();
    Bench copy = bench;
    for (std::size_t i = draw.actions.size() / 2; i < draw.actions.size() && !copy.over(); ++i)
      copy.apply(draw.actions[i]);
    RC_ASSERT(bench.state_hash() == before);
    for (std::size_t i = draw.actions.size() / 2; i < draw.actions.size() && !bench.over(); ++i) {
      bench.apply(draw.actions[i]);
    }
    RC_ASSERT(bench.state_hash() == copy.state_hash());
    RC_ASSERT(equal_events(bench.events(), copy.events()));
  }));
}

/// Oil, grease, skin grease and dust on everything that keeps films [kg].
double all_matter_kg(const Bench& bench) {
  double sum = 0.0;
  const auto add = [&sum](const std::array<double, kSpecies>& load, double area_m2) {
    for (std::size_t s = 0; s < kSpecies; ++s) {
      if (static_cast<Film>(s) != Film::Alcohol) sum += load[s] * area_m2;
    }
  };
  const BenchState& state = bench.state();
  for (std::size_t r = 0; r < state.rotors.size(); ++r) {
    const TrackGrid grid = track_grid(bench.setup().rotors[r]);
    for (const FaceState& face : state.rotors[r].faces) {
      for (std::size_t i = 0; i < face.cells.size(); ++i) add(face.cells[i].load_kg_m2, grid.cell_area_m2(i % kRings));
    }
    static constexpr std::array<PlaceKind, 4> patches = {PlaceKind::CarrierOuter, PlaceKind::CarrierInner,
                                                         PlaceKind::Arms, PlaceKind::Edge};
    for (std::size_t p = 0; p < patches.size(); ++p) {
      add(state.rotors[r].patches[p].load_kg_m2, patch_area_m2(patches[p]));
    }
  }
  for (const HandState& hand : state.hands) add(hand.film_kg_m2, kFingersArea_m2);
  for (const RagState& rag : state.rags) add(rag.fold.load_kg_m2, kFoldArea_m2);
  for (const FilmCell& boss : state.bosses) add(boss.load_kg_m2, patch_area_m2(PlaceKind::Boss));
  add(state.bench_top.load_kg_m2, patch_area_m2(PlaceKind::BenchTop));
  for (const BoltState& bolt : state.bolts) {
    sum += (bolt.grease_kg_m2 + bolt.oil_kg_m2) * kThreadArea_m2 + bolt.locker_m3 * kLockerDensity_kg_m3;
  }
  for (const HoleState& hole : state.holes) {
    sum += (hole.grease_kg_m2 + hole.oil_kg_m2) * kThreadArea_m2 + hole.locker_m3 * kLockerDensity_kg_m3;
  }
  return sum;
}

// danger: hands, rags and benches make oil out of nothing, or swallow it
TEST_CASE("contact and wiping conserve all matter") {
  REQUIRE(rc::check("matter is conserved", [] {
    Draw draw = drawn(0.0);
    Bench bench(draw.job.setup);
    const double before = all_matter_kg(bench);
    for (const event::Action& action : draw.actions) {
      if (bench.over()) break;
      // what brings matter in or throws it away is left out: bottles, gloves, folds
      const bool turns = action.kind == event::ActionKind::TurnOver;
      if (turns || action.kind == event::ActionKind::Squeeze || action.kind == event::ActionKind::Glove) continue;
      bench.apply(action);
    }
    RC_ASSERT(std::abs(all_matter_kg(bench) - before) <= 1e-9 * before);
  }));
}

}  // namespace
}  // namespace proofstand::bench

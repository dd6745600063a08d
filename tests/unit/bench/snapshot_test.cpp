#include "sim/bench/snapshot.h"

#include "sim/bench/bench.h"
#include "tests/support/bench_parts.h"
#include "tests/support/catch.h"

namespace proofstand::bench {
namespace {

using testing::SixBolt;

Bench worked() {
  const SixBolt job = testing::six_bolt();
  Bench bench(job.setup);
  bench.apply(event::make_take(10, HandId::Right, job.key, Grip::None));
  bench.apply(event::make_touch(20, HandId::Left, job.old_rotor, PlaceKind::TrackOuter, event::kNoBolt, 72000, 0));
  bench.apply(event::make_write(600, job.old_thickness, "1,42"));
  bench.advance_to(700);
  return bench;
}

// danger: a snapshot that was damaged on disk is taken for good
TEST_CASE("only whole snapshots of this bench are restored") {
  const Bench bench = worked();
  const SixBolt job = testing::six_bolt();
  const std::string bytes = bench.snapshot();
  REQUIRE(Bench::restore(job.setup, bytes, bench.events()).has_value());
  for (const std::size_t at : {std::size_t{0}, std::size_t{40}, bytes.size() / 2, bytes.size() - 1}) {
    std::string changed = bytes;
    changed[at] = static_cast<char>(changed[at] ^ 1);
    CHECK_FALSE(Bench::restore(job.setup, changed, bench.events()).has_value());
    CHECK_FALSE(Bench::restore(job.setup, bytes.substr(0, at), bench.events()).has_value());
  }
  SixBolt other_seed = testing::six_bolt();
  other_seed.setup.seed += 1;
  CHECK_FALSE(Bench::restore(other_seed.setup, bytes, bench.events()).has_value());
  CHECK_FALSE(Bench::restore(job.setup, bytes, {}).has_value());
  SixBolt fewer = testing::six_bolt();
  fewer.setup.card.pop_back();
  CHECK_FALSE(Bench::restore(fewer.setup, bytes, bench.events()).has_value());
}

// danger: a field left out of the lists differs and nobody sees it
TEST_CASE("every field counts in the bytes, and the first that differs is named") {
  const Bench bench = worked();
  CHECK(Bench::first_difference(bench.state(), bench.state()).empty());
  const auto named = [&bench](auto&& change, const std::string& words) {
    BenchState other = bench.state();
    change(other);
    CHECK(state_bytes(other) != state_bytes(bench.state()));
    INFO(Bench::first_difference(bench.state(), other));
    CHECK(Bench::first_difference(bench.state(), other).find(words) == 0);
  };
  named([](BenchState& s) { s.holes[2].preload_n += 0.25; }, "hole 3 preload: ");
  named([](BenchState& s) { s.hands[1].turn.level = 7; }, "hand 2 level: 0 / 7");
  named([](BenchState& s) { s.card[0].text = "x"; }, "card entry 1 text: 1,42 / x");
  named([](BenchState& s) { s.wheel.at = WheelAt::Bike; }, "wheel at: ");
  named([](BenchState& s) { s.rotors[1].faces[1].cells[5].load_kg_m2[0] = 1.0; }, "rotor face 4 load: ");
  named([](BenchState& s) { s.bosses[5].wet_tick = 1; }, "boss film 6 wet_tick: ");
  named([](BenchState& s) { s.contacts[0].swept[3] = 1; }, "contact of hand 1 swept: 0 / 1");
  named([](BenchState& s) { s.instruments[0].squeeze_m = 1.0; }, "instrument 1 squeeze: ");
  named([](BenchState& s) { s.hands[0].bare_film_kg_m2[1] = 1.0; }, "hand 1 bare_film: ");
}

// danger: the kept digest of a face goes stale, and hashes no longer tell states apart
TEST_CASE("the state's hash follows every change of a face, kept digests or not") {
  const SixBolt job = testing::six_bolt();
  Bench bench(job.setup);
  const base::Digest before = bench.state_hash();
  CHECK(bench.state_hash() == before);
  bench.apply(event::make_touch(20, HandId::Left, job.old_rotor, PlaceKind::TrackOuter, event::kNoBolt, 72000, 0));
  bench.advance_to(300);
  const base::Digest touched = bench.state_hash();
  CHECK(touched != before);
  std::vector<base::Digest> digests;
  std::vector<std::int64_t> versions;
  CHECK(hash_of_state(bench.state(), {digests, versions}) == touched);
}

// danger: looking at the bench changes it
TEST_CASE("hashing and taking snapshots change nothing") {
  Bench bench = worked();
  const std::string bytes = bench.snapshot();
  static_cast<void>(bench.state_hash());
  CHECK(bench.snapshot() == bytes);
}

}  // namespace
}  // namespace proofstand::bench

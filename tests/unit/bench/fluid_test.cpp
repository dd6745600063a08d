#include "sim/bench/fluid.h"

#include "sim/bench/wiping.h"
#include "tests/support/bench_parts.h"
#include "tests/support/catch.h"

namespace proofstand::bench {
namespace {

using testing::at;
using testing::BenchParts;
using testing::kUg;

// danger: drops vanish, or a drop wets nothing
TEST_CASE("drops end where the bottle's mouth was, all of them") {
  BenchParts parts;
  parts.hold(HandId::Right, parts.job.alcohol, parts.job.clean_rag, PlaceKind::Body);
  REQUIRE(squeeze(parts.world(), HandId::Right, 5) == Refusal::None);
  // five drops of 20 mm³, 785 kg/m³: from memory
  CHECK(parts.state.rags[0].fold.load_kg_m2[at(Film::Alcohol)] * kFoldArea_m2 == Approx(5 * 20e-9 * 785.0));
  CHECK(parts.state.rags[0].fold.load_kg_m2[at(Film::Alcohol)] > kWetFold_kg_m2);
  const auto applied = parts.of_kind("applied");
  REQUIRE(applied.size() == 1);
  CHECK(parts.choice(applied[0], "fluid") == "alcohol");
  CHECK(parts.choice(applied[0], "part") == "rag");
  CHECK(parts.field(applied[0], "amount") == Approx(100e-9));

  parts.hold(HandId::Right, parts.job.oil, parts.job.new_rotor, PlaceKind::TrackInner, 0.0725, 1.0);
  const TrackGrid grid = track_grid(parts.job.setup.rotors[1]);
  const double before = mass_on_face_kg(parts.state.rotors[1].faces[1], grid, Film::Oil);
  REQUIRE(squeeze(parts.world(), HandId::Right, 1) == Refusal::None);
  CHECK(mass_on_face_kg(parts.state.rotors[1].faces[1], grid, Film::Oil) - before == Approx(20e-9 * 870.0));
}

// danger: squeezing with the wrong thing, or nowhere, does something or crashes
TEST_CASE("squeezing nothing or nowhere is refused") {
  BenchParts parts;
  CHECK(squeeze(parts.world(), HandId::Left, 1) == Refusal::HandEmpty);
  parts.hold(HandId::Left, parts.job.key, parts.job.clean_rag, PlaceKind::Body);
  CHECK(squeeze(parts.world(), HandId::Left, 1) == Refusal::NothingToDo);
  parts.hold(HandId::Left, parts.job.locker, parts.job.wheel, PlaceKind::Hole, 0.0, 0.0, BoltId{0});
  CHECK(squeeze(parts.world(), HandId::Left, 0) == Refusal::NothingToDo);
  CHECK(squeeze(parts.world(), HandId::Left, 1) == Refusal::HoleTaken);
  CHECK(parts.events.empty());
}

// danger: locker on the bolt and locker in the hole are worth different things, or cure under grease
TEST_CASE("locker counts on bolt and hole alike, cures in a day, and never on grease") {
  BenchParts parts;
  parts.state.holes[0].bolt = event::kNoThing;
  parts.hold(HandId::Right, parts.job.locker, parts.job.wheel, PlaceKind::Hole, 0.0, 0.0, BoltId{0});
  REQUIRE(squeeze(parts.world(), HandId::Right, 1) == Refusal::None);
  CHECK(thread_film(parts.world(), BoltId{0}).locker_m3 == Approx(10e-9));
  parts.hold(HandId::Right, parts.job.locker, parts.job.new_bolts[0], PlaceKind::BoltThread);
  REQUIRE(squeeze(parts.world(), HandId::Right, 2) == Refusal::None);
  parts.state.holes[0].bolt = parts.job.new_bolts[0];
  const ThreadFilm film = thread_film(parts.world(), BoltId{0});
  CHECK(film.locker_m3 == Approx(30e-9));
  CHECK(film.locker_set_1 == Approx(0.0).margin(1e-9));
  // "normally within 24 h": published data sheets
  parts.state.tick += 24 * 3600 * base::kTicksPerSecond;
  CHECK(thread_film(parts.world(), BoltId{0}).locker_set_1 > 0.9);
  parts.state.bolts[6].grease_kg_m2 = 500.0 * kUg;
  CHECK(thread_film(parts.world(), BoltId{0}).greasy);
  CHECK(thread_film(parts.world(), BoltId{0}).locker_set_1 == 0.0);
}

// danger: grease from the tub looks like a trace
TEST_CASE("a dab of grease makes a thread greasy, and a wipe with alcohol takes it off again") {
  BenchParts parts;
  parts.hold(HandId::Right, parts.job.grease, parts.job.new_bolts[2], PlaceKind::BoltThread);
  REQUIRE(squeeze(parts.world(), HandId::Right, 1) == Refusal::None);
  parts.state.holes[3].bolt = parts.job.new_bolts[2];
  CHECK(thread_film(parts.world(), BoltId{3}).greasy);
  CHECK_FALSE(thread_film(parts.world(), BoltId{3}).oily);
  for (int fold = 0; fold < 4; ++fold) {
    parts.state.rags[0].fold.load_kg_m2[at(Film::Alcohol)] = 8e-3;
    parts.state.rags[0].fold.wet_tick = parts.state.tick;
    parts.hold(HandId::Left, parts.job.clean_rag, parts.job.new_bolts[2], PlaceKind::BoltThread);
    begin_wipe(parts.world(), HandId::Left);
    HandState& hand = parts.state.hands[0];
    hand.aim_press_n = 15.0;
    hand.aim_radius_m = 0.012;
    for (int tick = 0; tick < 400; ++tick) {
      if (tick > 150) hand.aim_angle_rad = 2.0;
      ++parts.state.tick;
      step_wipe(parts.world(), HandId::Left);
    }
    end_wipe(parts.world(), HandId::Left);
    turn_rag(parts.world(), HandId::Left);
  }
  CHECK_FALSE(thread_film(parts.world(), BoltId{3}).greasy);
  CHECK(parts.choice(parts.of_kind("wiped").at(0), "part") == "bolt_thread");
}

// danger: a glove put on a greasy hand is greasy, or taking it off washes the hand
TEST_CASE("a glove covers the skin's film and gives it back") {
  BenchParts parts;
  parts.state.hands[0].film_kg_m2[at(Film::Grease)] = 300.0 * kUg;
  glove(parts.world(), HandId::Left, true);
  CHECK(fouling_kg_m2(parts.state.hands[0].film_kg_m2) < 1.0 * kUg);
  glove(parts.world(), HandId::Left, true);
  CHECK(parts.of_kind("gloved").size() == 1);
  CHECK(parts.of_kind("skin_left").size() == 1);
  glove(parts.world(), HandId::Left, false);
  CHECK(parts.state.hands[0].film_kg_m2[at(Film::Grease)] == Approx(300.0 * kUg));
  CHECK(parts.of_kind("skin_right").empty());
}

}  // namespace
}  // namespace proofstand::bench

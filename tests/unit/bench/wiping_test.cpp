#include "sim/bench/wiping.h"

#include "sim/bench/fluid.h"
#include "sim/bench/wheel.h"
#include "tests/support/bench_parts.h"
#include "tests/support/catch.h"

namespace proofstand::bench {
namespace {

using testing::at;
using testing::BenchParts;
using testing::kUg;

BenchParts with_new_rotor_in_hand(double oil_kg_m2) {
  testing::SixBolt job = testing::six_bolt();
  for (RotorPart& rotor : job.setup.rotors) {
    rotor.film_outer = rotor.film_inner = StartFilm{};
    rotor.film_outer.oil_kg_m2 = rotor.film_inner.oil_kg_m2 = oil_kg_m2;
  }
  return BenchParts(job);
}

void start(BenchParts& parts, ThingId rag, PlaceKind place, Grip grip = Grip::Flat) {
  parts.hold(HandId::Right, rag, parts.job.new_rotor, place, 0.0725, 0.0);
  parts.state.hands[1].grip = grip;
  begin_wipe(parts.world(), HandId::Right);
}

void stroke(BenchParts& parts, double angle_rad, double press_n = 15.0) {
  HandState& hand = parts.state.hands[1];
  hand.aim_radius_m = 0.0725;
  hand.aim_press_n = press_n;
  for (int tick = 0; tick < 5000; ++tick) {
    // press comes first, then the stroke
    hand.aim_angle_rad = hand.face_press_n < press_n ? hand.face_angle_rad : angle_rad;
    ++parts.state.tick;
    step_wipe(parts.world(), HandId::Right);
    if (hand.face_press_n >= press_n && hand.face_angle_rad == angle_rad) return;
  }
  FAIL("the stroke never arrived");
}

FaceFigures figures(const BenchParts& parts, std::size_t face) {
  return face_figures(parts.state.rotors[1].faces[face], track_grid(parts.job.setup.rotors[1]), parts.state.tick);
}

double all_oil_kg(const BenchParts& parts, std::size_t rag) {
  const TrackGrid grid = track_grid(parts.job.setup.rotors[1]);
  return mass_on_face_kg(parts.state.rotors[1].faces[0], grid, Film::Oil) +
         mass_on_face_kg(parts.state.rotors[1].faces[1], grid, Film::Oil) +
         parts.state.rags[rag].fold.load_kg_m2[at(Film::Oil)] * kFoldArea_m2;
}

void wet(BenchParts& parts, std::size_t rag) {
  parts.state.rags[rag].fold.load_kg_m2[at(Film::Alcohol)] = 8e-3;
  parts.state.rags[rag].fold.wet_tick = parts.state.tick;
}

// danger: half a face counts as wiped, or a whole round does not
TEST_CASE("coverage is the share of the track that the rag passed over") {
  BenchParts parts = with_new_rotor_in_hand(0.0);
  start(parts, parts.job.clean_rag, PlaceKind::TrackOuter);
  stroke(parts, base::kPi);
  CHECK(swept_share_1(parts.state.contacts[1], false) == Approx(0.55).margin(0.02));
  stroke(parts, base::kTwoPi);
  CHECK(swept_share_1(parts.state.contacts[1], false) == 1.0);
  end_wipe(parts.world(), HandId::Right);
  const auto wiped = parts.of_kind("wiped");
  REQUIRE(wiped.size() == 1);
  CHECK(parts.field(wiped[0], "coverage") == 1.0);
  CHECK(parts.field(wiped[0], "passes") == 1.0);
  CHECK(parts.field(wiped[0], "press") == Approx(15.0).epsilon(0.2));
  CHECK(parts.choice(wiped[0], "part") == "outer_track");
  CHECK(parts.field(wiped[0], "fresh_fold") == 1.0);
  CHECK(parts.field(wiped[0], "solvent") == 0.0);
}

// danger: a hovering rag, or one stroked over nothing, cleans
TEST_CASE("without press nothing is wiped") {
  BenchParts parts = with_new_rotor_in_hand(20.0 * kUg);
  start(parts, parts.job.clean_rag, PlaceKind::TrackOuter);
  HandState& hand = parts.state.hands[1];
  hand.aim_angle_rad = base::kTwoPi;
  for (int tick = 0; tick < 1000; ++tick) step_wipe(parts.world(), HandId::Right);
  CHECK(swept_share_1(parts.state.contacts[1], false) == 0.0);
  CHECK(figures(parts, 0).worst_kg_m2 == Approx(20.0 * kUg));
  end_wipe(parts.world(), HandId::Right);
  CHECK(parts.of_kind("wiped").empty());
}

// danger: alcohol and a fresh fold clean no better than a dry rub
TEST_CASE("an alcohol wipe takes more than a dry one, and no oil is lost") {
  BenchParts dry = with_new_rotor_in_hand(20.0 * kUg);
  const double before = all_oil_kg(dry, 0);
  start(dry, dry.job.clean_rag, PlaceKind::TrackOuter);
  stroke(dry, base::kTwoPi);
  BenchParts moist = with_new_rotor_in_hand(20.0 * kUg);
  wet(moist, 0);
  start(moist, moist.job.clean_rag, PlaceKind::TrackOuter);
  stroke(moist, base::kTwoPi);
  CHECK(figures(moist, 0).mean_kg_m2 < figures(dry, 0).mean_kg_m2);
  CHECK(all_oil_kg(dry, 0) == Approx(before).epsilon(1e-9));
  CHECK(all_oil_kg(moist, 0) == Approx(before).epsilon(1e-9));
  // a wiped film is microns thick and dries within half a minute
  CHECK(figures(moist, 0).wet_share_1 > 0.5);
  moist.state.tick += 60 * base::kTicksPerSecond;
  CHECK(figures(moist, 0).wet_share_1 == 0.0);
  end_wipe(moist.world(), HandId::Right);
  CHECK(moist.field(moist.of_kind("wiped").at(0), "solvent") == 1.0);
}

// danger: a dripping rag leaves the track wet for minutes, which no wipe does
TEST_CASE("however wet the rag, a wiped face is dry within half a minute") {
  BenchParts parts = with_new_rotor_in_hand(5.0 * kUg);
  parts.state.rags[0].fold.load_kg_m2[at(Film::Alcohol)] = 80e-3;
  start(parts, parts.job.clean_rag, PlaceKind::TrackOuter);
  stroke(parts, base::kTwoPi);
  CHECK(figures(parts, 0).wet_share_1 > 0.9);
  // a thin wiped film dries in 15 to 30 s: published web page of a maker of the solvent
  parts.state.tick += 30 * base::kTicksPerSecond;
  CHECK(figures(parts, 0).wet_share_1 == 0.0);
}

// danger: a rag that is full goes on cleaning, or a filthy one cleans as well as a fresh one
TEST_CASE("a full rag stalls, and a dirty rag fouls a clean face") {
  BenchParts parts = with_new_rotor_in_hand(200.0 * kUg);
  wet(parts, 0);
  start(parts, parts.job.clean_rag, PlaceKind::TrackOuter);
  for (int pass = 1; pass <= 6; ++pass) stroke(parts, base::kTwoPi * pass);
  const double rag = parts.state.rags[0].fold.load_kg_m2[at(Film::Oil)];
  // it stalls where as much comes back as goes: back over there, of the rag's load
  CHECK(figures(parts, 0).mean_kg_m2 > 0.05 * rag);
  CHECK(figures(parts, 0).mean_kg_m2 < 0.20 * rag);

  BenchParts dirty = with_new_rotor_in_hand(0.0);
  start(dirty, dirty.job.dirty_rag, PlaceKind::TrackOuter);
  stroke(dirty, base::kTwoPi);
  end_wipe(dirty.world(), HandId::Right);
  CHECK(figures(dirty, 0).worst_kg_m2 > 1.0 * kUg);
  CHECK(dirty.field(dirty.of_kind("wiped").at(0), "clean_fold") == 0.0);
  CHECK(dirty.field(dirty.of_kind("wiped").at(0), "fresh_fold") == 0.0);
}

// danger: a fresh fold is not fresh, or folds never run out
TEST_CASE("a fresh fold ends the wipe, is clean, and there are only so many") {
  BenchParts parts = with_new_rotor_in_hand(200.0 * kUg);
  start(parts, parts.job.clean_rag, PlaceKind::TrackOuter);
  stroke(parts, base::kTwoPi);
  CHECK(parts.state.rags[0].fold.load_kg_m2[at(Film::Oil)] > 0.0);
  turn_rag(parts.world(), HandId::Right);
  CHECK(parts.of_kind("wiped").size() == 1);
  CHECK(parts.state.rags[0].fold.load_kg_m2[at(Film::Oil)] == 0.0);
  CHECK(parts.state.rags[0].folds_left == 7);
  stroke(parts, base::kTwoPi * 2.0);
  end_wipe(parts.world(), HandId::Right);
  CHECK(parts.of_kind("wiped").size() == 2);
  CHECK(parts.field(parts.of_kind("wiped")[1], "fresh_fold") == 1.0);
  for (int i = 0; i < 10; ++i) turn_rag(parts.world(), HandId::Right);
  CHECK(parts.state.rags[0].folds_left == 0);
}

// danger: the usual way, rag pinched and wheel turned slowly, wipes one face or none
TEST_CASE("a pinched rag wipes both faces while the other hand turns the wheel") {
  BenchParts parts = with_new_rotor_in_hand(20.0 * kUg);
  parts.state.seat.rotor = parts.job.new_rotor;
  wet(parts, 0);
  start(parts, parts.job.clean_rag, PlaceKind::TrackOuter, Grip::Pinched);
  parts.state.hands[1].aim_press_n = 15.0;
  for (int tick = 0; tick < 1200; ++tick) {
    ++parts.state.tick;
    turn_wheel_by_hand(parts.world(), 0.25 * base::kTwoPi / 240.0);
    step_wipe(parts.world(), HandId::Right);
  }
  end_wipe(parts.world(), HandId::Right);
  const auto wiped = parts.of_kind("wiped");
  REQUIRE(wiped.size() == 2);
  CHECK(parts.choice(wiped[0], "part") == "outer_track");
  CHECK(parts.choice(wiped[1], "part") == "inner_track");
  for (const event::Record& record : wiped) CHECK(parts.field(record, "coverage") > 0.98);
  CHECK(figures(parts, 0).worst_kg_m2 < 8.0 * kUg);
  CHECK(figures(parts, 1).worst_kg_m2 < 8.0 * kUg);
}

// danger: grit stays under a boss that was wiped, or paint comes off like grit
TEST_CASE("wiping the seat takes loose dirt, not what sits fast") {
  testing::SixBolt job = testing::six_bolt();
  job.setup.hub.bosses[1].dirt_m = 5e-5;
  job.setup.hub.bosses[4].dirt_m = 5e-5;
  job.setup.hub.bosses[4].dirt_loose = false;
  BenchParts parts(job);
  parts.state.holes[1].dirt_m = parts.state.holes[4].dirt_m = 5e-5;
  parts.hold(HandId::Right, job.clean_rag, job.wheel, PlaceKind::HubSeat);
  begin_wipe(parts.world(), HandId::Right);
  HandState& hand = parts.state.hands[1];
  hand.aim_press_n = 15.0;
  hand.aim_radius_m = 0.022;
  for (int tick = 0; tick < 900; ++tick) {
    if (tick > 150) hand.aim_angle_rad = base::kTwoPi;
    ++parts.state.tick;
    step_wipe(parts.world(), HandId::Right);
  }
  end_wipe(parts.world(), HandId::Right);
  CHECK(parts.state.holes[1].dirt_m == 0.0);
  CHECK(parts.state.holes[4].dirt_m == 5e-5);
  const auto wiped = parts.of_kind("wiped");
  REQUIRE(wiped.size() == 1);
  CHECK(parts.choice(wiped[0], "part") == "seat");
  CHECK(parts.field(wiped[0], "coverage") > 0.9);
}

}  // namespace
}  // namespace proofstand::bench

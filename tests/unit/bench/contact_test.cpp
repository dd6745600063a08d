#include "sim/bench/contact.h"

#include "tests/support/bench_parts.h"
#include "tests/support/catch.h"

namespace proofstand::bench {
namespace {

using testing::at;
using testing::BenchParts;
using testing::kUg;

BenchParts with_clean_rotors() {
  testing::SixBolt job = testing::six_bolt();
  for (RotorPart& rotor : job.setup.rotors) rotor.film_outer = rotor.film_inner = StartFilm{};
  return BenchParts(job);
}

FaceFigures figures(const BenchParts& parts, ThingId rotor, int face) {
  const std::size_t part = parts.job.setup.things[event::index_of(rotor)].part;
  return face_figures(parts.state.rotors[part].faces[static_cast<std::size_t>(face)],
                      track_grid(parts.job.setup.rotors[part]), parts.state.tick);
}

// danger: a thumb on the track goes unseen, or fouls far more than a thumb can
TEST_CASE("one bare thumb on the track leaves a thumb's worth of skin grease") {
  BenchParts parts = with_clean_rotors();
  begin_touch(parts.world(), HandId::Right, parts.job.new_rotor, PlaceKind::TrackOuter, event::kNoBolt, 0.0725, 1.0);
  parts.state.tick += 120;
  end_touch(parts.world(), HandId::Right);
  const auto touched = parts.of_kind("touched");
  REQUIRE(touched.size() == 1);
  CHECK(parts.choice(touched[0], "part") == "outer_track");
  CHECK(parts.field(touched[0], "rotor") == 1.0);
  CHECK(parts.field(touched[0], "time") == Approx(0.5));
  // 3.5 cm², 15 µg/cm² on unwashed skin, 0.4 of it moves: 6 µg/cm² — common practice, no source
  // a disc of that area is wider than the track: what hangs over the edges touches nothing
  CHECK(parts.field(touched[0], "area") > 2.5e-4);
  CHECK(parts.field(touched[0], "area") < 3.5e-4);
  CHECK(parts.field(touched[0], "film") == Approx(6.0 * kUg).epsilon(0.02));
  const FaceFigures face = figures(parts, parts.job.new_rotor, 0);
  CHECK(face.worst_kg_m2 == Approx(6.0 * kUg).epsilon(0.02));
  CHECK(face.friction_factor_1 < 1.0);
  CHECK(face.friction_factor_1 > 0.98);
  CHECK(figures(parts, parts.job.new_rotor, 1).worst_kg_m2 == 0.0);
}

// danger: gloves make no difference, so nobody would wear them
TEST_CASE("a fresh glove leaves almost nothing") {
  BenchParts parts = with_clean_rotors();
  parts.state.hands[1].gloved = true;
  parts.state.hands[1].film_kg_m2 = {};
  parts.state.hands[1].film_kg_m2[at(Film::SkinGrease)] = physics::kGloveLoad_kg_m2;
  begin_touch(parts.world(), HandId::Right, parts.job.new_rotor, PlaceKind::TrackOuter, event::kNoBolt, 0.0725, 1.0);
  end_touch(parts.world(), HandId::Right);
  CHECK(parts.choice(parts.of_kind("touched").at(0), "skin") == "gloved");
  CHECK(figures(parts, parts.job.new_rotor, 0).worst_kg_m2 < 0.2 * kUg);
}

// danger: handling a rotor properly, by arms or edge, counts as fouling its track
TEST_CASE("arms and edge keep the track clean") {
  BenchParts parts = with_clean_rotors();
  for (const PlaceKind place : {PlaceKind::Arms, PlaceKind::Edge, PlaceKind::InnerEdge}) {
    begin_touch(parts.world(), HandId::Left, parts.job.new_rotor, place, event::kNoBolt, 0.05, 0.0);
    end_touch(parts.world(), HandId::Left);
  }
  CHECK(parts.of_kind("touched").size() == 3);
  CHECK(figures(parts, parts.job.new_rotor, 0).worst_kg_m2 == 0.0);
  CHECK(figures(parts, parts.job.new_rotor, 1).worst_kg_m2 == 0.0);
}

// danger: a rotor pinched by its track is fouled on one face only
TEST_CASE("a rotor taken by its track is touched on both faces, opposite each other") {
  BenchParts parts = with_clean_rotors();
  parts.state.hands[0].holding = parts.job.new_rotor;
  parts.state.hands[0].grip = Grip::Track;
  begin_touch(parts.world(), HandId::Left, parts.job.new_rotor, PlaceKind::TrackOuter, event::kNoBolt, 0.0725, 0.5);
  CHECK(figures(parts, parts.job.new_rotor, 0).worst_kg_m2 > 5.0 * kUg);
  CHECK(figures(parts, parts.job.new_rotor, 1).worst_kg_m2 > 5.0 * kUg);
  CHECK(fouling_at_kg_m2(parts.world(), parts.job.new_rotor, PlaceKind::TrackInner, event::kNoBolt, 0.0725, -0.5) >
        5.0 * kUg);
  CHECK(fouling_at_kg_m2(parts.world(), parts.job.new_rotor, PlaceKind::TrackInner, event::kNoBolt, 0.0725, 0.5) ==
        0.0);
}

// danger: fingers pick oil off one part and it is gone, or it never reaches the next
TEST_CASE("oil goes from a fouled rotor by the fingers to a clean one, none lost") {
  BenchParts parts = with_clean_rotors();
  FaceState& oily = parts.state.rotors[0].faces[0];
  for (FilmCell& cell : oily.cells) cell.load_kg_m2[at(Film::Oil)] = 200.0 * kUg;
  const TrackGrid grid = track_grid(parts.job.setup.rotors[0]);
  const double before = mass_on_face_kg(oily, grid, Film::Oil);
  begin_touch(parts.world(), HandId::Right, parts.job.old_rotor, PlaceKind::TrackOuter, event::kNoBolt, 0.0725, 2.0);
  begin_touch(parts.world(), HandId::Right, parts.job.new_rotor, PlaceKind::TrackInner, event::kNoBolt, 0.0725, 2.0);
  end_touch(parts.world(), HandId::Right);
  const double on_new = mass_on_face_kg(parts.state.rotors[1].faces[1], grid, Film::Oil);
  const double on_hand = parts.state.hands[1].film_kg_m2[at(Film::Oil)] * kFingersArea_m2;
  CHECK(on_new > 0.0);
  CHECK(mass_on_face_kg(oily, grid, Film::Oil) + on_new + on_hand == Approx(before).epsilon(1e-12));
  CHECK(parts.of_kind("touched").size() == 2);
}

// danger: greasy fingers on a bolt's thread leave the locker's bond and the clamp as if nothing had been
TEST_CASE("greasy fingers grease a thread") {
  BenchParts parts = with_clean_rotors();
  parts.state.hands[1].film_kg_m2[at(Film::Grease)] = 500.0 * kUg;
  begin_touch(parts.world(), HandId::Right, parts.job.new_bolts[0], PlaceKind::BoltThread, event::kNoBolt, 0.0, 0.0);
  end_touch(parts.world(), HandId::Right);
  CHECK(parts.state.bolts[6].grease_kg_m2 > 50.0 * kUg);
  CHECK(parts.choice(parts.of_kind("touched").at(0), "part") == "bolt_thread");
}

// danger: a filthy rag leaves the hand that wrings it clean
TEST_CASE("a dirty rag dirties the hand that takes it, a clean one does not") {
  BenchParts parts = with_clean_rotors();
  const double before = fouling_kg_m2(parts.state.hands[1].film_kg_m2);
  soil_by_rag(parts.world(), HandId::Right, parts.job.clean_rag);
  CHECK(fouling_kg_m2(parts.state.hands[1].film_kg_m2) <= before);
  soil_by_rag(parts.world(), HandId::Right, parts.job.dirty_rag);
  CHECK(fouling_kg_m2(parts.state.hands[1].film_kg_m2) > before + 2.0 * kUg);
}

// danger: a rotor laid face down on a dirty bench stays clean, or the wrong face is named
TEST_CASE("a rotor laid down takes what lies on the bench, on the face that is down") {
  BenchParts parts = with_clean_rotors();
  parts.state.bench_top.load_kg_m2[at(Film::Oil)] = 100.0 * kUg;
  parts.state.things[event::index_of(parts.job.new_rotor)].inner_up = true;
  lay_down(parts.world(), parts.job.new_rotor);
  CHECK(parts.choice(parts.of_kind("laid_down").at(0), "face") == "outer");
  CHECK(figures(parts, parts.job.new_rotor, 0).worst_kg_m2 > 10.0 * kUg);
  CHECK(figures(parts, parts.job.new_rotor, 1).worst_kg_m2 == 0.0);
}

// danger: feeling a seat for grit proves nothing, though hands did it
TEST_CASE("fingers that rest on a seat for a second have inspected it") {
  BenchParts parts = with_clean_rotors();
  begin_touch(parts.world(), HandId::Right, parts.job.wheel, PlaceKind::Boss, BoltId{2}, 0.0, 0.0);
  parts.state.tick += 250;
  end_touch(parts.world(), HandId::Right);
  const auto looks = parts.of_kind("inspected");
  REQUIRE(looks.size() == 1);
  CHECK(parts.choice(looks[0], "with") == "fingers");
  CHECK(parts.field(looks[0], "bolt") == 2.0);
}

}  // namespace
}  // namespace proofstand::bench

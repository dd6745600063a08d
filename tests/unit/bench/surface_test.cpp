#include "sim/bench/surface.h"

#include <rapidcheck.h>

#include <cmath>

#include "tests/support/bench_parts.h"
#include "tests/support/catch.h"

namespace proofstand::bench {
namespace {

using testing::at;
using testing::kUg;

const TrackGrid kGrid = track_grid(RotorPart{});

// danger: loads times areas would not be masses, and matter would come from nowhere
TEST_CASE("the cells of a face add up to the ring of its track") {
  double area = 0.0;
  for (std::size_t ring = 0; ring < kRings; ++ring) area += kGrid.cell_area_m2(ring) * kSectors;
  // area of a ring: geometry
  CHECK(area == Approx(3.14159265358979 * (0.080 * 0.080 - 0.065 * 0.065)).epsilon(1e-12));
  CHECK(kGrid.ring_radius_m(0) > 0.065);
  CHECK(kGrid.ring_radius_m(kRings - 1) < 0.080);
}

// danger: a thumb just off the rim, or a stroke over the zero angle, lands in another rotor's memory
TEST_CASE("any point resolves to a cell") {
  CHECK(resolve_cell(kGrid, 0.0728, 0.0).index() == 8);
  CHECK(resolve_cell(kGrid, 0.0725, -1e-9).sector == kSectors - 1);
  CHECK(resolve_cell(kGrid, 0.5, 100.0).ring == kRings - 1);
  CHECK(resolve_cell(kGrid, 0.0, -1e5).ring == 0);
  REQUIRE(rc::check("no point falls outside", [] {
    const double radius = static_cast<double>(*rc::gen::inRange(0, 1000)) * 1e-3;
    const double angle = static_cast<double>(*rc::gen::inRange(-100000, 100000)) * 1e-2;
    RC_ASSERT(resolve_cell(kGrid, radius, angle).index() < kSectors * kRings);
  }));
}

// danger: alcohol that dries at another pace in a picture, a hash or a finding than in the hand
TEST_CASE("a thin film of alcohol dries as people see it dry, and looking at it changes nothing") {
  FilmCell cell;
  cell.load_kg_m2[at(Film::Alcohol)] = 10e-6 * 785.0;
  cell.wet_tick = 1000;
  const base::Tick second = base::kTicksPerSecond;
  // a thin wiped film dries in 15 to 30 s: published web page of a maker of the solvent
  CHECK(wet_alcohol_kg_m2(cell, 1000 + 15 * second) > 0.0);
  CHECK(wet_alcohol_kg_m2(cell, 1000 + 30 * second) == 0.0);
  const double whole = wet_alcohol_kg_m2(cell, 1000 + 10 * second);
  for (base::Tick t = 1001; t < 1000 + 10 * second; ++t) static_cast<void>(wet_alcohol_kg_m2(cell, t));
  CHECK(wet_alcohol_kg_m2(cell, 1000 + 10 * second) == whole);
  CHECK(cell.wet_tick == 1000);
  rebase_alcohol(cell, 1000 + 10 * second);
  CHECK(wet_alcohol_kg_m2(cell, 1000 + 10 * second) == whole);
}

// danger: rubbing back and forth makes or destroys oil
TEST_CASE("an exchange keeps all matter and leaves nothing below zero") {
  REQUIRE(rc::check("conserved", [] {
    const auto share = [] { return static_cast<double>(*rc::gen::inRange(0, 500)) * 1e-3; };
    const auto load = [] { return static_cast<double>(*rc::gen::inRange(0, 100000)) * 1e-6; };
    std::array<double, kSpecies> a{};
    std::array<double, kSpecies> b{};
    Exchange exchange;
    for (std::size_t s = 0; s < kSpecies; ++s) {
      a[s] = load();
      b[s] = load();
      exchange.there_1[s] = share();
      exchange.back_1[s] = share();
    }
    const double area_a = 1e-4 * (1.0 + share());
    const double area_b = 1e-4 * (1.0 + 100.0 * share());
    const std::array<double, kSpecies> a0 = a;
    const std::array<double, kSpecies> b0 = b;
    exchange_film(a, area_a, b, area_b, 1e-4, exchange, 2.0 * share());
    for (std::size_t s = 0; s < kSpecies; ++s) {
      const double before = a0[s] * area_a + b0[s] * area_b;
      RC_ASSERT(std::abs(a[s] * area_a + b[s] * area_b - before) <= 1e-12 * before + 1e-30);
      RC_ASSERT(a[s] >= 0.0);
      RC_ASSERT(b[s] >= 0.0);
    }
  }));
}

// danger: a fouled face is called clean, or a dusty dry one fouled
TEST_CASE("figures of a face follow its films") {
  FaceState face;
  FaceFigures clean = face_figures(face, kGrid, 0);
  CHECK(clean.friction_factor_1 == 1.0);
  CHECK(clean.worst_kg_m2 == 0.0);
  for (FilmCell& cell : face.cells) cell.load_kg_m2[at(Film::Oil)] = 200.0 * kUg;
  const FaceFigures oily = face_figures(face, kGrid, 0);
  CHECK(oily.oily_1 == Approx(1.0));
  CHECK(oily.mean_kg_m2 == Approx(200.0 * kUg));
  // a full film of oil leaves about a third of the friction: from memory
  CHECK(oily.friction_factor_1 == Approx(0.35).margin(0.02));
  FaceState wet;
  wet.cells[0].load_kg_m2[at(Film::Alcohol)] = 5e-3;
  CHECK(face_figures(wet, kGrid, 0).wet_share_1 > 0.0);
  CHECK(face_figures(wet, kGrid, 60 * base::kTicksPerSecond).wet_share_1 == 0.0);
}

}  // namespace
}  // namespace proofstand::bench

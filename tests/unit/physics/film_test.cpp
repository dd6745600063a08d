// Danger: oil that comes from nowhere or vanishes; a wipe that cleans with a black rag.
#include <rapidcheck.h>

#include <cmath>

#include "sim/physics/drying.h"
#include "sim/physics/film.h"
#include "tests/support/catch.h"

using namespace proofstand;
using namespace proofstand::physics;

namespace {

double between(int low, int high) { return static_cast<double>(*rc::gen::inRange(low, high)); }

}  // namespace

TEST_CASE("contact keeps all matter and leaves nothing below zero") {
  CHECK(rc::check("conserved", [] {
    const FilmBody first = static_cast<FilmBody>(*rc::gen::inRange(0, 8));
    const FilmBody second = static_cast<FilmBody>(*rc::gen::inRange(0, 8));
    const Species species = static_cast<Species>(*rc::gen::inRange(0, 7));
    const double area_m2 = 1e-6 * between(1, 400);
    const double first_area_m2 = area_m2 * (1.0 + 0.1 * between(0, 50));
    const double second_area_m2 = area_m2 * (1.0 + 0.1 * between(0, 50));
    const double a = kMicrogramPerCm2_kg_m2 * 0.1 * between(0, 5000);
    const double b = kMicrogramPerCm2_kg_m2 * 0.1 * between(0, 5000);
    const FilmPair pair = exchange(a, first_area_m2, b, second_area_m2, area_m2,
                                   transfer_shares(first, second, species), 0.01 * between(0, 101));
    RC_ASSERT(pair.first_kg_m2 >= 0.0);
    RC_ASSERT(pair.second_kg_m2 >= 0.0);
    const double before_kg = a * first_area_m2 + b * second_area_m2;
    const double after_kg = pair.first_kg_m2 * first_area_m2 + pair.second_kg_m2 * second_area_m2;
    RC_ASSERT(std::fabs(after_kg - before_kg) <= 1e-12 * before_kg);
  }));
}

TEST_CASE("every pair of bodies has shares that cannot overshoot, the same seen from either side") {
  for (int i = 0; i < 8; ++i) {
    for (int j = 0; j < 8; ++j) {
      for (int s = 0; s < 7; ++s) {
        const TransferShares there =
            transfer_shares(static_cast<FilmBody>(i), static_cast<FilmBody>(j), static_cast<Species>(s));
        const TransferShares back =
            transfer_shares(static_cast<FilmBody>(j), static_cast<FilmBody>(i), static_cast<Species>(s));
        CHECK(there.there_1 + there.back_1 <= 1.0);
        if (i != j) CHECK(there.there_1 == back.back_1);
      }
    }
  }
}

TEST_CASE("one fold stalls where it gives back what it takes, a dirty one spreads") {
  const TransferShares wipe = transfer_shares(FilmBody::Metal, FilmBody::WetRag, Species::Grease);
  double metal = 10.0 * kMicrogramPerCm2_kg_m2;
  double rag = 0.0;
  for (int i = 0; i < 50; ++i) {
    const FilmPair pair = exchange(metal, 1e-3, rag, 1e-3, 1e-3, wipe);
    metal = pair.first_kg_m2;
    rag = pair.second_kg_m2;
  }
  CHECK(metal == Approx(rag * wipe.back_1 / wipe.there_1));
  const FilmPair spread = exchange(0.0, 1e-3, 2.0 * kDirtyRag_kg_m2, 1e-3, 1e-3, wipe);
  CHECK(spread.first_kg_m2 > 0.0);
  CHECK(spread.moved_kg < 0.0);
}

TEST_CASE("more film never helps friction; a clean track has all of it") {
  CHECK(film_friction_factor_1(FilmLoads{}) == 1.0);
  CHECK(rc::check("monotone", [] {
    FilmLoads loads{};
    const std::size_t species = static_cast<std::size_t>(*rc::gen::inRange(0, 7));
    loads[species] = kMicrogramPerCm2_kg_m2 * between(0, 300);
    FilmLoads more = loads;
    more[species] += kMicrogramPerCm2_kg_m2;
    RC_ASSERT(film_friction_factor_1(more) <= film_friction_factor_1(loads));
    RC_ASSERT(film_friction_factor_1(more) >= 0.35);
    RC_ASSERT(covered_1(loads[species]) < 1.0 + 1e-12);
  }));
  FilmLoads oil{};
  oil[static_cast<std::size_t>(Species::Oil)] = 200.0 * kMicrogramPerCm2_kg_m2;
  CHECK(film_friction_factor_1(oil) == Approx(0.35).margin(0.001));
}

TEST_CASE("alcohol dries straight down to nothing, a covered surface slower, in one step or in many") {
  const double wet_kg_m2 = 10e-6 * 785.0;
  CHECK(load_after_drying_kg_m2(wet_kg_m2, 0.0) == wet_kg_m2);
  CHECK(load_after_drying_kg_m2(wet_kg_m2, 26.0) > 0.0);
  CHECK(load_after_drying_kg_m2(wet_kg_m2, 27.0) == 0.0);
  CHECK(load_after_drying_kg_m2(wet_kg_m2, 27.0, 0.1) > 0.0);
  const double halfway = load_after_drying_kg_m2(load_after_drying_kg_m2(wet_kg_m2, 5.0), 8.0);
  CHECK(halfway == Approx(load_after_drying_kg_m2(wet_kg_m2, 13.0)));
  CHECK(drying_time_s(10e-6, isopropanol(), 293.15, 0.0) == Approx(wet_kg_m2 / alcohol_flux_kg_m2_s()));
}

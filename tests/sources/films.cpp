// Films, wiping, drying.
#include "sim/physics/drying.h"
#include "sim/physics/film.h"
#include "sim/physics/pad_friction.h"
#include "tests/sources/cases.h"

namespace proofstand::sources {

using namespace physics;

void add_film_cases(Table& t) {
  constexpr double kUnit = kMicrogramPerCm2_kg_m2;
  constexpr double kPatch_m2 = 3.5e-4;
  t.open("57", "wipes of practice", kPractice);
  const double left[] = {0.2, 0.04, 0.008};
  for (int n = 1; n <= 3; ++n) {
    t.check("film after " + std::to_string(n) + " wipes", share_after_wipes_1(1.0, 0.8, n), left[n - 1], 1e-12, "1");
  }
  t.open("141", "stagnant film model", kMemory);
  t.check("evaporation, alcohol", evaporation_flux_kg_m2_s(isopropanol(), 293.15, 0.0) * 1e3, 0.2945, 1e-3, "g/m2s");
  t.check("evaporation, water at half humidity", evaporation_flux_kg_m2_s(water(), 293.15, 0.5) * 1e3, 0.0432, 1e-3,
          "g/m2s");
  t.open("141a", "public chemical database: 1.5 kg/(m2 h) in 4.5 m/s of wind", kPublished);
  t.verdict("still air stays below that", evaporation_flux_kg_m2_s(isopropanol(), 293.15, 0.0) * 3600.0 < 1.5, true);
  const double alcohol_s = drying_time_s(10e-6, isopropanol(), 293.15, 0.0);
  const double water_s = drying_time_s(10e-6, water(), 293.15, 0.5);
  t.open("142", "flux over thickness", kMemory);
  t.check("10 um of alcohol", alcohol_s, 26.66, 0.13, "s");
  t.check("10 um of water", water_s, 230.9, 1.2, "s");
  t.check("70:30 one after the other", 0.7 * alcohol_s + 0.3 * water_s, 87.9, 0.44, "s");
  t.open("142a", "published: a thin wiped film dries in 15 to 30 s", kPublished);
  t.check("10 um of alcohol", alcohol_s, 22.5, 7.5, "s");
  t.open("143", "geometry", kMemory);
  t.check("thickness of a print", film_thickness_m(20e-9 / kPatch_m2, 900.0) * 1e6, 0.0635, 1e-4, "um");

  const TransferShares thumb = transfer_shares(FilmBody::Skin, FilmBody::Metal, Species::SkinGrease);
  const FilmPair touched = exchange(15.0 * kUnit, kPatch_m2, 0.0, kPatch_m2, kPatch_m2, thumb);
  t.open("144", "conserved transfer; shares of practice", kPractice);
  t.check("skin after a thumb on metal", touched.first_kg_m2 / kUnit, 9.0, 1e-9, "ug/cm2");
  t.check("metal after it", touched.second_kg_m2 / kUnit, 6.0, 1e-9, "ug/cm2");
  t.check("moved", touched.moved_kg * 1e9, 21.0, 1e-9, "ug");
  t.open("145", "conserved transfer; shares of practice", kPractice);
  const TransferShares wipe = transfer_shares(FilmBody::Metal, FilmBody::WetRag, Species::SkinGrease);
  const double same[] = {1.2, 0.48, 0.372};
  const double fresh[] = {1.2, 0.24, 0.048};
  double metal = 6.0 * kUnit;
  double rag = 0.0;
  double clean = 6.0 * kUnit;
  for (int n = 0; n < 3; ++n) {
    const FilmPair pair = exchange(metal, kPatch_m2, rag, kPatch_m2, kPatch_m2, wipe);
    metal = pair.first_kg_m2;
    rag = pair.second_kg_m2;
    clean = exchange(clean, kPatch_m2, 0.0, kPatch_m2, kPatch_m2, wipe).first_kg_m2;
    t.check("same fold, wipe " + std::to_string(n + 1), metal / kUnit, same[n], 1e-4, "ug/cm2");
    t.check("fresh fold, wipe " + std::to_string(n + 1), clean / kUnit, fresh[n], 1e-4, "ug/cm2");
  }
  t.open("146", "covered share; figures of practice", kPractice);
  const double covered = covered_1(6.0 * kUnit);
  t.check("6 ug/cm2 covers", covered, 0.2592, 1e-4, "1");
  t.check("friction with it", 0.45 * film_factor_1(covered, full_film_factor_1(Species::SkinGrease)), 0.4033, 1e-4,
          "1");
  FilmLoads loads{};
  loads[static_cast<std::size_t>(Species::SkinGrease)] = 6.0 * kUnit;
  t.check("same through the film's factor", 0.45 * film_friction_factor_1(loads), 0.4033, 1e-4, "1");
}

}  // namespace proofstand::sources

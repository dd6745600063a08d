#include "sim/bench/start_surfaces.h"

#include "sim/bench/card_truth.h"
#include "sim/bench/fluid.h"
#include "sim/bench/surface.h"
#include "sim/bench/wheel.h"

namespace proofstand::bench {
namespace {

// what a bench that is wiped now and then carries; a rotor laid on it takes a tenth of the grease
constexpr double kBenchOil_kg_m2 = 3.0 * physics::kMicrogramPerCm2_kg_m2;
constexpr double kBenchGrease_kg_m2 = 3.0 * physics::kMicrogramPerCm2_kg_m2;
constexpr double kDirtyRag_kg_m2 = 150.0 * physics::kMicrogramPerCm2_kg_m2;
constexpr double kOpenedMicrometer_m = 0.003;

std::size_t at(Film film) { return static_cast<std::size_t>(film); }

FaceState face_from(const StartFilm& film) {
  FaceState face;
  for (FilmCell& cell : face.cells) {
    cell.load_kg_m2[at(Film::Oil)] = film.oil_kg_m2;
    cell.load_kg_m2[at(Film::Grease)] = film.grease_kg_m2;
    cell.load_kg_m2[at(Film::Dust)] = film.dust_kg_m2;
  }
  return face;
}

}  // namespace

FilmCell fresh_fold(const RagPart& part) {
  FilmCell fold;
  if (part.dirty) {
    fold.load_kg_m2[at(Film::Oil)] = kDirtyRag_kg_m2;
    fold.load_kg_m2[at(Film::Grease)] = kDirtyRag_kg_m2;
    fold.load_kg_m2[at(Film::Dust)] = kDirtyRag_kg_m2;
  }
  return fold;
}

void start_surfaces(const World& world) {
  BenchState& state = world.state;
  for (HandState& hand : state.hands) {
    hand.film_kg_m2 = {};
    hand.film_kg_m2[at(Film::SkinGrease)] = physics::kSkinLoad_kg_m2;
  }
  state.rotors.clear();
  for (const RotorPart& part : world.setup.rotors) {
    RotorSurfaces surfaces;
    surfaces.faces[0] = face_from(part.film_outer);
    surfaces.faces[1] = face_from(part.film_inner);
    state.rotors.push_back(surfaces);
  }
  state.rags.clear();
  for (const RagPart& part : world.setup.rags) {
    RagState rag;
    rag.fold = fresh_fold(part);
    rag.folds_left = part.folds;
    rag.fold_used = part.dirty;
    state.rags.push_back(rag);
  }
  state.instruments.assign(world.setup.instruments.size(), InstrumentState{});
  for (const Thing& thing : world.setup.things) {
    if (thing.kind == ThingKind::Micrometer) state.instruments[thing.part].opening_m = kOpenedMicrometer_m;
    if (thing.kind == ThingKind::Vernier) state.instruments[thing.part].opening_m = kOpenedMicrometer_m;
  }
  state.card.assign(world.setup.card.size(), CardState{});
  state.bosses.assign(world.setup.bolt_count(), FilmCell{});
  state.bench_top.load_kg_m2[at(Film::Oil)] = kBenchOil_kg_m2;
  state.bench_top.load_kg_m2[at(Film::Grease)] = kBenchGrease_kg_m2;
  state.wheel = WheelState{};
  state.wheel.at = world.setup.wheel_in_bike ? WheelAt::Bike : WheelAt::Stand;
}

void start_figures(const World& world) {
  note_start_of_card(world);
  tell_skin(world);
  tell_wheel(world);
}

}  // namespace proofstand::bench

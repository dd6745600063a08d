#include "sim/cli/sheet_figures.h"

#include "sim/base/number_text.h"
#include "sim/bench/bench.h"
#include "sim/bench/probe.h"
#include "sim/bench/surface.h"
#include "sim/cli/torque_curves.h"
#include "sim/physics/friction_condition.h"
#include "sim/physics/preload.h"
#include "sim/report/catalogue.h"

namespace proofstand::cli {
namespace {

constexpr base::Tick kLookEvery = 2;
constexpr std::size_t kRunoutSamples = 180;

bool at_work(const bench::Bench& bench) {
  for (const bench::HandState& hand : bench.state().hands) {
    if (hand.stage != bench::HandStage::Free) return true;
  }
  return false;
}

}  // namespace

void add_preload_range(report::MarkSheet& sheet, const bench::BenchSetup& setup) {
  if (!sheet.sheet_torque_nm || setup.bolts.empty()) return;
  const physics::ThreadGeometry thread = physics::compute_thread(setup.hub.thread_diameter_m, setup.hub.thread_pitch_m);
  const double hole_m = setup.rotors.empty() ? setup.hub.thread_diameter_m : setup.rotors.front().hole_diameter_m;
  const double bearing_m = physics::bearing_diameter_m(setup.bolts.front().head_diameter_m, hole_m);
  const physics::FrictionRow row = physics::friction_row(physics::ThreadCondition::AsReceived);
  const physics::TorqueLevers levers = physics::torque_levers(thread, bearing_m, {row.thread_1, row.head_1});
  const double tolerance_nm = sheet.sheet_torque_tolerance_nm.value_or(0.0);
  sheet.preload_lo_n =
      physics::preload_from_torque_n(*sheet.sheet_torque_nm - tolerance_nm, levers) * (1.0 - row.scatter_1);
  sheet.preload_hi_n =
      physics::preload_from_torque_n(*sheet.sheet_torque_nm + tolerance_nm, levers) * (1.0 + row.scatter_1);
}

void add_pictures(report::MarkSheet& sheet, const record::Marking& marking) {
  const record::Attempt& attempt = marking.attempt;
  if (attempt.head.bench != bench::kBenchVersion) {
    sheet.notes.push_back(report::phrase("note.other-bench", "en", {base::text_from_int(attempt.head.bench)}));
    return;
  }
  bench::Bench bench(marking.scenario.setup);
  TorqueCurves curves(marking.scenario.setup.bolt_count());
  for (const event::Action& action : attempt.actions) {
    // a hand at rest turns nothing, so the time until it moves again needs no look
    while (!bench.over() && bench.tick() < action.tick && at_work(bench)) {
      const base::Tick next = bench.tick() + kLookEvery;
      bench.advance_to(next < action.tick ? next : action.tick);
      curves.look(bench);
    }
    if (!bench.over()) bench.apply(action);
    curves.look(bench);
  }
  if (!bench.over() && bench.tick() < marking.trace.end_tick) bench.advance_to(marking.trace.end_tick);
  report::ReplayPictures pictures;
  pictures.curves = curves.finish();
  for (const bool printed : {true, false}) {
    std::vector<double> film_kg_m2 = bench::probe_film_kg_m2(bench, printed);
    if (film_kg_m2.size() == bench::kSectors * bench::kRings) {
      pictures.films.push_back({bench::kSectors, bench::kRings, std::move(film_kg_m2)});
    }
  }
  pictures.runout_m = bench::probe_runout_m(bench, kRunoutSamples);
  sheet.pictures = std::move(pictures);
}

}  // namespace proofstand::cli

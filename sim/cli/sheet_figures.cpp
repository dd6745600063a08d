#include "sim/cli/sheet_figures.h"

#include "sim/bench/bench.h"
#include "sim/physics/friction_condition.h"
#include "sim/physics/preload.h"

namespace proofstand::cli {

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
  (void)sheet;
  (void)marking;
}

}  // namespace proofstand::cli

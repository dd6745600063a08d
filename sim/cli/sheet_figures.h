// Figures of a mark sheet that need physics or the bench: made here, because the sheet itself knows neither.
#pragma once

#include "sim/bench/setup.h"
#include "sim/record/marking.h"
#include "sim/report/mark_sheet.h"

namespace proofstand::cli {

/// The range of preload that the sheet's torque gives on this thread, clean.
void add_preload_range(report::MarkSheet& sheet, const bench::BenchSetup& setup);

/// Torque over angle, film maps and runout, from a replay; left out, with a note, where the attempt cannot be replayed.
void add_pictures(report::MarkSheet& sheet, const record::Marking& marking);

}  // namespace proofstand::cli

// Marks an attempt: its recorded events, judged by the rules that stand in it. Needs no bench of the same version,
// since the bench is not run again.
#pragma once

#include "sim/record/attempt.h"
#include "sim/rules/program.h"
#include "sim/rules/report.h"
#include "sim/scenario/scenario.h"

namespace proofstand::record {

/// Everything a mark sheet is made of.
struct Marking {
  Attempt attempt;
  scenario::DrawnScenario scenario;
  rules::RuleProgram program;
  event::Trace trace;  ///< in the program's vocabulary
  rules::Report report;
  bool replayed = false;  ///< the attempt had not been closed: its events come from a replay up to its last line
};

/// errors: those of read_resolved(); a rule that this edition does not understand; unknown-kind; other-bench when an
/// attempt that was not closed would have to be replayed by another bench
base::Result<Marking> mark_attempt(Attempt attempt);

/// The scenario that stands in an attempt. errors: those of read_resolved()
base::Result<scenario::DrawnScenario> scenario_of(const Attempt& attempt);
/// The rules of a scenario, compiled. errors: the first fault, which a check of the scenario would have shown
base::Result<rules::RuleProgram> program_of(const scenario::DrawnScenario& scenario);

}  // namespace proofstand::record

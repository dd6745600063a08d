// What the rules concluded about a trace, for whoever tries or doubts them: every case with its evidence.
#pragma once

#include <string>

#include "sim/event/record.h"
#include "sim/rules/program.h"
#include "sim/rules/report.h"

namespace proofstand::cli {

/// For people: a line a rule, then its cases.
std::string judged_text(const rules::RuleProgram& program, const event::Trace& trace, const rules::Report& report);
/// One JSON object; ticks as in the trace, quantities in SI.
std::string judged_json(const rules::RuleProgram& program, const event::Trace& trace, const rules::Report& report);

}  // namespace proofstand::cli

// Checks a case's evidence against the raw trace, without the engine: somebody who doubts a mark could do the same.
#pragma once

#include <string>

#include "sim/event/record.h"
#include "sim/rules/program.h"
#include "sim/rules/report.h"

namespace proofstand::testing {

/// Empty when the case proves what it says; otherwise what is wrong with it.
std::string complaint_about(const rules::RuleProgram& program, rules::RuleIndex rule, const event::Trace& trace,
                            const rules::Case& made);

}  // namespace proofstand::testing

// What rules mean, word for word and slowly: every definition is looked up in the whole trace, nothing is remembered
// from record to record. The engine must agree with it. Knows no unknown values and no composites.
#pragma once

#include <cstdint>
#include <vector>

#include "sim/event/record.h"
#include "sim/rules/program.h"

namespace proofstand::testing {

struct ReferenceCase {
  rules::Position anchor = rules::kNoPosition;
  bool ok = true;
  std::int32_t score_ppm = rules::kFullPpm;
  base::Tick settled = rules::kNoTick;
  std::int64_t key = -1;
};

/// All cases of one rule on a finished run, in order of anchor, then key.
std::vector<ReferenceCase> reference_cases(const rules::RuleProgram& program, rules::RuleIndex rule,
                                           const event::Trace& trace);

}  // namespace proofstand::testing

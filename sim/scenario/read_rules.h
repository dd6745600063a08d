// `[[rule]]` and `[marks]` of a scenario, as plain specs for the rule compiler. Only their form is checked here; what
// they mean is understood by the compiler.
#pragma once

#include <vector>

#include "sim/rules/spec.h"
#include "sim/scenario/field_reader.h"

namespace proofstand::scenario {

struct ReadRules {
  std::vector<rules::RuleSpec> specs;
  std::vector<RuleLine> lines;
};

/// rules: the list under `rule`.
ReadRules read_rules(const Reading& reading, const Node& rules);
/// `[marks]`: points per competence, their total, pass mark, least coverage.
rules::MarksSpec read_marks(const Reading& reading, const Node& marks);
/// Where a spot lies, in the compiler's terms.
rules::SourcePos source_pos(const Reading& reading, const Spot& at);

}  // namespace proofstand::scenario

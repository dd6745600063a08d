// Rules without a bench: a file of rules read by itself, for trying one on a trace.
#pragma once

#include <string>
#include <vector>

#include "sim/base/result.h"
#include "sim/rules/spec.h"
#include "sim/scenario/texts.h"

namespace proofstand::scenario {

/// What such a file may hold: rules, marks, figures of a maker's sheet. Where it says nothing of marks, every
/// competence that its rules name counts.
struct RulesAlone {
  base::Faults faults;
  std::vector<rules::RuleSpec> specs;
  std::vector<RuleLine> lines;
  std::vector<rules::SheetFigure> sheet;
  rules::MarksSpec marks;
};

/// path: a file with [[rule]] tables: a shared set, a scenario, or one of an author's own.
/// errors among the faults: those of reading a scenario file; S03 without any rule
RulesAlone load_rules_alone(const std::string& path);

}  // namespace proofstand::scenario

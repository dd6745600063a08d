// A script worked on a drawn scenario and judged by its rules, straight from the bench's events.
#pragma once

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

#include "sim/rules/engine.h"
#include "sim/scenario/scenario.h"
#include "tests/support/worked_job.h"

namespace proofstand::testing {

/// A rule that took points or found something wrong.
struct FoundRule {
  std::string id;
  rules::Verdict verdict = rules::Verdict::Fail;
  std::string why;  ///< first bad case: reason, what was expected and found
};

struct JudgedJob {
  WorkedJob work;
  rules::RuleProgram program;
  rules::Report report;

  /// Rules that were not kept, those inside of composites left out.
  [[nodiscard]] std::vector<FoundRule> found() const;
  /// Passed with every judged point, no rule broken, every point judged or not applicable.
  [[nodiscard]] bool full_marks() const;
};

/// Works and judges. The rules must compile (asserted): the scenario's own check says so first.
JudgedJob judge_job(std::string_view script, const scenario::DrawnScenario& scenario, const hand::HandSkill& skill,
                    std::uint64_t hand_seed);

}  // namespace proofstand::testing

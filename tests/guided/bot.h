// A trainee who does nothing but what the guidance asks for next: works its lines with a modelled hand, looks again.
#pragma once

#include <cstdint>
#include <string>
#include <vector>

#include "sim/hand/hand_script.h"
#include "sim/rules/report.h"
#include "sim/scenario/scenario.h"

namespace proofstand::testing {

/// One piece of advice, and what became of it.
struct GuidedStep {
  base::Tick tick = 0;
  std::string title;
  std::string say;
  std::vector<std::string> lines;
};

struct GuidedJob {
  std::vector<GuidedStep> steps;
  std::string stuck;  ///< why it went no further; empty: handed over
  rules::Report report;
  std::vector<std::string> lost;  ///< rules with points not earned in full

  /// Passed, handed over, every judged point earned.
  [[nodiscard]] bool full_marks() const;
};

/// spoil: lines worked before the guidance is first asked, for tests of what it makes of a botched start.
GuidedJob work_guided(const scenario::DrawnScenario& scenario, const hand::HandSkill& skill, std::uint64_t hand_seed,
                      std::string_view language, std::string_view spoil = {});

}  // namespace proofstand::testing

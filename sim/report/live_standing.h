// "How am I doing?" in practice: which requirements are met, broken or still open, in words, with their points.
#pragma once

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

#include "sim/rules/live.h"
#include "sim/scenario/scenario.h"

namespace proofstand::report {

/// One requirement as it stands.
struct LiveLine {
  rules::RuleIndex rule = rules::kNoRule;
  rules::LiveStatus status = rules::LiveStatus::Idle;
  std::string title;
  std::string why;
  std::string say;                ///< "met for good", "kept so far", "3 points lost", "still owed: bolt 2, bolt 5" ...
  std::int64_t points_milli = 0;  ///< [1/1000 point] that it is worth
  std::int64_t lost_milli = 0;    ///< [1/1000 point] gone whatever comes
  std::int64_t at_stake_milli = 0;         ///< [1/1000 point] gone as well if the job ended now
  base::Tick since_tick = rules::kNoTick;  ///< of met and broken: since when
};

/// All requirements that carry points, each in one list, in the order of the scenario.
struct LiveStanding {
  std::vector<LiveLine> met;        ///< full marks whatever comes, or kept so far
  std::vector<LiveLine> broken;     ///< full marks are gone
  std::vector<LiveLine> open;       ///< nothing to judge yet, or not yet as asked
  std::int64_t points_milli = 0;    ///< [1/1000 point] that all of them are worth
  std::int64_t lost_milli = 0;      ///< [1/1000 point]
  std::int64_t at_stake_milli = 0;  ///< [1/1000 point]
};

/// How every requirement stands now. Speaks of truths that only the bench knows, as the mark sheet will: for practice
/// and guided work, never in an exam.
LiveStanding compute_live_standing(const rules::RuleProgram& program, const rules::EngineState& engine,
                                   const scenario::DrawnScenario& scenario, std::string_view language);

}  // namespace proofstand::report

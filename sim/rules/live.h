// How each rule stands while the run goes on, and what it still asks for: the ground of hints and of guided work.
#pragma once

#include <cstdint>
#include <string_view>
#include <vector>

#include "sim/rules/engine.h"

namespace proofstand::rules {

enum class LiveStatus : std::uint8_t {
  Idle,       ///< no case yet
  GoodSoFar,  ///< ending now would give full marks
  BadSoFar,   ///< ending now would not; can still be put right
  Met,        ///< full marks whatever comes
  Broken,     ///< full marks are gone whatever comes
};
std::string_view live_word(LiveStatus status);

/// Something that a rule is still waiting for.
struct Owed {
  Role role = Role::X;            ///< which selector of the rule: x, y, a step, the opener
  std::int32_t step = -1;         ///< of an order
  std::int64_t item = -1;         ///< which item, where the rule counts by item
  base::Tick due_tick = kNoTick;  ///< latest moment, -1 without
  std::int64_t still_ticks = 0;   ///< hold: how much longer
};

struct LiveRule {
  RuleIndex rule = kNoRule;
  LiveStatus status = LiveStatus::Idle;
  std::vector<Owed> owed;           ///< empty when nothing is
  bool too_late = false;            ///< something can no longer be put right
  std::int64_t lost_milli = 0;      ///< [1/1000 point] lost for good by now
  std::int64_t at_stake_milli = 0;  ///< [1/1000 point] lost in addition if the run ended now
  base::Tick since_tick = kNoTick;  ///< of Met or Broken: the exact moment, also when noticed later
};

/// All rules, by index, at the state's tick. Costs about as much as finishing the run; not for every record.
std::vector<LiveRule> live_view(const RuleProgram& program, const EngineState& state);

}  // namespace proofstand::rules

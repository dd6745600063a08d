// What came of all rules: verdict, score, points and cases of each, and the totals. Sentences are made elsewhere.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "sim/base/ticks.h"
#include "sim/event/record.h"
#include "sim/rules/case.h"

namespace proofstand::rules {

/// Index of a rule in its program, in the order of the file.
using RuleIndex = std::int32_t;
inline constexpr RuleIndex kNoRule = -1;

enum class Verdict : std::uint8_t {
  Pass,
  Partial,  ///< some of the score
  Fail,
  NotApplicable,  ///< it never had a chance: see IdleReason
  Excused,        ///< lost, but explained by another rule that was lost first
  Unjudged,       ///< the data do not tell; never the trainee's fault
};

/// Why a rule never had a chance.
enum class IdleReason : std::uint8_t {
  None,
  OpenerNeverCame,   ///< its stretch never began
  TriggerNeverCame,  ///< there was a stretch, but nothing in it to judge
  CloserNeverCame,   ///< its stretch never ended, and only ended ones count
  ChildrenIdle,      ///< composite: no rule inside had a chance
};

/// How a verdict enters the totals.
enum class Counting : std::uint8_t {
  Judged,   ///< points in the denominator
  Covered,  ///< excused: out of the percentage, but seen
  Left,     ///< neither
};

/// Stable short words for files: "pass", "not-applicable", "opener-never-came" ...
std::string_view verdict_word(Verdict verdict);
std::string_view idle_word(IdleReason reason);

/// What came of one rule.
struct RuleResult {
  RuleIndex rule = kNoRule;
  Verdict verdict = Verdict::NotApplicable;
  IdleReason idle_reason = IdleReason::None;
  Counting counting = Counting::Left;
  RuleIndex excused_by = kNoRule;
  std::int32_t score_milli = 0;   ///< [1/1000]
  std::int64_t points_milli = 0;  ///< [1/1000 point] declared
  std::int64_t earned_milli = 0;  ///< [1/1000 point]
  std::int64_t cases = 0;
  std::int64_t ok = 0;
  std::int64_t bad = 0;
  std::int64_t unknown = 0;
  std::int64_t slips = 0;            ///< never: how often it happened · rounds: repeats within a pass
  std::vector<Case> bad_cases;       ///< the first ones (and unknown ones), up to the program's limit
  std::vector<Case> ok_cases;        ///< the first one
  std::optional<Case> worst;         ///< lowest score, then farthest off; the first of equals
  base::Tick broken_tick = kNoTick;  ///< when full marks became impossible
};

/// Three numbers that are always shown together, all [1/1000 point]: 0 <= earned <= judged <= covered <= declared.
struct Totals {
  std::int64_t earned_milli = 0;
  std::int64_t judged_milli = 0;
  std::int64_t covered_milli = 0;  ///< judged, and excused
  std::int64_t declared_milli = 0;

  /// [1/1000] covered of declared; 1000 when nothing was declared.
  [[nodiscard]] std::int32_t coverage_milli() const;
  /// [1/1000] earned of judged, rounded down; 1000 when nothing was judged.
  [[nodiscard]] std::int32_t share_milli() const;
};

enum class Overall : std::uint8_t { Passed, NotYet, NotJudged };

enum class OverallReason : std::uint8_t {
  ReachedPassMark,
  BelowPassMark,
  CriticalFailed,    ///< see deciding_rule
  LittleSeen,        ///< less than the least coverage was judged
  CutOff,            ///< the run was ended by something that is not the trainee's doing
  CriticalUnjudged,  ///< the data of a critical rule do not tell; see deciding_rule
};
std::string_view overall_word(Overall overall);
std::string_view overall_reason_word(OverallReason reason);

struct CompetenceTotals {
  std::string name;
  Totals totals;
};

struct Report {
  std::vector<RuleResult> rules;  ///< by rule index
  Totals totals;
  std::vector<CompetenceTotals> competences;  ///< in the order of the marks
  Overall overall = Overall::NotJudged;
  OverallReason reason = OverallReason::LittleSeen;
  RuleIndex deciding_rule = kNoRule;
  base::Tick end_tick = 0;
  event::EndReason end = event::EndReason::Finished;
};

}  // namespace proofstand::rules

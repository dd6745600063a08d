#include "sim/rules/live.h"

#include "sim/rules/owed.h"
#include "sim/rules/settled.h"

namespace proofstand::rules {
namespace {

LiveStatus so_far(const RuleResult& if_ended) {
  if (if_ended.verdict == Verdict::Pass) return LiveStatus::GoodSoFar;
  return if_ended.verdict == Verdict::NotApplicable ? LiveStatus::Idle : LiveStatus::BadSoFar;
}

// sure only where one child decides
LiveStatus composite_status(const Rule& rule, const std::vector<LiveRule>& live, LiveStatus otherwise) {
  std::int32_t met = 0;
  bool broken = false;
  for (RuleIndex child : rule.children) {
    const LiveStatus status = live[static_cast<std::size_t>(child)].status;
    if (status == LiveStatus::Met) ++met;
    if (status == LiveStatus::Broken) broken = true;
  }
  if (met >= rule.number) return LiveStatus::Met;
  return broken && rule.kind == RuleKind::AllOf ? LiveStatus::Broken : otherwise;
}

}  // namespace

std::string_view live_word(LiveStatus status) {
  switch (status) {
    case LiveStatus::Idle:
      return "idle";
    case LiveStatus::GoodSoFar:
      return "good-so-far";
    case LiveStatus::BadSoFar:
      return "bad-so-far";
    case LiveStatus::Met:
      return "met";
    case LiveStatus::Broken:
      return "broken";
  }
  return "";
}

std::vector<LiveRule> live_view(const RuleProgram& program, const EngineState& state) {
  const Report if_ended = finish(program, state, state.tick, event::EndReason::Finished);
  std::vector<LiveRule> live(program.rules.size());
  for (RuleIndex index : program.children_first) {
    const auto i = static_cast<std::size_t>(index);
    const Rule& rule = program.rules[i];
    const RuleResult& result = if_ended.rules[i];
    LiveRule& row = live[i];
    row.rule = index;
    row.status = so_far(result);
    if (!rule.children.empty()) {
      row.status = composite_status(rule, live, row.status);
    } else {
      row.owed = owed_by(program, state, index);
      const base::Tick broken = broken_since(program, state, index);
      const base::Tick met = broken == kNoTick ? met_since(program, state, index) : kNoTick;
      if (broken != kNoTick) row.status = LiveStatus::Broken;
      if (met != kNoTick) row.status = LiveStatus::Met;
      row.since_tick = broken != kNoTick ? broken : met;
    }
    const std::int64_t lost_milli = rule.points_milli - result.earned_milli;
    const bool counts = row.status == LiveStatus::Broken || row.status == LiveStatus::BadSoFar;
    row.too_late = row.status == LiveStatus::Broken;
    if (counts) (row.too_late ? row.lost_milli : row.at_stake_milli) = lost_milli;
  }
  return live;
}

}  // namespace proofstand::rules

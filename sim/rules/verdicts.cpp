#include "sim/rules/verdicts.h"

namespace proofstand::rules {
namespace {

std::int32_t score_of(const Rule& rule, const Tally& tally) {
  const std::int64_t judged = tally.ok + tally.bad;
  if (judged == 0) return 0;
  std::int64_t score_milli = 0;
  switch (rule.credit) {
    case Credit::All:
      return tally.bad == 0 ? 1000 : 0;
    case Credit::Worst:
      score_milli = (tally.min_ppm + 500) / 1000;
      break;
    case Credit::Share:
      score_milli = (tally.sum_ppm + judged * 500) / (judged * 1000);
      break;
  }
  // rounding neither hides a lost case nor the little that was earned
  if (tally.bad == 0) return 1000;
  const std::int64_t any_ppm = rule.credit == Credit::Worst ? tally.min_ppm : tally.sum_ppm;
  if (score_milli > 999) score_milli = 999;
  if (score_milli < 1 && any_ppm > 0) score_milli = 1;
  return static_cast<std::int32_t>(score_milli);
}

IdleReason why_idle(const Rule& rule, const ScopeState& scope) {
  const bool opens = rule.open.given();
  if (opens && scope.opened == 0) return IdleReason::OpenerNeverCame;
  return scope.counted == 0 ? IdleReason::CloserNeverCame : IdleReason::TriggerNeverCame;
}

// is the verdict sure although something could not be told?
bool surely_lost(const Rule& rule, const Tally& tally, bool doubt) {
  if (tally.bad == 0) return false;
  const bool all_lost = tally.sum_ppm == 0 && tally.unknown == 0;
  const bool nothing_left =
      rule.credit == Credit::All || (rule.credit == Credit::Worst && tally.min_ppm == 0) || all_lost;
  // a missing value may hide what would have saved a case; nothing can undo that something happened
  return nothing_left && (!doubt || rule.kind == RuleKind::Never);
}

void judge_idle(const Rule& rule, const ScopeState& scope, base::Tick end_tick, bool cut_off, RuleResult& result) {
  if (scope.doubt) {
    result.verdict = Verdict::Unjudged;
    return;
  }
  result.idle_reason = why_idle(rule, scope);
  if (!rule.required || scope.counted > 0) {
    result.verdict = Verdict::NotApplicable;
    return;
  }
  Case made;
  made.reason = cut_off ? Reason::CutOff : Reason::NoStretch;
  made.status = cut_off ? CaseStatus::Unknown : CaseStatus::Bad;
  made.score_ppm = 0;
  made.settled_tick = end_tick;
  made.since_tick = 0;
  made.window_from = 0;
  made.window_to = end_tick;
  made.b_tick = end_tick;
  result.cases = 1;
  (cut_off ? result.unknown : result.bad) = 1;
  result.bad_cases.push_back(made);
  result.verdict = cut_off ? Verdict::Unjudged : Verdict::Fail;
  if (!cut_off) result.broken_tick = end_tick;
}

// the first moment at which it was lost; an omission was lost all along
base::Tick lost_since(const EngineState& state, const RuleResult& result) {
  const Tally& tally = state.kept[static_cast<std::size_t>(result.rule)];
  if (tally.bad_since != kNoTick) return tally.bad_since;
  return result.bad_cases.empty() ? 0 : result.bad_cases[0].since_tick;
}

}  // namespace

RuleResult result_of(const RuleProgram& program, const EngineState& state, RuleIndex index, base::Tick end_tick,
                     bool cut_off) {
  const auto i = static_cast<std::size_t>(index);
  const Rule& rule = program.rules[i];
  const Tally& tally = state.kept[i];
  const ScopeState& scope = state.scopes[i];
  RuleResult result;
  result.rule = index;
  result.points_milli = rule.points_milli;
  result.cases = tally.cases;
  result.ok = tally.ok;
  result.bad = tally.bad;
  result.unknown = tally.unknown;
  result.slips = tally.slips;
  result.bad_cases = tally.bad_cases;
  result.ok_cases = tally.ok_cases;
  result.broken_tick = tally.bad_settled;
  if (!tally.worst.empty()) result.worst = tally.worst[0];
  if (tally.cases == 0) {
    judge_idle(rule, scope, end_tick, cut_off, result);
    return result;
  }
  const bool unsure = tally.unknown > 0 || scope.doubt;
  if (unsure && !surely_lost(rule, tally, scope.doubt)) {
    result.verdict = Verdict::Unjudged;
    return result;
  }
  result.score_milli = score_of(rule, tally);
  result.verdict =
      result.score_milli >= 1000 ? Verdict::Pass : (result.score_milli > 0 ? Verdict::Partial : Verdict::Fail);
  return result;
}

void apply_excuses(const RuleProgram& program, const EngineState& state, std::vector<RuleResult>& results) {
  // decided on the verdicts as they were found: an excused rule still explains what it broke itself
  std::vector<RuleIndex> excused_by(results.size(), kNoRule);
  const auto lost = [](const RuleResult& result) {
    return result.verdict == Verdict::Fail || result.verdict == Verdict::Partial;
  };
  for (std::size_t i = 0; i < results.size(); ++i) {
    if (!lost(results[i])) continue;
    for (RuleIndex other : program.rules[i].after_failure_of) {
      const RuleResult& cause = results[static_cast<std::size_t>(other)];
      if (!lost(cause) || lost_since(state, cause) > lost_since(state, results[i])) continue;
      excused_by[i] = other;
      break;
    }
  }
  for (std::size_t i = 0; i < results.size(); ++i) {
    if (excused_by[i] == kNoRule) continue;
    results[i].verdict = Verdict::Excused;
    results[i].excused_by = excused_by[i];
  }
}

}  // namespace proofstand::rules

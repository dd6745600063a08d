// any_of, all_of, at_least: verdicts of other rules joined, with "not known" kept apart from "no".
#include <algorithm>

#include "sim/rules/verdicts.h"

namespace proofstand::rules {

void judge_composite(const RuleProgram& program, RuleIndex index, base::Tick end_tick,
                     std::vector<RuleResult>& results) {
  const Rule& rule = program.rules[static_cast<std::size_t>(index)];
  RuleResult result;
  result.rule = index;
  result.points_milli = rule.points_milli;
  std::vector<std::int32_t> scores_milli;
  std::int32_t unjudged = 0;
  Case made;
  made.reason = Reason::Children;
  made.b_tick = end_tick;
  made.settled_tick = end_tick;
  made.since_tick = end_tick;
  made.window_from = 0;
  made.window_to = end_tick;
  for (RuleIndex child : rule.children) {
    const RuleResult& inner = results[static_cast<std::size_t>(child)];
    if (inner.verdict == Verdict::NotApplicable) continue;
    if (inner.verdict == Verdict::Unjudged) {
      ++unjudged;
      continue;
    }
    scores_milli.push_back(inner.score_milli);
    made.items.push_back(child);
    if (inner.score_milli < 1000) {
      made.missing.push_back(child);
      // lost when the last of its chances was; the earliest is what matters to an excuse
      if (inner.broken_tick != kNoTick) made.since_tick = std::min(made.since_tick, inner.broken_tick);
    }
  }
  const auto judged = static_cast<std::int32_t>(scores_milli.size());
  if (judged + unjudged == 0) {
    result.idle_reason = IdleReason::ChildrenIdle;
    results[static_cast<std::size_t>(index)] = std::move(result);
    return;
  }
  std::sort(scores_milli.begin(), scores_milli.end(), std::greater<>());
  // children that had no chance are taken out; no more can be asked for than are left
  const std::int32_t wanted = std::min(rule.number, judged + unjudged);
  const auto nth = [&](std::int32_t n) { return n <= judged ? scores_milli[static_cast<std::size_t>(n - 1)] : 0; };
  const std::int32_t least_milli = nth(wanted);                                        // were all unknown ones lost
  const std::int32_t most_milli = wanted <= unjudged ? 1000 : nth(wanted - unjudged);  // were they all kept
  result.cases = 1;
  if (least_milli != most_milli) {
    made.status = CaseStatus::Unknown;
    made.score_ppm = 0;
    result.unknown = 1;
    result.verdict = Verdict::Unjudged;
    result.bad_cases.push_back(std::move(made));
  } else {
    std::int32_t score_milli = least_milli;
    if (rule.credit == Credit::All && score_milli < 1000) score_milli = 0;
    made.score_ppm = score_milli * 1000;
    result.score_milli = score_milli;
    if (score_milli >= 1000) {
      result.ok = 1;
      result.verdict = Verdict::Pass;
      result.ok_cases.push_back(std::move(made));
    } else {
      made.status = CaseStatus::Bad;
      result.bad = 1;
      result.broken_tick = made.since_tick;
      result.verdict = score_milli > 0 ? Verdict::Partial : Verdict::Fail;
      result.bad_cases.push_back(std::move(made));
    }
  }
  results[static_cast<std::size_t>(index)] = std::move(result);
}

}  // namespace proofstand::rules

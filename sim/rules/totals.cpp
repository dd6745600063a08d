// Points earned, judged and declared, and what they come to. Skipping half of the job cannot raise a percentage: what
// was not judged stays in the coverage.
#include "sim/rules/verdicts.h"

namespace proofstand::rules {
namespace {

void count_points(const Rule& rule, RuleResult& result) {
  switch (result.verdict) {
    case Verdict::Pass:
    case Verdict::Partial:
    case Verdict::Fail:
      result.counting = Counting::Judged;
      result.earned_milli = (rule.points_milli * result.score_milli + 500) / 1000;
      break;
    case Verdict::Excused:
      result.counting = Counting::Covered;
      break;
    case Verdict::Unjudged:
      result.counting = Counting::Left;
      break;
    case Verdict::NotApplicable:
      result.counting = rule.idle == IdlePolicy::Exclude ? Counting::Left : Counting::Judged;
      result.earned_milli = rule.idle == IdlePolicy::Pass ? rule.points_milli : 0;
      break;
  }
}

void add_points(const RuleResult& result, Totals& totals) {
  totals.declared_milli += result.points_milli;
  if (result.counting == Counting::Left) return;
  totals.covered_milli += result.points_milli;
  if (result.counting == Counting::Covered) return;
  totals.judged_milli += result.points_milli;
  totals.earned_milli += result.earned_milli;
}

void decide(Report& report, Overall overall, OverallReason reason, RuleIndex rule = kNoRule) {
  report.overall = overall;
  report.reason = reason;
  report.deciding_rule = rule;
}

RuleIndex first_critical(const RuleProgram& program, const Report& report, Verdict verdict) {
  for (const RuleResult& result : report.rules) {
    const Rule& rule = program.rules[static_cast<std::size_t>(result.rule)];
    const bool idle_lost =
        verdict == Verdict::Fail && result.verdict == Verdict::NotApplicable && rule.idle == IdlePolicy::Fail;
    if (rule.severity == Severity::Critical && (result.verdict == verdict || idle_lost)) return result.rule;
  }
  return kNoRule;
}

}  // namespace

void add_up(const RuleProgram& program, Report& report) {
  report.competences.clear();
  for (const MarksSpec::Competence& row : program.marks.competences) report.competences.push_back({row.name.text, {}});
  for (RuleResult& result : report.rules) {
    const Rule& rule = program.rules[static_cast<std::size_t>(result.rule)];
    count_points(rule, result);
    add_points(result, report.totals);
    if (rule.competence >= 0) {
      add_points(result, report.competences[static_cast<std::size_t>(rule.competence)].totals);
    }
  }
  const RuleIndex failed = first_critical(program, report, Verdict::Fail);
  const RuleIndex unjudged = first_critical(program, report, Verdict::Unjudged);
  const bool covered = report.totals.coverage_milli() >= program.marks.min_coverage_milli;
  // what hurt someone counts, however the run ended; then come the reasons not to judge at all
  if (failed != kNoRule) {
    decide(report, Overall::NotYet, OverallReason::CriticalFailed, failed);
  } else if (report.end == event::EndReason::Aborted) {
    decide(report, Overall::NotJudged, OverallReason::CutOff);
  } else if (unjudged != kNoRule) {
    decide(report, Overall::NotJudged, OverallReason::CriticalUnjudged, unjudged);
  } else if (!covered) {
    decide(report, Overall::NotJudged, OverallReason::LittleSeen);
  } else if (report.totals.share_milli() >= program.marks.pass_mark_milli) {
    decide(report, Overall::Passed, OverallReason::ReachedPassMark);
  } else {
    decide(report, Overall::NotYet, OverallReason::BelowPassMark);
  }
}

}  // namespace proofstand::rules

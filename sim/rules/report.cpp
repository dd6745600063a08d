#include "sim/rules/report.h"

namespace proofstand::rules {

std::string_view verdict_word(Verdict verdict) {
  switch (verdict) {
    case Verdict::Pass:
      return "pass";
    case Verdict::Partial:
      return "partial";
    case Verdict::Fail:
      return "fail";
    case Verdict::NotApplicable:
      return "not-applicable";
    case Verdict::Excused:
      return "excused";
    case Verdict::Unjudged:
      return "unjudged";
  }
  return "";
}

std::string_view idle_word(IdleReason reason) {
  switch (reason) {
    case IdleReason::None:
      return "";
    case IdleReason::OpenerNeverCame:
      return "opener-never-came";
    case IdleReason::TriggerNeverCame:
      return "trigger-never-came";
    case IdleReason::CloserNeverCame:
      return "closer-never-came";
    case IdleReason::ChildrenIdle:
      return "children-idle";
  }
  return "";
}

std::string_view overall_word(Overall overall) {
  switch (overall) {
    case Overall::Passed:
      return "passed";
    case Overall::NotYet:
      return "not-yet";
    case Overall::NotJudged:
      return "not-judged";
  }
  return "";
}

std::string_view overall_reason_word(OverallReason reason) {
  switch (reason) {
    case OverallReason::ReachedPassMark:
      return "reached-pass-mark";
    case OverallReason::BelowPassMark:
      return "below-pass-mark";
    case OverallReason::CriticalFailed:
      return "critical-failed";
    case OverallReason::LittleSeen:
      return "little-seen";
    case OverallReason::CutOff:
      return "cut-off";
    case OverallReason::CriticalUnjudged:
      return "critical-unjudged";
  }
  return "";
}

std::int32_t Totals::coverage_milli() const {
  if (declared_milli <= 0) return 1000;
  return static_cast<std::int32_t>(covered_milli * 1000 / declared_milli);
}

std::int32_t Totals::share_milli() const {
  if (judged_milli <= 0) return 1000;
  return static_cast<std::int32_t>(earned_milli * 1000 / judged_milli);
}

}  // namespace proofstand::rules

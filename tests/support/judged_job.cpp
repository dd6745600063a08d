#include "tests/support/judged_job.h"

#include "sim/base/number_text.h"
#include "sim/base/quantity.h"
#include "sim/rules/compile.h"

namespace proofstand::testing {
namespace {

// a bound that is not there is the largest double there is
std::string bound_words(double value_si, base::Dimension dimension) {
  const bool none = value_si > 1e300 || value_si < -1e300;
  return none ? std::string("any") : base::quantity_words(value_si, dimension);
}

std::string why_of(const rules::RuleResult& result) {
  if (result.bad_cases.empty()) return std::string(rules::verdict_word(result.verdict));
  const rules::Case& bad = result.bad_cases.front();
  std::string text(rules::reason_word(bad.reason));
  if (bad.has_figures) {
    text += " (" + bound_words(bad.found_si, bad.dimension) + " where " + bound_words(bad.lo_si, bad.dimension) +
            " to " + bound_words(bad.hi_si, bad.dimension) + ")";
  }
  if (bad.anchor_tick != rules::kNoTick) text += " at " + base::text_fixed(base::seconds(bad.anchor_tick), 1) + " s";
  return text;
}

}  // namespace

std::vector<FoundRule> JudgedJob::found() const {
  std::vector<FoundRule> list;
  for (const rules::RuleResult& result : report.rules) {
    const rules::RuleSpec& spec = program.specs[static_cast<std::size_t>(result.rule)];
    const bool kept = result.verdict == rules::Verdict::Pass || result.verdict == rules::Verdict::NotApplicable ||
                      result.verdict == rules::Verdict::Excused;
    // a rule inside of a composite speaks through it
    if (kept || !spec.competence.given()) continue;
    list.push_back({spec.id.text, result.verdict, why_of(result)});
  }
  return list;
}

bool JudgedJob::full_marks() const {
  return work.finished && found().empty() && report.overall == rules::Overall::Passed &&
         report.totals.earned_milli == report.totals.judged_milli;
}

JudgedJob judge_job(std::string_view script, const scenario::DrawnScenario& scenario, const hand::HandSkill& skill,
                    std::uint64_t hand_seed) {
  rules::Compiled compiled = rules::compile_rules(scenario::compile_input(scenario));
  STAND_ASSERT(compiled.program.has_value());
  JudgedJob job{work_job(script, scenario.setup, skill, hand_seed), std::move(*compiled.program), {}};
  event::Trace trace;
  trace.records = job.work.bench.events();
  trace.end_tick = job.work.bench.tick();
  trace.end = job.work.bench.over() ? job.work.bench.end_reason() : event::EndReason::Aborted;
  job.report = rules::judge(job.program, trace);
  return job;
}

}  // namespace proofstand::testing

// Danger: skipping half of the job raises the percentage, one omission costs twice, or a run that was cut off is
// marked.
#include "tests/support/catch.h"
#include "tests/support/rules_toy.h"

namespace proofstand::testing {
namespace {

rules::RuleSpec simple(const char* kind, const char* id, const char* x, std::int64_t points_milli) {
  rules::RuleSpec spec = rule(kind, id);
  spec.x = on(x);
  spec.points_milli = points_milli;
  return spec;
}

rules::RuleSpec needs(const char* id, const char* x, const char* y) {
  rules::RuleSpec spec = simple("needs", id, x, 1000);
  spec.y = on(y);
  return spec;
}

rules::Report report_of(std::vector<rules::RuleSpec> specs, const std::string& trace,
                        event::EndReason end = event::EndReason::Finished) {
  event::Trace run = toy_trace(trace);
  run.end = end;
  return rules::judge(compiled(std::move(specs)), run);
}

}  // namespace

TEST_CASE("points of rules without a chance leave the percentage but not the coverage") {
  const rules::Report report = report_of({simple("must", "a", "A", 1000), needs("b", "T", "R")}, "1:A 5");
  CHECK(report.rules[1].verdict == rules::Verdict::NotApplicable);
  CHECK(report.rules[1].idle_reason == rules::IdleReason::TriggerNeverCame);
  CHECK(report.totals.earned_milli == 1000);
  CHECK(report.totals.judged_milli == 1000);
  CHECK(report.totals.declared_milli == 2000);
  CHECK(report.totals.coverage_milli() == 500);
  CHECK(report.overall == rules::Overall::NotJudged);
  CHECK(report.reason == rules::OverallReason::LittleSeen);
}

TEST_CASE("an idle rule counts as its scenario says") {
  rules::RuleSpec idle = needs("b", "T", "R");
  idle.idle = at("fail");
  const rules::Report report = report_of({simple("must", "a", "A", 1000), idle}, "1:A 5");
  CHECK(report.totals.judged_milli == 2000);
  CHECK(report.overall == rules::Overall::NotYet);
}

TEST_CASE("a share of the cases gives a share of the points, rounded once and never up to full") {
  const rules::Report report = report_of({needs("b", "T", "R")}, "1:T 2:R 3:T 4:T 9");
  CHECK(report.rules[0].score_milli == 667);
  CHECK(report.rules[0].verdict == rules::Verdict::Partial);
  CHECK(report.rules[0].earned_milli == 667);
  std::string many = "1:T 2:R";
  for (int i = 3; i < 3000; ++i) many += " " + std::to_string(i) + ":T";
  CHECK(report_of({needs("b", "T", "R")}, many).rules[0].score_milli == 999);
}

TEST_CASE("a lost critical rule is decisive whatever the points say") {
  rules::RuleSpec critical = simple("never", "c", "D", 10);
  critical.severity = at("critical");
  const rules::Report report = report_of({simple("must", "a", "A", 9000), critical}, "1:A 2:D 5");
  CHECK(report.totals.share_milli() > 900);
  CHECK(report.overall == rules::Overall::NotYet);
  CHECK(report.reason == rules::OverallReason::CriticalFailed);
  CHECK(report.deciding_rule == 1);
}

TEST_CASE("what another rule's loss explains is excused, and counts as seen") {
  rules::RuleSpec tool = simple("never", "tool", "W", 1000);
  rules::RuleSpec torque = simple("measure", "torque", "T", 1000);
  torque.value = at("value");
  torque.range = at("4..6");
  torque.after_failure_of = {at("tool")};
  const rules::Report excused = report_of({tool, torque}, "1:W 2:T=9 5");
  CHECK(excused.rules[1].verdict == rules::Verdict::Excused);
  CHECK(excused.rules[1].excused_by == 0);
  CHECK(excused.totals.covered_milli == 2000);
  CHECK(excused.totals.judged_milli == 1000);
  const rules::Report not_excused = report_of({tool, torque}, "1:T=9 2:W 5");
  CHECK(not_excused.rules[1].verdict == rules::Verdict::Fail);
}

TEST_CASE("an omission excuses what follows from it, although it is only certain at the end") {
  rules::RuleSpec locker = simple("must", "locker", "L", 1000);
  rules::RuleSpec before = needs("before", "T", "L");
  before.after_failure_of = {at("locker")};
  CHECK(report_of({locker, before}, "1:T 5").rules[1].verdict == rules::Verdict::Excused);
}

TEST_CASE("a run that was cut off is not the trainee's fault") {
  rules::RuleSpec leads = simple("leads", "b", "S", 1000);
  leads.y = on("P");
  leads.within = at("5 s");
  const rules::Report cut = report_of({simple("must", "a", "A", 1000), leads}, "1:S 4", event::EndReason::Aborted);
  CHECK(cut.rules[0].verdict == rules::Verdict::Unjudged);
  CHECK(cut.rules[1].verdict == rules::Verdict::Unjudged);
  CHECK(cut.overall == rules::Overall::NotJudged);
  CHECK(cut.reason == rules::OverallReason::CutOff);
  // its time was up before the end: that was seen
  CHECK(report_of({leads}, "1:S 9", event::EndReason::Aborted).rules[0].verdict == rules::Verdict::Fail);
  CHECK(report_of({leads}, "1:S 4", event::EndReason::Timeout).rules[0].verdict == rules::Verdict::Fail);
}

TEST_CASE("a scope that must come and does not is a failure, otherwise it is not applicable") {
  rules::RuleSpec never = simple("never", "n", "X", 1000);
  never.scope = scope("after_first", on("W"));
  CHECK(report_of({never}, "1:X 5").rules[0].idle_reason == rules::IdleReason::OpenerNeverCame);
  never.scope.required = true;
  CHECK(report_of({never}, "1:X 5").rules[0].verdict == rules::Verdict::Fail);
  never.scope = scope("before_first", {}, on("W"));
  CHECK(report_of({never}, "1:X 5").rules[0].idle_reason == rules::IdleReason::CloserNeverCame);
}

TEST_CASE("a value that was not known makes a rule unjudged, never lost") {
  rules::RuleSpec measure = simple("measure", "m", "T", 1000);
  measure.value = at("value");
  measure.range = at("4..6");
  event::Trace run = toy_trace("1:T=5 2:T=5 9");
  run.records[1].unknown = 1u << 1;
  CHECK(rules::judge(compiled({measure}), run).rules[0].verdict == rules::Verdict::Unjudged);
  rules::RuleSpec never = simple("never", "n", "T", 1000);
  never.x.where = at("value > 7");
  CHECK(rules::judge(compiled({never}), run).rules[0].verdict == rules::Verdict::Unjudged);
  run.records[0].values[1] = 8.0;
  CHECK(rules::judge(compiled({never}), run).rules[0].verdict == rules::Verdict::Fail);
}

TEST_CASE("composites join what is known and leave out what had no chance") {
  const auto verdict = [](const char* kind, int number, const std::string& trace) {
    std::vector<rules::RuleSpec> specs = {simple("must", "a", "A", 0), simple("must", "b", "B", 0),
                                          needs("c", "T", "R")};
    specs[2].points_milli = 0;
    rules::RuleSpec joint = rule(kind, "all");
    joint.children = {at("a"), at("b"), at("c")};
    joint.number = number;
    specs.push_back(joint);
    const rules::Report report = report_of(specs, trace);
    return std::string(rules::verdict_word(report.rules[3].verdict));
  };
  CHECK(verdict("any_of", 0, "1:A 5") == "pass");
  CHECK(verdict("any_of", 0, "5") == "fail");
  CHECK(verdict("all_of", 0, "1:A 5") == "fail");
  CHECK(verdict("all_of", 0, "1:A 2:B 5") == "pass");
  CHECK(verdict("all_of", 0, "1:A 2:B 3:T 5") == "fail");
  CHECK(verdict("at_least", 2, "1:A 2:B 3:T 5") == "pass");
  CHECK(verdict("at_least", 3, "1:A 2:B 3:T 5") == "fail");
}

TEST_CASE("a rule may ask something else of every round") {
  rules::RuleSpec rounds = simple("rounds", "turns", "T", 1000);
  rounds.over = at("ring");
  rounds.pattern = at("any");
  rounds.passes = 2;
  rules::RuleSpec half = simple("measure", "half", "T", 1000);
  half.value = at("value");
  half.range = at("2..3");
  half.scope = scope("until_first", {}, on("pass_done", "rule == turns and index == 1"));
  rules::RuleSpec full = half;
  full.id = at("full");
  full.range = at("5..6");
  full.scope = scope("after_first", on("pass_done", "rule == turns and index == 1"));
  const rules::RuleProgram program = compiled({rounds, half, full}, 2);
  const rules::Report report = rules::judge(program, toy_trace("1:T#0=2 2:T#1=3 3:T#1=5 4:T#0=4 9"));
  CHECK(case_words(report.rules[1]) == "0:ok, 1:ok");
  CHECK(case_words(report.rules[2]) == "2:ok, 3:bad");
}

TEST_CASE("part marks fall off with the distance as the bands say") {
  rules::RuleSpec measure = simple("measure", "m", "T", 1000);
  measure.value = at("value");
  measure.range = at("10..20");
  measure.bands = {{at("2"), 500}, {at("4"), 0}};
  const auto score = [&](const std::string& trace) { return report_of({measure}, trace).rules[0].score_milli; };
  CHECK(score("1:T=20 5") == 1000);
  CHECK(score("1:T=21 5") == 750);
  CHECK(score("1:T=22 5") == 500);
  CHECK(score("1:T=7 5") == 250);
  CHECK(score("1:T=30 5") == 0);
}

TEST_CASE("a critical rule with stop asks to end the run at its moment") {
  rules::RuleSpec stop = simple("keep", "s", "", 1000);
  stop.x = {};
  stop.condition = at("phi");
  stop.budget = at("3 s");
  stop.severity = at("critical");
  stop.stop = true;
  const rules::RuleProgram program = compiled({stop});
  rules::EngineState state = rules::start(program);
  for (const event::Record& record : toy_trace("0:S1 5:S0").records) rules::feed(program, state, record);
  rules::advance(program, state, 8);
  CHECK(!rules::stop_asked(program, state));
  rules::advance(program, state, 9);
  REQUIRE(rules::stop_asked(program, state));
  CHECK(rules::stop_asked(program, state)->tick == 9);
}

}  // namespace proofstand::testing

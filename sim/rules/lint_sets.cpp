// Rules beside each other: doing nothing, double penalties, one rule inside another, one rule that is everything.
#include "sim/rules/engine.h"
#include "sim/rules/lint_parts.h"
#include "sim/rules/satisfiable.h"

namespace proofstand::rules {
namespace {

bool same_selector(const RuleProgram& program, const Selector& a, const Selector& b) {
  if (!a.given() || !b.given()) return a.given() == b.given();
  return always_matches(program, a, b) && always_matches(program, b, a);
}

bool same_scope(const RuleProgram& program, const Rule& a, const Rule& b) {
  return a.form == b.form && same_selector(program, a.open, b.open) && same_selector(program, a.close, b.close);
}

bool knows(const Rule& rule, RuleIndex other) {
  for (RuleIndex excuse : rule.after_failure_of) {
    if (excuse == other) return true;
  }
  return false;
}

// an x is asked for somewhere in the same stretches
bool asks_for(const Rule& rule) {
  return rule.kind == RuleKind::Must || (rule.kind == RuleKind::Count && rule.count_lo > 0 && rule.distinct < 0);
}

void lint_pair(Findings& findings, RuleIndex i, RuleIndex j) {
  const RuleProgram& program = findings.program();
  const Rule& a = program.rules[static_cast<std::size_t>(i)];
  const Rule& b = program.rules[static_cast<std::size_t>(j)];
  if (a.x.kind != b.x.kind || !a.x.given()) return;
  const SourcePos& at = program.specs[static_cast<std::size_t>(j)].id.at;
  if (asks_for(a) && b.kind == RuleKind::Never && b.severity == Severity::Critical && a.form == ScopeForm::Run &&
      b.form == ScopeForm::Run && always_matches(program, a.x, b.x)) {
    findings.error("E26", at, "doing what " + findings.name(i) + " asks for loses the critical " + findings.name(j),
                   "narrow one of them so that both can be kept");
  }
  if (i >= j || !same_scope(program, a, b) || !same_selector(program, a.x, b.x)) return;
  const bool excused = knows(a, j) || knows(b, i);
  const bool twins = a.kind == b.kind && same_selector(program, a.y, b.y) &&
                     same_selector(program, a.voided_by, b.voided_by) && a.within == b.within && a.gap == b.gap &&
                     a.same_x == b.same_x && a.fresh == b.fresh && a.count_lo == b.count_lo &&
                     a.count_hi == b.count_hi && a.distinct == b.distinct && a.kind != RuleKind::Measure &&
                     a.kind != RuleKind::Rounds && a.condition == b.condition;
  if (twins && !excused) {
    findings.warning(j, "W10", at, findings.name(i) + " and " + findings.name(j) + " always fail together",
                     "leave one out, or write after_failure_of = [\"" + program.id_of(i) + "\"]");
    return;
  }
  if (asks_for(a) && asks_for(b) && a.count_lo != b.count_lo && !excused && (a.count_hi < 0 || b.count_hi < 0)) {
    const RuleIndex weaker = a.count_lo < b.count_lo ? i : j;
    const RuleIndex stronger = weaker == i ? j : i;
    const Rule& weak = program.rules[static_cast<std::size_t>(weaker)];
    if (weak.count_hi >= 0) return;
    findings.warning(weaker, "W11", program.specs[static_cast<std::size_t>(weaker)].id.at,
                     findings.name(weaker) + " is kept whenever " + findings.name(stronger) + " is",
                     "leave it out, or silence W11 with a reason");
  }
}

void lint_empty_run(Findings& findings) {
  const RuleProgram& program = findings.program();
  std::int64_t declared_milli = 0;
  for (const Rule& rule : program.rules) declared_milli += rule.points_milli;
  if (declared_milli == 0) return;
  event::Trace nothing;
  nothing.ticks_per_s = program.ticks_per_s;
  nothing.end_tick = 1;
  const Report report = judge(program, nothing);
  if (report.overall != Overall::Passed) return;
  findings.error("E25", program.marks.at, "doing nothing at all passes",
                 "ask for the work itself: add rules of kind must, count or rounds, or raise the least coverage");
}

}  // namespace

void lint_sets(Findings& findings) {
  const RuleProgram& program = findings.program();
  const auto n = static_cast<RuleIndex>(program.rules.size());
  std::int64_t sum_milli = 0;
  for (const Rule& rule : program.rules) sum_milli += rule.points_milli;
  for (RuleIndex i = 0; i < n; ++i) {
    const Rule& rule = program.rules[static_cast<std::size_t>(i)];
    const RuleSpec& spec = program.specs[static_cast<std::size_t>(i)];
    // with a handful of rules every one has a large part
    if (n > 4 && rule.points_milli * 4 > sum_milli) {
      findings.warning(i, "W17", spec.points_at.line > 0 ? spec.points_at : spec.id.at,
                       findings.name(i) + " has more than a quarter of all points", "share them out, or silence W17");
    }
    for (RuleIndex j = 0; j < n; ++j) {
      if (i != j) lint_pair(findings, i, j);
    }
  }
  lint_empty_run(findings);
}

}  // namespace proofstand::rules

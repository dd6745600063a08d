// Rules that can never have a case, never be kept or never be lost, and chances that may silently stay away.
#include <algorithm>

#include "sim/rules/lint_parts.h"
#include "sim/rules/satisfiable.h"

namespace proofstand::rules {
namespace {

// every x is itself a delimiter, and delimiters are outside of the stretch
bool x_always_outside(const RuleProgram& program, const Rule& rule) {
  const bool closes = rule.close.given() && always_matches(program, rule.x, rule.close);
  const bool opens = rule.form == ScopeForm::AfterLast && always_matches(program, rule.x, rule.open);
  return rule.x.given() && (closes || opens);
}

bool is_conditional(const Rule& rule) {
  switch (rule.kind) {
    case RuleKind::Needs:
    case RuleKind::Leads:
    case RuleKind::Steady:
    case RuleKind::Measure:
    case RuleKind::Within:
      return true;
    default:
      return rule.kind == RuleKind::Rounds && rule.if_any;
  }
}

// does some other rule ask for a record that this one would see?
bool is_forced(const RuleProgram& program, const Selector& x) {
  return std::any_of(program.rules.begin(), program.rules.end(), [&](const Rule& other) {
    const bool asks = other.kind == RuleKind::Must || (other.kind == RuleKind::Count && other.count_lo > 0) ||
                      (other.kind == RuleKind::Rounds && !other.if_any);
    const bool whole = other.form == ScopeForm::Run || other.required;
    if (asks && whole && always_matches(program, other.x, x)) return true;
    return other.kind == RuleKind::Order && !other.first && whole &&
           std::any_of(other.steps.begin(), other.steps.end(),
                       [&](const Selector& step) { return always_matches(program, step, x); });
  });
}

void lint_condition(Findings& findings, RuleIndex index, const Rule& rule, const RuleSpec& spec) {
  const RuleProgram& program = findings.program();
  if (rule.condition < 0) return;
  const bool holds = rule.kind != RuleKind::Keep;
  if (!can_be(program, rule.condition, Truth::Yes)) {
    findings.error("E21", spec.condition.at,
                   findings.name(index) + " can never pass: '" + spec.condition.text + "' is never true",
                   "loosen the condition");
  } else if (!holds && !can_be(program, rule.condition, Truth::No)) {
    findings.error("E22", spec.condition.at,
                   findings.name(index) + " can never fail: '" + spec.condition.text + "' is always true",
                   "name what must be kept, or leave the rule out");
  }
}

void lint_outcome(Findings& findings, RuleIndex index, const Rule& rule, const RuleSpec& spec) {
  const RuleProgram& program = findings.program();
  if (x_always_outside(program, rule)) {
    const bool asks = rule.kind == RuleKind::Must || (rule.kind == RuleKind::Count && rule.count_lo > 0) ||
                      (rule.kind == RuleKind::Rounds && !rule.if_any);
    const bool counts = rule.kind == RuleKind::Never || rule.kind == RuleKind::Count;
    const std::string why = ": every '" + spec.x.event.text + "' it looks for begins or ends its own stretch";
    const char* code = asks ? "E21" : (counts ? "E22" : "E20");
    const char* fate = asks ? " can never pass" : (counts ? " can never fail" : " never has a chance");
    findings.error(code, spec.x.event.at, findings.name(index) + fate + why, "choose another scope or another event");
  }
  if (rule.kind == RuleKind::Count && rule.count_lo == 0 && rule.count_hi < 0) {
    findings.error("E22", spec.range.at, findings.name(index) + " can never fail: any number will do",
                   "write a bound above 0");
  }
  if (rule.kind == RuleKind::Count && rule.distinct >= 0 && rule.set_size > 0 && rule.count_lo > rule.set_size) {
    findings.error("E21", spec.range.at,
                   findings.name(index) + " can never pass: there are not so many " + spec.distinct.text,
                   "ask for no more than there are");
  }
  lint_condition(findings, index, rule, spec);
  if (rule.kind != RuleKind::Measure || rule.value < 0) return;
  const Expression& value = program.expressions[static_cast<std::size_t>(rule.value)];
  if (value.code.size() != 1 || value.code[0].op != Op::Field) return;
  const event::Field& field = program.vocabulary.kinds[rule.x.kind].fields[value.code[0].index];
  if (!(field.lo_si < field.hi_si)) return;
  const auto fixed = [&](std::int32_t bound, double open_si) {
    if (bound < 0) return open_si;
    const Expression& expression = program.expressions[static_cast<std::size_t>(bound)];
    return expression.is_constant() ? expression.code[0].value_si : open_si;
  };
  const bool fixed_lo = rule.range_lo < 0 || program.expressions[static_cast<std::size_t>(rule.range_lo)].is_constant();
  const bool fixed_hi = rule.range_hi < 0 || program.expressions[static_cast<std::size_t>(rule.range_hi)].is_constant();
  if (fixed_lo && fixed_hi && fixed(rule.range_lo, field.lo_si) <= field.lo_si &&
      fixed(rule.range_hi, field.hi_si) >= field.hi_si) {
    findings.error("E22", spec.range.at,
                   findings.name(index) + " can never fail: " + field.name + " is always in this range",
                   "write a narrower range");
  }
}

void lint_scope(Findings& findings, RuleIndex index, const Rule& rule, const RuleSpec& spec, bool& told) {
  if (told || !rule.close.given()) return;
  told = true;
  const bool drops = rule.form == ScopeForm::BeforeFirst || rule.form == ScopeForm::Between;
  const std::string other = rule.form == ScopeForm::BeforeFirst  ? "until_first"
                            : rule.form == ScopeForm::UntilFirst ? "before_first"
                            : rule.form == ScopeForm::Between    ? "from_to"
                                                                 : "between";
  findings.warning(index, "W13", spec.scope.form.at,
                   spec.scope.form.text + ": when '" + spec.scope.b.event.text + "' never comes, the stretch " +
                       (drops ? "does not count" : "runs to the end and counts"),
                   "if the other is meant, write " + other + "; silence W13 with a reason");
}

}  // namespace

void lint_chances(Findings& findings) {
  const RuleProgram& program = findings.program();
  bool told[7] = {};
  for (std::size_t i = 0; i < program.rules.size(); ++i) {
    const auto index = static_cast<RuleIndex>(i);
    const Rule& rule = program.rules[i];
    const RuleSpec& spec = program.specs[i];
    lint_outcome(findings, index, rule, spec);
    lint_scope(findings, index, rule, spec, told[static_cast<std::size_t>(rule.form)]);
    const bool heavy = rule.severity == Severity::Critical || rule.severity == Severity::Major;
    if (heavy && is_conditional(rule) && rule.idle != IdlePolicy::Fail && !is_forced(program, rule.x)) {
      findings.warning(index, "W12", spec.id.at,
                       findings.name(index) + " says nothing when no '" + spec.x.event.text + "' happens",
                       "add a rule that asks for it (must or count), use idle = fail, or silence W12 with a reason");
    }
    if (rule.within == 0 &&
        (rule.kind == RuleKind::Leads || rule.kind == RuleKind::Needs || rule.kind == RuleKind::Within)) {
      findings.warning(index, "W15", spec.within.at,
                       findings.name(index) + " allows no time at all: both must happen at one tick",
                       "write a time that a hand can keep");
    }
  }
}

}  // namespace proofstand::rules

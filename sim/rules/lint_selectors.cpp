// Selectors that nothing matches, that overlap where order matters, or that wait for what this bench never makes.
#include "sim/rules/lint_parts.h"
#include "sim/rules/satisfiable.h"

namespace proofstand::rules {
namespace {

struct Named {
  const Selector* selector;
  const SelectorSpec* spec;
};

std::vector<Named> selectors_of(const Rule& rule, const RuleSpec& spec) {
  std::vector<Named> all = {{&rule.x, &spec.x},
                            {&rule.y, &spec.y},
                            {&rule.voided_by, &spec.voided_by},
                            {&rule.open, &spec.scope.a},
                            {&rule.close, &spec.scope.b}};
  for (std::size_t s = 0; s < rule.steps.size(); ++s) all.push_back({&rule.steps[s], &spec.steps[s]});
  return all;
}

}  // namespace

void lint_selectors(Findings& findings) {
  const RuleProgram& program = findings.program();
  for (std::size_t i = 0; i < program.rules.size(); ++i) {
    const auto index = static_cast<RuleIndex>(i);
    const Rule& rule = program.rules[i];
    const RuleSpec& spec = program.specs[i];
    for (const Named& named : selectors_of(rule, spec)) {
      if (!named.selector->given()) continue;
      if (named.selector->where >= 0 && !can_match(program, *named.selector)) {
        findings.error("E11", named.spec->where.at,
                       "nothing can match '" + named.spec->where.text + "' in rule " + findings.name(index),
                       "loosen the condition: the words and ranges of " + named.spec->event.text + " never fit it");
      }
      if (program.vocabulary.kinds[named.selector->kind].later) {
        findings.warning(index, "W16", named.spec->event.at,
                         "this bench does not make '" + named.spec->event.text + "' yet, so rule " +
                             findings.name(index) + " will not see it",
                         "use an event of this job's stages, or silence W16 with a reason");
      }
    }
    const bool pair = rule.kind == RuleKind::Needs || rule.kind == RuleKind::Leads;
    if (pair && can_match_both(program, rule.x, rule.y)) {
      findings.warning(index, "W14", spec.y.event.at,
                       "one record can be both x and y of " + findings.name(index) + "; it never serves itself",
                       "tell x and y apart in their conditions, or silence W14 with a reason");
    }
  }
}

}  // namespace proofstand::rules

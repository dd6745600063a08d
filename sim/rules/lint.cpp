#include "sim/rules/lint.h"

#include "sim/rules/lint_parts.h"
#include "sim/rules/tokens.h"

namespace proofstand::rules {

void Findings::error(std::string code, const SourcePos& at, std::string what, std::string instead) {
  faults_.add({std::move(code), place_words(at), std::move(what), std::move(instead)});
}

void Findings::warning(RuleIndex rule, std::string code, const SourcePos& at, std::string what, std::string instead) {
  // "W12 the bolt is always there": the code, then the author's reason, without which it does not count
  for (const Text& silenced : program_.specs[static_cast<std::size_t>(rule)].silenced) {
    if (silenced.text.rfind(code + " ", 0) == 0) return;
  }
  base::Error found{std::move(code), place_words(at), std::move(what), std::move(instead)};
  found.warning = true;
  faults_.add(std::move(found));
}

std::string Findings::name(RuleIndex rule) const { return "'" + program_.id_of(rule) + "'"; }

base::Faults lint(const RuleProgram& program) {
  base::Faults faults;
  Findings findings(program, faults);
  lint_selectors(findings);
  lint_chances(findings);
  lint_sets(findings);
  return faults;
}

}  // namespace proofstand::rules

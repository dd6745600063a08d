// The checks of lint(), by theme. Private to it.
#pragma once

#include <string>
#include <string_view>

#include "sim/base/result.h"
#include "sim/rules/program.h"

namespace proofstand::rules {

/// Collects what is found; warnings that a rule has silenced are dropped.
class Findings {
 public:
  Findings(const RuleProgram& program, base::Faults& faults) : program_(program), faults_(faults) {}
  void error(std::string code, const SourcePos& at, std::string what, std::string instead);
  void warning(RuleIndex rule, std::string code, const SourcePos& at, std::string what, std::string instead);
  [[nodiscard]] const RuleProgram& program() const { return program_; }
  /// "'id'" of a rule.
  [[nodiscard]] std::string name(RuleIndex rule) const;

 private:
  const RuleProgram& program_;
  base::Faults& faults_;
};

void lint_selectors(Findings& findings);  ///< E11 W14 W16: what can match, and what both match
void lint_chances(Findings& findings);    ///< E20 E21 E22 W12 W13 W15: what a rule can come to
void lint_sets(Findings& findings);       ///< E25 E26 W10 W11 W17: rules beside each other

}  // namespace proofstand::rules

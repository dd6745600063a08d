// From written rules to a program that can judge. All faults are found in one go, each with file, line and column.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "sim/base/result.h"
#include "sim/event/vocabulary.h"
#include "sim/rules/program.h"
#include "sim/rules/spec.h"

namespace proofstand::rules {

/// Everything that gives rules their meaning.
struct CompileInput {
  std::vector<RuleSpec> rules;
  event::Vocabulary vocabulary;
  std::vector<SheetFigure> sheet;
  MarksSpec marks;
  std::vector<std::string> languages;  ///< every rule says why in each of these; empty = texts are optional
  std::int64_t ticks_per_s = base::kTicksPerSecond;
  EvidenceLimit evidence;
};

/// The program, unless a fault forbids it; warnings come along with a program.
struct Compiled {
  std::optional<RuleProgram> program;
  base::Faults faults;  ///< codes E02 .. E35 as far as the text of the rules shows them
};

/// Understands and checks the rules. The texts of faults name what is wrong, what was expected and the nearest right
/// word. It does not analyse what can happen in a run: see lint.h.
Compiled compile_rules(const CompileInput& input);

}  // namespace proofstand::rules

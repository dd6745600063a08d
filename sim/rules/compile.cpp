#include "sim/rules/compile.h"

#include <algorithm>

#include "sim/rules/draft.h"

namespace proofstand::rules {
namespace {

// rounds rules make records of their own; they join the vocabulary so that selectors treat them like any other
void add_pass_done(RuleProgram& program) {
  event::Kind kind;
  kind.name = "pass_done";
  kind.what = "a rule of kind rounds has seen every item once more";
  event::Field rule;
  rule.name = "rule";
  rule.type = event::FieldType::Choice;
  for (const RuleSpec& spec : program.specs) {
    if (spec.kind.text == "rounds") rule.choices.push_back(spec.id.text);
  }
  if (rule.choices.empty() || program.vocabulary.find_kind(kind.name)) return;
  event::Field index;
  index.name = "index";
  index.type = event::FieldType::Count;
  index.lo_si = 1.0;
  index.hi_si = 1e6;
  kind.fields = {std::move(rule), std::move(index)};
  program.pass_done = static_cast<event::KindId>(program.vocabulary.kinds.size());
  program.vocabulary.kinds.push_back(std::move(kind));
}

void check_ids(const Draft& draft) {
  std::vector<const Text*> sorted;
  for (const RuleSpec& spec : draft.program.specs) {
    const std::string& id = spec.id.text;
    const bool clean = std::all_of(id.begin(), id.end(), [](char c) {
      return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9') || c == '-' || c == '_';
    });
    if (id.empty() || !clean) {
      draft.fault("E03", spec.id.at, "'" + id + "' cannot name a rule", "use letters, digits and hyphens");
    }
    sorted.push_back(&spec.id);
  }
  std::stable_sort(sorted.begin(), sorted.end(), [](const Text* a, const Text* b) { return a->text < b->text; });
  for (std::size_t i = 1; i < sorted.size(); ++i) {
    if (sorted[i]->text != sorted[i - 1]->text || sorted[i]->text.empty()) continue;
    draft.fault("E03", sorted[i]->at, "a second rule is called '" + sorted[i]->text + "'", "give it a name of its own");
  }
}

// indices into the state's arrays, one array for each way of remembering
void give_slots(RuleProgram& program) {
  std::int32_t next[8] = {};
  for (Rule& rule : program.rules) {
    switch (rule.kind) {
      case RuleKind::Must:
      case RuleKind::Never:
      case RuleKind::Count:
        rule.slot = next[0]++;
        break;
      case RuleKind::Needs:
        rule.slot = next[1]++;
        break;
      case RuleKind::Leads:
        rule.slot = next[2]++;
        break;
      case RuleKind::Order:
        rule.slot = next[3]++;
        break;
      case RuleKind::Hold:
      case RuleKind::Steady:
      case RuleKind::Keep:
        rule.slot = next[4]++;
        break;
      case RuleKind::Measure:
        rule.slot = next[5]++;
        break;
      case RuleKind::Rounds:
        rule.slot = next[6]++;
        break;
      case RuleKind::Within:
      case RuleKind::Recur:
        rule.slot = next[7]++;
        break;
      case RuleKind::AnyOf:
      case RuleKind::AllOf:
      case RuleKind::AtLeast:
        break;
    }
  }
}

}  // namespace

Compiled compile_rules(const CompileInput& input) {
  Compiled out;
  RuleProgram program;
  program.specs = input.rules;
  program.vocabulary = input.vocabulary;
  program.sheet = input.sheet;
  program.marks = input.marks;
  program.ticks_per_s = input.ticks_per_s;
  program.evidence = input.evidence;
  const Draft draft{input, program, out.faults};
  add_pass_done(program);
  check_ids(draft);
  program.rules.resize(program.specs.size());
  for (std::size_t i = 0; i < program.specs.size(); ++i) compile_rule(draft, program.specs[i], program.rules[i]);
  compile_links(draft);
  check_points(draft);
  program.texts.resize(program.rules.size());
  if (!out.faults.any_error()) compile_texts(draft);
  if (out.faults.any_error()) return out;
  give_slots(program);
  build_dispatch(program);
  out.program = std::move(program);
  return out;
}

}  // namespace proofstand::rules

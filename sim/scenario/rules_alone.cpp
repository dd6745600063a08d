#include "sim/scenario/rules_alone.h"

#include <algorithm>

#include "sim/scenario/read_papers.h"
#include "sim/scenario/read_rules.h"
#include "sim/scenario/source_files.h"

namespace proofstand::scenario {
namespace {

rules::MarksSpec marks_of(const std::vector<rules::RuleSpec>& specs) {
  rules::MarksSpec marks;
  for (const rules::RuleSpec& spec : specs) {
    if (!spec.competence.given()) continue;
    const bool there = std::any_of(marks.competences.begin(), marks.competences.end(), [&](const auto& competence) {
      return competence.name.text == spec.competence.text;
    });
    if (!there) marks.competences.push_back({spec.competence, std::nullopt, spec.competence.at});
  }
  return marks;
}

}  // namespace

RulesAlone load_rules_alone(const std::string& path) {
  RulesAlone out;
  const SourceTree tree = load_source_tree(path, out.faults);
  if (!tree.complete) return out;
  const Reading reading{&tree.names, &out.faults};
  const Node* rules = tree.root.find("rule");
  if (rules == nullptr || !rules->is_list()) {
    reading.error("S03", tree.root.at, "there are no rules", "write [[rule]] tables or include shared ones");
    return out;
  }
  ReadRules read = read_rules(reading, *rules);
  out.specs = std::move(read.specs);
  out.lines = std::move(read.lines);
  const Node* marks = tree.root.find("marks");
  out.marks = marks != nullptr && marks->is_table() ? read_marks(reading, *marks) : marks_of(out.specs);
  if (const Node* sheet = tree.root.find("sheet"); sheet != nullptr && sheet->is_table()) {
    NamedParts parts;
    for (const SheetLine& line : read_sheet(reading, *sheet, parts)) {
      rules::SheetFigure figure{line.name, line.value, std::nullopt};
      if (line.tolerance_si > 0.0) figure.tolerance_si = line.tolerance_si;
      out.sheet.push_back(std::move(figure));
    }
  }
  return out;
}

}  // namespace proofstand::scenario

// Points that add up, and none that are given away.
#include "sim/base/number_text.h"
#include "sim/rules/draft.h"

namespace proofstand::rules {
namespace {

std::string points_words(std::int64_t milli) { return base::text_for_people(static_cast<double>(milli) / 1000.0, 9); }

void check_sum(const Draft& draft, std::int64_t declared, std::int64_t found, const SourcePos& at,
               const std::string& whose, const std::string& list) {
  if (declared == found) return;
  draft.fault("E30", at,
              whose + " declares " + points_words(declared) + " points, and its rules have " + points_words(found) +
                  " (" + list + ")",
              declared > found
                  ? "give out " + points_words(declared - found) + " more or declare " + points_words(found)
                  : "take off " + points_words(found - declared) + " or declare " + points_words(found));
}

}  // namespace

void check_points(const Draft& draft) {
  const RuleProgram& program = draft.program;
  const MarksSpec& marks = program.marks;
  std::vector<bool> inside(program.rules.size(), false);
  for (const Rule& rule : program.rules) {
    for (RuleIndex child : rule.children) inside[static_cast<std::size_t>(child)] = true;
  }
  std::int64_t sum = 0;
  std::vector<std::int64_t> sums(marks.competences.size(), 0);
  std::vector<std::string> lists(marks.competences.size());
  std::string list;
  for (std::size_t i = 0; i < program.rules.size(); ++i) {
    const Rule& rule = program.rules[i];
    const RuleSpec& spec = program.specs[i];
    const SourcePos& at = spec.points_at.line > 0 ? spec.points_at : spec.id.at;
    if (rule.points_milli < 0 || rule.points_milli > 1'000'000'000) {
      draft.fault("E32", at, "'" + spec.id.text + "' has impossible points", "give it points above 0");
      continue;
    }
    if (inside[i] && rule.points_milli != 0) {
      draft.fault("E32", at, "'" + spec.id.text + "' is inside of a composite and has points of its own",
                  "leave the points to the composite");
    }
    if (rule.points_milli == 0 && !inside[i] && rule.severity != Severity::Note) {
      draft.fault("E32", at, "'" + spec.id.text + "' has no points", "give it points, or make it a note");
    }
    if (!inside[i] && !marks.competences.empty() && !spec.competence.given()) {
      draft.fault("E02", spec.id.at, "'" + spec.id.text + "' belongs to no competence", "say which one it counts for");
    }
    sum += rule.points_milli;
    const std::string piece = spec.id.text + " " + points_words(rule.points_milli);
    list += (list.empty() ? "" : ", ") + piece;
    if (rule.competence < 0) continue;
    sums[static_cast<std::size_t>(rule.competence)] += rule.points_milli;
    std::string& own = lists[static_cast<std::size_t>(rule.competence)];
    own += (own.empty() ? "" : ", ") + piece;
  }
  if (marks.points_milli) check_sum(draft, *marks.points_milli, sum, marks.at, "the scenario", list);
  for (std::size_t i = 0; i < sums.size(); ++i) {
    const MarksSpec::Competence& row = marks.competences[i];
    if (row.points_milli) check_sum(draft, *row.points_milli, sums[i], row.at, "'" + row.name.text + "'", lists[i]);
  }
  if (marks.pass_mark_milli < 0 || marks.pass_mark_milli > 1000 || marks.min_coverage_milli < 0 ||
      marks.min_coverage_milli > 1000) {
    draft.fault("E30", marks.at, "pass mark and least coverage are shares from 0 to 1", "write such as 0.8");
  }
}

}  // namespace proofstand::rules

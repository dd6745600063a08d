#include <algorithm>

#include "sim/base/number_text.h"
#include "sim/report/catalogue.h"
#include "sim/report/record_fields.h"
#include "sim/report/sheet_parts.h"
#include "sim/rules/text_fill.h"

namespace proofstand::report {
namespace {

using rules::Verdict;

constexpr std::size_t kMostEvidence = 4;
constexpr int kMostFigures = 4;

std::string spaced(std::string name) {
  std::replace(name.begin(), name.end(), '_', ' ');
  return name;
}

// worst first: what decides, then what costs
int rank(const std::string& severity) {
  if (severity == "critical") return 0;
  if (severity == "major") return 1;
  return severity == "minor" ? 2 : 3;
}

std::string title_of(const record::Marking& marking, rules::RuleIndex rule, std::string_view language) {
  const auto index = static_cast<std::size_t>(rule);
  if (index < marking.scenario.rule_lines.size()) {
    const std::string_view title = scenario::text_in(marking.scenario.rule_lines[index].title, language);
    if (!title.empty()) return std::string(title);
  }
  return spaced(marking.program.id_of(rule));
}

// the field whose value the case judged, where it stands in this record
std::optional<std::size_t> figure_of(const event::Kind& kind, const event::Record& record, const rules::Case* proof) {
  if (proof == nullptr || !proof->has_figures) return std::nullopt;
  for (std::size_t f = 0; f < kind.fields.size(); ++f) {
    const bool same =
        record.knows(f) && record.values[f] == proof->found_si && kind.fields[f].dimension == proof->dimension;
    if (same && kind.fields[f].type == event::FieldType::Quantity) return f;
  }
  return std::nullopt;
}

// what the program says where the author gave no sentence
std::string plain_words(const record::Marking& marking, const rules::RuleResult& result, std::string_view language) {
  const std::string title = title_of(marking, result.rule, language);
  if (result.verdict == Verdict::Pass || result.bad_cases.empty()) return title;
  const rules::Case& first = result.bad_cases.front();
  const std::string key = "case." + std::string(rules::reason_word(first.reason));
  if (!has_phrase(key)) return title;
  const std::string found = base::quantity_words(first.found_si, first.dimension);
  const std::string asked =
      base::quantity_words(first.lo_si, first.dimension) + " – " + base::quantity_words(first.hi_si, first.dimension);
  return title + ": " + phrase(key, language, {found, asked});
}

std::vector<EvidenceLine> evidence_of(const record::Marking& marking, const rules::RuleResult& result,
                                      std::string_view language) {
  std::vector<EvidenceLine> lines;
  const auto add = [&](rules::Position position, const rules::Case& proof) {
    const auto at = static_cast<std::size_t>(position);
    if (position < 0 || at >= marking.trace.records.size() || lines.size() >= kMostEvidence) return;
    for (const EvidenceLine& line : lines) {
      if (line.position == at) return;
    }
    const event::Record& record = marking.trace.records[at];
    lines.push_back({record.tick, at, event_words(marking.program.vocabulary, record, &proof, language)});
  };
  const std::vector<rules::Case>& cases = result.bad_cases.empty() ? result.ok_cases : result.bad_cases;
  for (const rules::Case& proof : cases) {
    add(proof.anchor, proof);
    for (const rules::Cite& cite : proof.cites) add(cite.position, proof);
  }
  return lines;
}

std::string aside_words(const record::Marking& marking, const rules::RuleResult& result, std::string_view language) {
  const std::string title = title_of(marking, result.rule, language);
  if (result.verdict == Verdict::Excused && result.excused_by != rules::kNoRule) {
    return title + ": " + phrase("aside.excused", language, {title_of(marking, result.excused_by, language)});
  }
  if (result.verdict == Verdict::Unjudged) return title + ": " + std::string(phrase("aside.unjudged", language));
  const std::string key = "idle." + std::string(rules::idle_word(result.idle_reason));
  return has_phrase(key) ? title + ": " + std::string(phrase(key, language)) : title;
}

FindingLine finding(const record::Marking& marking, const rules::RuleResult& result, std::string_view language) {
  const rules::Rule& rule = marking.program.rules[static_cast<std::size_t>(result.rule)];
  FindingLine line;
  line.rule = marking.program.id_of(result.rule);
  if (rule.competence >= 0) {
    line.competence = marking.program.marks.competences[static_cast<std::size_t>(rule.competence)].name.text;
  }
  line.severity = std::string(rules::severity_words()[static_cast<std::size_t>(rule.severity)]);
  line.verdict = result.verdict;
  line.earned_milli = result.earned_milli;
  line.points_milli = result.points_milli;
  line.what = rules::fill_text(marking.program, marking.report, result.rule, language);
  if (line.what.empty()) line.what = plain_words(marking, result, language);
  // an item's word may stand first: sentences begin with a capital all the same
  if (!line.what.empty() && line.what[0] >= 'a' && line.what[0] <= 'z') {
    line.what[0] = static_cast<char>(line.what[0] - 'a' + 'A');
  }
  const auto index = static_cast<std::size_t>(result.rule);
  if (index < marking.scenario.rule_lines.size()) {
    line.why = std::string(scenario::text_in(marking.scenario.rule_lines[index].why, language));
  }
  line.evidence = evidence_of(marking, result, language);
  return line;
}

}  // namespace

std::string event_words(const event::Vocabulary& vocabulary, const event::Record& record, const rules::Case* proof,
                        std::string_view language) {
  const RecordFields fields(vocabulary, record);
  if (fields.is("refused")) {
    const std::string key = "refusal." + fields.word("why");
    if (has_phrase(key)) return std::string(phrase(key, language));
  }
  const event::Kind& kind = vocabulary.kinds[record.kind];
  std::string out = spaced(kind.name);
  bool first = true;
  const auto put = [&](const std::string& words) {
    out += (first ? ": " : ", ") + words;
    first = false;
  };
  // which things, then what holds, then figures: the one the rule looked at, or the first few that are not nought
  for (std::size_t f = 0; f < kind.fields.size(); ++f) {
    const event::FieldType type = kind.fields[f].type;
    if (!record.knows(f)) continue;
    if (type == event::FieldType::Item || type == event::FieldType::Choice) {
      put(spaced(rules::value_words(vocabulary, record, f)));
    } else if (type == event::FieldType::Flag && record.values[f] != 0.0) {
      put(spaced(kind.fields[f].name));
    }
  }
  const std::optional<std::size_t> looked_at = figure_of(kind, record, proof);
  int shown = 0;
  for (std::size_t f = 0; f < kind.fields.size(); ++f) {
    const event::FieldType type = kind.fields[f].type;
    const bool figure = type == event::FieldType::Quantity || type == event::FieldType::Count;
    if (!figure || !record.knows(f) || (looked_at && f != *looked_at)) continue;
    if (!looked_at && (record.values[f] == 0.0 || ++shown > kMostFigures)) continue;
    put(spaced(kind.fields[f].name) + " " + rules::value_words(vocabulary, record, f));
  }
  return out;
}

void add_findings(MarkSheet& sheet, const record::Marking& marking, std::string_view language) {
  for (const rules::RuleResult& result : marking.report.rules) {
    FindingLine line = finding(marking, result, language);
    const bool full = result.verdict == Verdict::Pass;
    const bool lost = result.verdict == Verdict::Partial || result.verdict == Verdict::Fail;
    if (full) {
      sheet.met.push_back(std::move(line));
    } else if (lost) {
      sheet.lost.push_back(std::move(line));
    } else {
      line.aside = aside_words(marking, result, language);
      sheet.aside.push_back(std::move(line));
    }
  }
  std::stable_sort(sheet.lost.begin(), sheet.lost.end(), [](const FindingLine& a, const FindingLine& b) {
    if (rank(a.severity) != rank(b.severity)) return rank(a.severity) < rank(b.severity);
    return a.points_milli - a.earned_milli > b.points_milli - b.earned_milli;
  });
}

void add_verdict(MarkSheet& sheet, const record::Marking& marking, std::string_view language) {
  const rules::Report& report = marking.report;
  sheet.overall = report.overall;
  sheet.totals = report.totals;
  sheet.pass_mark_milli = marking.program.marks.pass_mark_milli;
  for (const rules::CompetenceTotals& totals : report.competences) {
    sheet.competences.push_back({totals.name, totals.totals});
  }
  sheet.verdict_words = std::string(phrase("verdict." + std::string(rules::overall_word(report.overall)), language));
  const auto percent = [](std::int32_t milli) { return base::text_from_int(milli / 10); };
  std::string title;
  if (report.deciding_rule != rules::kNoRule) title = title_of(marking, report.deciding_rule, language);
  using rules::OverallReason;
  switch (report.reason) {
    case OverallReason::ReachedPassMark:
    case OverallReason::BelowPassMark:
      sheet.reason = phrase(
          report.reason == OverallReason::ReachedPassMark ? "reason.reached-pass-mark" : "reason.below-pass-mark",
          language,
          {points_words(report.totals.earned_milli), points_words(report.totals.judged_milli),
           percent(sheet.pass_mark_milli)});
      break;
    case OverallReason::CriticalFailed:
      sheet.reason = phrase("reason.critical-failed", language, {title});
      break;
    case OverallReason::LittleSeen:
      sheet.reason =
          phrase("reason.little-seen", language,
                 {percent(report.totals.coverage_milli()), percent(marking.program.marks.min_coverage_milli)});
      break;
    case OverallReason::CutOff:
      sheet.reason = std::string(phrase("reason.cut-off", language));
      break;
    case OverallReason::CriticalUnjudged:
      sheet.reason = phrase("reason.critical-unjudged", language, {title});
      break;
  }
}

}  // namespace proofstand::report

#include "sim/cli/judged_text.h"

#include "sim/base/number_text.h"
#include "sim/record/json_text.h"
#include "sim/record/trace_file.h"
#include "sim/rules/text_fill.h"

namespace proofstand::cli {
namespace {

constexpr double kUnbounded = 1e300;

std::string_view status_word(rules::CaseStatus status) {
  switch (status) {
    case rules::CaseStatus::Ok:
      return "ok";
    case rules::CaseStatus::Bad:
      return "bad";
    case rules::CaseStatus::Unknown:
      return "unknown";
  }
  return "unknown";
}

std::string_view role_word(rules::Role role) {
  switch (role) {
    case rules::Role::X:
      return "x";
    case rules::Role::Y:
      return "y";
    case rules::Role::Void:
      return "void";
    case rules::Role::Open:
      return "open";
    case rules::Role::Close:
      return "close";
    case rules::Role::Step:
      return "step";
    case rules::Role::False:
      return "false";
  }
  return "x";
}

std::string points(std::int64_t milli) { return base::text_for_people(static_cast<double>(milli) / 1000.0, 6); }

std::string case_line(const event::Trace& trace, const rules::Case& one) {
  std::string line = "    " + std::string(status_word(one.status)) + ", " + std::string(rules::reason_word(one.reason));
  if (one.anchor >= 0) {
    line +=
        ", record " + base::text_from_int(one.anchor) + " at " + rules::time_words(one.anchor_tick, trace.ticks_per_s);
  }
  if (one.has_figures) {
    line += ", found " + base::quantity_words(one.found_si, one.dimension);
    if (one.lo_si > -kUnbounded) line += ", at least " + base::quantity_words(one.lo_si, one.dimension);
    if (one.hi_si < kUnbounded) line += ", at most " + base::quantity_words(one.hi_si, one.dimension);
  }
  for (const rules::Cite& cite : one.cites) {
    line += "; " + std::string(role_word(cite.role)) + " = record " + base::text_from_int(cite.position);
  }
  return line + "\n";
}

void put_case(record::JsonWriter& json, const rules::Case& one) {
  json.begin_object();
  json.member("status", status_word(one.status)).member("reason", rules::reason_word(one.reason));
  json.member("score_ppm", one.score_ppm).member("segment_a", one.segment_a).member("segment_b", one.segment_b);
  json.member("anchor", one.anchor).member("anchor_tick", one.anchor_tick).member("settled_tick", one.settled_tick);
  json.member("window_from", one.window_from).member("window_to", one.window_to);
  if (one.has_figures) {
    json.member("dimension", base::dimension_name(one.dimension));
    json.key("lo_si").real(one.lo_si).key("hi_si").real(one.hi_si);
    json.key("found_si").real(one.found_si).key("margin_si").real(one.margin_si);
  }
  if (one.key >= 0) json.member("key", one.key);
  json.key("items").begin_list();
  for (const std::int64_t item : one.items) json.whole(item);
  json.end_list().key("missing").begin_list();
  for (const std::int64_t item : one.missing) json.whole(item);
  json.end_list().key("cites").begin_list();
  for (const rules::Cite& cite : one.cites) {
    json.begin_object().member("role", role_word(cite.role)).member("record", cite.position);
    json.member("tick", cite.tick).end_object();
  }
  json.end_list().end_object();
}

}  // namespace

std::string judged_text(const rules::RuleProgram& program, const event::Trace& trace, const rules::Report& report) {
  std::string out = std::string(rules::overall_word(report.overall)) + " (" +
                    std::string(rules::overall_reason_word(report.reason)) +
                    "): " + points(report.totals.earned_milli) + " of " + points(report.totals.judged_milli) +
                    " points judged, " + points(report.totals.declared_milli) + " declared; " +
                    base::text_from_int(static_cast<std::int64_t>(trace.records.size())) + " records\n";
  for (const rules::RuleResult& result : report.rules) {
    out += program.id_of(result.rule) + ": " + std::string(rules::verdict_word(result.verdict));
    if (result.points_milli > 0) out += ", " + points(result.earned_milli) + "/" + points(result.points_milli);
    out += ", cases " + base::text_from_int(result.cases) + " (" + base::text_from_int(result.bad) + " bad)";
    if (result.verdict == rules::Verdict::NotApplicable)
      out += ", " + std::string(rules::idle_word(result.idle_reason));
    out += "\n";
    const std::string says = rules::fill_text(program, report, result.rule, "en");
    if (!says.empty()) out += "    " + says + "\n";
    for (const rules::Case& one : result.bad_cases) out += case_line(trace, one);
    if (result.bad_cases.empty()) {
      for (const rules::Case& one : result.ok_cases) out += case_line(trace, one);
    }
  }
  return out;
}

std::string judged_json(const rules::RuleProgram& program, const event::Trace& trace, const rules::Report& report) {
  record::JsonWriter json;
  json.begin_object().member("proofstand", "judged").member("format", std::int64_t{1});
  json.member("verdict", rules::overall_word(report.overall));
  json.member("reason", rules::overall_reason_word(report.reason));
  json.member("records", static_cast<std::int64_t>(trace.records.size()));
  json.member("earned_milli", report.totals.earned_milli).member("judged_milli", report.totals.judged_milli);
  json.member("covered_milli", report.totals.covered_milli).member("declared_milli", report.totals.declared_milli);
  json.key("rules").begin_list();
  for (const rules::RuleResult& result : report.rules) {
    json.begin_object().member("rule", program.id_of(result.rule));
    json.member("verdict", rules::verdict_word(result.verdict)).member("idle", rules::idle_word(result.idle_reason));
    json.member("score_milli", result.score_milli).member("points_milli", result.points_milli);
    json.member("earned_milli", result.earned_milli).member("cases", result.cases).member("ok", result.ok);
    json.member("bad", result.bad).member("unknown", result.unknown).member("slips", result.slips);
    json.member("says", rules::fill_text(program, report, result.rule, "en"));
    json.key("bad_cases").begin_list();
    for (const rules::Case& one : result.bad_cases) put_case(json, one);
    json.end_list().key("ok_cases").begin_list();
    for (const rules::Case& one : result.ok_cases) put_case(json, one);
    json.end_list().end_object();
  }
  json.end_list().end_object();
  return json.text() + "\n";
}

}  // namespace proofstand::cli

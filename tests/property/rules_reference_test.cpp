// Danger: the fast engine forgets something that the definition of a rule remembers, and a mark is wrong.
#include <algorithm>
#include <cstdlib>

#include "tests/support/catch.h"
#include "tests/support/rules_random.h"
#include "tests/support/rules_reference.h"

namespace proofstand::testing {
namespace {

using rules::CaseStatus;

std::vector<ReferenceCase> engine_cases(const rules::RuleResult& result) {
  std::vector<ReferenceCase> all;
  for (const auto* list : {&result.bad_cases, &result.ok_cases}) {
    for (const rules::Case& made : *list) {
      all.push_back({made.anchor, made.status == CaseStatus::Ok, made.score_ppm, made.settled_tick, made.key});
    }
  }
  return all;
}

std::string words_of(std::vector<ReferenceCase> cases, bool keys) {
  std::vector<std::string> rows;
  for (const ReferenceCase& one : cases) {
    rows.push_back(std::to_string(one.anchor) + (one.ok ? ":ok " : ":bad ") + std::to_string(one.score_ppm) +
                   " settled " + std::to_string(one.settled) + (keys ? " key " + std::to_string(one.key) : ""));
  }
  std::sort(rows.begin(), rows.end());
  std::string words;
  for (const std::string& row : rows) words += row + "\n";
  return words;
}

std::string trace_words(const event::Trace& trace) {
  std::string words;
  for (const event::Record& record : trace.records) {
    words += std::to_string(record.tick) + ":";
    words += record.kind == 26 ? (record.values[0] != 0.0 ? "S1 " : "S0 ")
                               : std::string(1, static_cast<char>('A' + record.kind)) + "#" +
                                     std::to_string(static_cast<int>(record.values[0])) + "=" +
                                     std::to_string(static_cast<int>(record.values[1])) + " ";
  }
  return words + std::to_string(trace.end_tick);
}

std::string rule_words(const rules::RuleSpec& s) {
  return s.kind.text + " x=" + s.x.event.text + "[" + s.x.where.text + "] y=" + s.y.event.text + "[" + s.y.where.text +
         "] void=" + s.voided_by.event.text + "[" + s.voided_by.where.text + "] scope=" + s.scope.form.text +
         " a=" + s.scope.a.event.text + "[" + s.scope.a.where.text + "] b=" + s.scope.b.event.text + "[" +
         s.scope.b.where.text + "] within=" + s.within.text + " gap=" + s.gap.text + " same=" + s.same.text +
         " range=" + s.range.text + " pick=" + s.pick.text + " per=" + s.per.text + " d=" + s.duration.text +
         " budget=" + s.budget.text + " pattern=" + s.pattern.text + " passes=" + std::to_string(s.passes) +
         (s.fresh ? " fresh" : "") + (s.look_run ? " look" : "") + (s.one_each ? " one_each" : "") +
         (s.strict ? " strict" : "") + (s.partial ? " partial" : "") + (s.first ? " first" : "") +
         " distinct=" + s.distinct.text;
}

// pairs of a random rule and a random run; each rule meets several runs
void compare(std::uint64_t first_seed, std::uint64_t rules_tried, std::uint64_t runs_each) {
  std::uint64_t with_cases = 0;
  for (std::uint64_t seed = first_seed; seed < first_seed + rules_tried; ++seed) {
    Draws draws(seed);
    const rules::RuleSpec spec = random_rule(draws);
    const rules::RuleProgram program = compiled({spec}, 4);
    const bool keys = spec.same.given() || spec.per.given();
    for (std::uint64_t run = 0; run < runs_each; ++run) {
      const event::Trace trace = random_trace(draws, spec.kind.text == "rounds" ? 24 : 14);
      const std::string expected = words_of(reference_cases(program, 0, trace), keys);
      const std::string found = words_of(engine_cases(rules::judge(program, trace).rules[0]), keys);
      if (!expected.empty()) ++with_cases;
      if (expected == found) continue;
      INFO("seed " << seed << ": " << rule_words(spec) << "\n" << trace_words(trace));
      REQUIRE(found == expected);
    }
  }
  // a comparison of nothing with nothing proves nothing
  CHECK(with_cases * 3 > rules_tried * runs_each);
}

}  // namespace

TEST_CASE("rules: the engine agrees with the definitions on random runs") { compare(1, 2500, 4); }

TEST_CASE("rules: the engine agrees with the definitions on many random runs", "[.nightly]") {
  compare(1'000'000, 60'000, 5);
}

}  // namespace proofstand::testing

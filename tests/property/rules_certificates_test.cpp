// Danger: a mark is right, but the records shown for it prove something else.
#include <algorithm>

#include "tests/support/catch.h"
#include "tests/support/rules_certificates.h"
#include "tests/support/rules_random.h"

namespace proofstand::testing {
namespace {

std::vector<rules::Case> all_cases(const rules::RuleResult& result) {
  std::vector<rules::Case> all = result.bad_cases;
  all.insert(all.end(), result.ok_cases.begin(), result.ok_cases.end());
  return all;
}

}  // namespace

TEST_CASE("rules: every case proves itself to a checker that knows the trace alone") {
  std::uint64_t checked = 0;
  for (std::uint64_t seed = 1; seed <= 3000; ++seed) {
    Draws draws(seed);
    const rules::RuleSpec spec = random_rule(draws);
    const rules::RuleProgram program = compiled({spec}, 4);
    for (int run = 0; run < 3; ++run) {
      const event::Trace trace = random_trace(draws, 18);
      for (const rules::Case& made : all_cases(rules::judge(program, trace).rules[0])) {
        const std::string complaint = complaint_about(program, 0, trace, made);
        ++checked;
        if (complaint.empty()) continue;
        INFO("seed " << seed << ", " << spec.kind.text << " " << spec.scope.form.text << ", case at " << made.anchor
                     << " " << rules::reason_word(made.reason));
        REQUIRE(complaint == "");
      }
    }
  }
  CHECK(checked > 3000);
}

TEST_CASE("rules: the checker refuses cases that were tampered with") {
  std::uint64_t refused = 0;
  std::uint64_t tried = 0;
  for (std::uint64_t seed = 1; seed <= 400; ++seed) {
    Draws draws(seed);
    const rules::RuleProgram program = compiled({random_rule(draws)}, 4);
    const event::Trace trace = random_trace(draws, 18);
    for (rules::Case made : all_cases(rules::judge(program, trace).rules[0])) {
      // the opposite of what was found, with the same evidence
      const bool was_ok = made.status == rules::CaseStatus::Ok;
      made.status = was_ok ? rules::CaseStatus::Bad : rules::CaseStatus::Ok;
      made.score_ppm = was_ok ? 0 : rules::kFullPpm;
      ++tried;
      if (!complaint_about(program, 0, trace, made).empty()) ++refused;
    }
  }
  CHECK(tried > 200);
  // rounds are judged by their pattern, which this checker leaves to the reference
  CHECK(refused * 100 > tried * 85);
}

TEST_CASE("rules: the records cited are enough for the same answer, and none too many") {
  std::uint64_t tried = 0;
  std::uint64_t dropped = 0;
  for (std::uint64_t seed = 1; seed <= 3000; ++seed) {
    Draws draws(seed);
    rules::RuleSpec spec = random_rule_of(draws, seed % 2 == 0 ? "needs" : "leads");
    spec.scope = {};
    spec.one_each = false;
    const rules::RuleProgram program = compiled({spec}, 4);
    const event::Trace trace = random_trace(draws, 14);
    for (const rules::Case& made : all_cases(rules::judge(program, trace).rules[0])) {
      // what shows that nothing came cannot be cited; what shows that something came can
      if (made.status != rules::CaseStatus::Ok) continue;
      event::Trace few = trace;
      few.records.clear();
      rules::Position anchor = rules::kNoPosition;
      for (std::size_t i = 0; i < trace.records.size(); ++i) {
        const auto here = static_cast<rules::Position>(i);
        const bool cited = std::any_of(made.cites.begin(), made.cites.end(),
                                       [&](const rules::Cite& cite) { return cite.position == here; });
        if (!cited && trace.records[i].kind != 26) continue;
        if (here == made.anchor) anchor = static_cast<rules::Position>(few.records.size());
        few.records.push_back(trace.records[i]);
      }
      const rules::RuleResult again = rules::judge(program, few).rules[0];
      const bool found = std::any_of(again.ok_cases.begin(), again.ok_cases.end(),
                                     [&](const rules::Case& one) { return one.anchor == anchor; });
      ++tried;
      INFO("seed " << seed << ", case at " << made.anchor);
      REQUIRE(found);
      // and none of them is there for nothing
      for (std::size_t drop = 0; drop < few.records.size(); ++drop) {
        if (static_cast<rules::Position>(drop) == anchor || few.records[drop].kind == 26) continue;
        event::Trace fewer = few;
        fewer.records.erase(fewer.records.begin() + static_cast<std::ptrdiff_t>(drop));
        const rules::Position moved = static_cast<rules::Position>(drop) < anchor ? anchor - 1 : anchor;
        const rules::RuleResult without = rules::judge(program, fewer).rules[0];
        INFO("without cited record " << drop);
        REQUIRE(std::none_of(without.ok_cases.begin(), without.ok_cases.end(),
                             [&](const rules::Case& one) { return one.anchor == moved; }));
        ++dropped;
      }
    }
  }
  CHECK(tried > 200);
  CHECK(dropped > 200);
}

}  // namespace proofstand::testing

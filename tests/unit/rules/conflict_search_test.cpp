// Danger: a set of rules that nobody can keep is used for an exam, because no two of them contradict each other.
#include "sim/rules/conflict_search.h"

#include "tests/support/catch.h"
#include "tests/support/rules_toy.h"

namespace proofstand::testing {
namespace {

rules::RuleSpec pair(const char* kind, const char* id, const char* x, const char* y) {
  rules::RuleSpec spec = rule(kind, id);
  spec.x = on(x);
  if (*y != '\0') spec.y = on(y);
  return spec;
}

std::string found(const std::vector<rules::RuleSpec>& specs, int length = 6) {
  rules::CompileInput input = toy_input(specs, 4);
  input.evidence = {};
  const rules::RuleProgram program = compiled(input);
  const rules::SearchResult result = rules::search_conflicts(program, {20'000, length});
  std::string words;
  for (const base::Error& fault : result.faults.list)
    words += (words.empty() ? "" : " ") + fault.code + (fault.warning ? "?" : "");
  for (const std::vector<rules::RuleIndex>& set : result.conflicts) {
    words += " {";
    for (rules::RuleIndex one : set) words += program.id_of(one);
    words += "}";
  }
  return words + (result.complete ? "" : " incomplete");
}

}  // namespace

TEST_CASE("rules that can be kept together are let through") {
  CHECK(found({pair("must", "a", "A", ""), pair("needs", "b", "A", "B")}).empty());
  CHECK(found({pair("must", "a", "A", ""), pair("leads", "b", "A", "B"), pair("never", "c", "C", "")}).empty());
}

TEST_CASE("two rules that contradict each other are named") {
  rules::RuleSpec never = pair("never", "n", "B", "");
  never.scope = scope("after_first", on("A"));
  CHECK(found({pair("leads", "l", "A", "B"), never, pair("must", "d", "D", "")}) == "E23 {ln}");
}

TEST_CASE("three rules of which any two can be kept are named together") {
  CHECK(found({pair("must", "a", "A", ""), pair("needs", "b", "A", "B"), pair("needs", "c", "B", "A"),
               pair("must", "d", "D", "")}) == "E23 {abc}");
}

TEST_CASE("rules with times contradict each other only as far as was tried, and the search says so") {
  rules::RuleSpec soon = pair("leads", "s", "A", "B");
  soon.within = at("3 s");
  rules::RuleSpec late = pair("needs", "t", "B", "A");
  late.gap = at("5 s");
  late.fresh = true;
  CHECK(found({soon, late}, 4).find("E23? {st}") != std::string::npos);
}

TEST_CASE("rounds over a ring are found by following what is owed") {
  rules::RuleSpec rounds = pair("rounds", "r", "T", "");
  rounds.over = at("ring");
  rounds.pattern = at("opposite");
  rounds.passes = 2;
  CHECK(found({rounds}, 12).empty());
}

TEST_CASE("a search can be ended") {
  rules::RuleSpec rounds = pair("rounds", "r", "T", "");
  rounds.over = at("ring");
  rounds.pattern = at("opposite");
  int calls = 0;
  const rules::SearchResult result =
      rules::search_conflicts(compiled({rounds}, 4), {20'000, 12}, [&](int) { return ++calls < 3; });
  CHECK(calls >= 3);
  CHECK(!result.complete);
}

}  // namespace proofstand::testing

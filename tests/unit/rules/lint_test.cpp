// Danger: a scenario with a rule that nobody can keep, or that anybody keeps, is used for an exam.
#include "sim/rules/lint.h"

#include "tests/support/catch.h"
#include "tests/support/rules_toy.h"

namespace proofstand::testing {
namespace {

std::string codes(std::vector<rules::RuleSpec> specs) {
  rules::CompileInput input = toy_input(std::move(specs));
  input.vocabulary.kinds[25].later = true;
  std::string all;
  for (const base::Error& fault : rules::lint(compiled(input)).list) {
    if (fault.what.empty() || fault.instead.empty()) return "a fault does not say what or what to do";
    if (fault.warning != (fault.code[0] == 'W')) return "an error is called a warning or the other way round";
    all += (all.empty() ? "" : " ") + fault.code;
  }
  return all;
}

rules::RuleSpec on_x(const char* kind, const char* id, rules::SelectorSpec x) {
  rules::RuleSpec spec = rule(kind, id);
  spec.x = std::move(x);
  return spec;
}

}  // namespace

TEST_CASE("a sound pair of rules has nothing to say about it") {
  rules::RuleSpec needs = on_x("needs", "b", on("A"));
  needs.y = on("B");
  needs.severity = at("major");
  CHECK(codes({on_x("must", "a", on("A")), needs}).empty());
}

TEST_CASE("rules that nothing can match, keep or lose are found") {
  CHECK(codes({on_x("must", "a", on("A", "value > 3 and value < 2"))}) == "E11");
  CHECK(codes({on_x("must", "a", on("A", "hand == bare and hand == tool"))}) == "E11");
  rules::RuleSpec needs = on_x("needs", "n", on("B"));
  needs.y = on("C");
  needs.scope = scope("until_first", {}, on("B"));
  CHECK(codes({on_x("must", "a", on("A")), needs}) == "E20 W13");
  rules::RuleSpec must = on_x("must", "m", on("B"));
  must.scope = scope("until_first", {}, on("B"));
  CHECK(codes({on_x("must", "a", on("A")), must}) == "E21 W13");
  rules::RuleSpec hold = rule("hold", "h");
  hold.condition = at("phi and not phi");
  hold.duration = at("5 s");
  CHECK(codes({on_x("must", "a", on("A")), hold}) == "E21");
  rules::RuleSpec count = on_x("count", "c", on("B"));
  count.range = at("0..");
  CHECK(codes({on_x("must", "a", on("A")), count}) == "E22");
  rules::RuleSpec measure = on_x("measure", "m", on("A"));
  measure.value = at("value");
  measure.range = at("0..200");
  CHECK(codes({on_x("must", "a", on("A")), measure}) == "E22");
}

TEST_CASE("a condition that asks whether a value is known can match") {
  CHECK(codes({on_x("must", "a", on("A", "not known(value)"))}).empty());
  CHECK(codes({on_x("must", "a", on("A", "not known(value) and value > 3"))}) == "E11");
}

TEST_CASE("doing nothing must not pass") { CHECK(codes({on_x("never", "n", on("A"))}) == "E25"); }

TEST_CASE("what one rule asks for must not lose a critical other") {
  rules::RuleSpec never = on_x("never", "n", on("A"));
  never.severity = at("critical");
  CHECK(codes({on_x("must", "a", on("A", "value > 3")), never}) == "E26");
}

TEST_CASE("rules that repeat each other are pointed out") {
  CHECK(codes({on_x("must", "a", on("A")), on_x("must", "b", on("A"))}) == "W10");
  rules::RuleSpec three = on_x("count", "c", on("A"));
  three.range = at("3..");
  CHECK(codes({on_x("must", "a", on("A")), three}) == "W11");
}

TEST_CASE("a heavy rule that may silently stay idle is pointed out, unless the author has said why") {
  rules::RuleSpec needs = on_x("needs", "n", on("B"));
  needs.y = on("C");
  needs.severity = at("major");
  CHECK(codes({on_x("must", "a", on("A")), needs}) == "W12");
  needs.silenced = {at("W12")};
  CHECK(codes({on_x("must", "a", on("A")), needs}) == "W12");
  needs.silenced = {at("W12 only those who wipe can wipe wrongly")};
  CHECK(codes({on_x("must", "a", on("A")), needs}).empty());
}

TEST_CASE("overlaps, events to come, times of nothing and rules that are everything are pointed out") {
  rules::RuleSpec needs = on_x("needs", "n", on("B"));
  needs.y = on("B", "value > 3");
  CHECK(codes({on_x("must", "a", on("A")), needs}) == "W14");
  needs.y = on("C");
  needs.within = at("0 s");
  CHECK(codes({on_x("must", "a", on("A")), needs}) == "W15");
  CHECK(codes({on_x("must", "a", on("A")), on_x("never", "z", on("Z"))}) == "W16");
  std::vector<rules::RuleSpec> five;
  for (const char* kind : {"A", "B", "C", "D", "E"}) five.push_back(on_x("must", kind, on(kind)));
  five[0].points_milli = 9000;
  CHECK(codes(five) == "W17");
}

}  // namespace proofstand::testing

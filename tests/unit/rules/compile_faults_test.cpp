// Danger: a rule that is written wrongly is marked all the same. One smallest wrong rule for every code.
#include "tests/support/catch.h"
#include "tests/support/rules_toy.h"

namespace proofstand::testing {
namespace {

std::string codes(const rules::CompileInput& input) {
  const rules::Compiled out = rules::compile_rules(input);
  std::string all;
  for (const base::Error& fault : out.faults.list) {
    if (fault.what.empty() || fault.instead.empty() || fault.where.empty())
      return "a fault does not say what, where or what to do";
    all += (all.empty() ? "" : " ") + fault.code;
  }
  return all;
}

template <class Change>
std::string codes_after(rules::RuleSpec spec, Change&& change) {
  change(spec);
  return codes(toy_input({spec}));
}

rules::RuleSpec must() {
  rules::RuleSpec spec = rule("must");
  spec.x = on("A");
  return spec;
}
rules::RuleSpec needs() {
  rules::RuleSpec spec = rule("needs");
  spec.x = on("A");
  spec.y = on("B");
  return spec;
}
rules::RuleSpec rounds(const char* pattern, int number) {
  rules::RuleSpec spec = rule("rounds");
  spec.x = on("A");
  spec.over = at("ring");
  spec.pattern = at(pattern);
  spec.number = number;
  return spec;
}

using S = rules::RuleSpec;

}  // namespace

TEST_CASE("a right rule has no faults") {
  CHECK(codes(toy_input({must()})).empty());
  CHECK(codes(toy_input({needs()})).empty());
  CHECK(codes(toy_input({rounds("opposite", 0)})).empty());
}

TEST_CASE("words and names that do not exist are refused") {
  CHECK(codes_after(must(), [](S& s) { s.kind = at("mst"); }) == "E02");
  CHECK(codes_after(must(), [](S& s) { s.severity = at("severe"); }) == "E02");
  CHECK(codes_after(must(), [](S& s) { s.scope.form = at("after"); }) == "E02");
  CHECK(codes_after(must(), [](S& s) { s.scope.form = at("after_first"); }) == "E02");
  CHECK(codes_after(must(), [](S& s) { s.within = at("5 s"); }) == "E02");
  CHECK(codes_after(must(), [](S& s) { s.x = {}; }) == "E02");
  CHECK(codes(toy_input({must(), must()})) == "E03");
  CHECK(codes_after(must(), [](S& s) { s.x = on("AA"); }) == "E04");
  CHECK(codes_after(needs(), [](S& s) { s.same = at("bolt"); }) == "E05 E05");
  CHECK(codes_after(must(), [](S& s) { s.x.where = at("handd == bare"); }) == "E05");
  CHECK(codes_after(rounds("any", 0), [](S& s) { s.over = at("rang"); }) == "E06");
  CHECK(codes_after(must(), [](S& s) { s.after_failure_of = {at("none")}; }) == "E06");
  CHECK(codes_after(must(), [](S& s) { s.x.where = at("hand == 3 N·m"); }) == "E07");
  CHECK(codes_after(needs(), [](S& s) { s.within = at("5 mm"); }) == "E08");
  CHECK(codes_after(needs(), [](S& s) { s.within = at("5"); }) == "E08");
}

TEST_CASE("ranges and durations that cannot be are refused") {
  CHECK(codes_after(needs(), [](S& s) { s.within = at("-5 s"); }) == "E09");
  CHECK(codes_after(needs(), [](S& s) { s.within = at("0.5 s"); }) == "E09");
  CHECK(codes_after(needs(), [](S& s) { s.within = at("5 s"), s.gap = at("6 s"); }) == "E09");
  const auto count = [](const char* range) {
    S spec = must();
    spec.kind = at("count");
    spec.range = at(range);
    return codes(toy_input({spec}));
  };
  CHECK(count("2..1") == "E09");
  CHECK(count("1.5..") == "E09");
  CHECK(count("..").substr(0, 3) == "E09");
  CHECK(count("2..").empty());
  CHECK(count("3").empty());
  S measure = rule("measure");
  measure.x = on("A");
  measure.value = at("torque");
  measure.range = at("400 N·m..500 N·m");
  CHECK(codes(toy_input({measure})) == "E10");
  measure.range = at("4 s..5 s");
  CHECK(codes(toy_input({measure})) == "E08");
}

TEST_CASE("a duration between two ticks names the two nearest") {
  S spec = needs();
  spec.within = at("0.005 s");
  rules::CompileInput input = toy_input({spec});
  input.ticks_per_s = 240;
  const rules::Compiled out = rules::compile_rules(input);
  REQUIRE(out.faults.list.size() == 1);
  CHECK(out.faults.list[0].instead == "write 0.00416667 s or 0.00833333 s");
}

TEST_CASE("orders and rounds that do not fit their steps or items are refused") {
  S order = rule("order");
  order.steps = {on("A"), on("A", "value > 3")};
  CHECK(codes(toy_input({order})) == "E12");
  order.steps = {on("A", "value <= 3"), on("A", "value > 3")};
  CHECK(codes(toy_input({order})).empty());
  order.steps = {on("A")};
  CHECK(codes(toy_input({order})) == "E12");
  CHECK(codes(toy_input({rounds("opposite", 0)}, 5)) == "E13");
  CHECK(codes(toy_input({rounds("skip", 3)}, 6)) == "E13");
  CHECK(codes(toy_input({rounds("skip", 2)}, 5)).empty());
  CHECK(codes(toy_input({rounds("crosswise", 4)}, 6)) == "E13");
  S listed = rounds("listed", 0);
  listed.sequences = {{at("bolt 1"), at("bolt 1"), at("bolt 2")}};
  CHECK(codes(toy_input({listed}, 3)) == "E13");
}

TEST_CASE("circles are refused") {
  S a = must();
  S b = must();
  b.id = at("b");
  a.after_failure_of = {at("b")};
  b.after_failure_of = {at("r")};
  CHECK(codes(toy_input({a, b})) == "E27");
}

TEST_CASE("points that do not add up or cost nothing are refused") {
  rules::CompileInput input = toy_input({must()});
  input.marks.at = {"toy.toml", 2, 1};
  input.marks.points_milli = 2000;
  CHECK(codes(input) == "E30");
  input.marks.points_milli = 1000;
  CHECK(codes(input).empty());
  input.marks.competences = {{at("tighten"), 3000, {"toy.toml", 3, 1}}};
  input.rules[0].competence = at("tighten");
  CHECK(codes(input) == "E30");
  CHECK(codes_after(must(), [](S& s) { s.idle = at("pass"); }) == "E31");
  CHECK(codes_after(must(), [](S& s) { s.points_milli = 0; }) == "E32");
  CHECK(codes_after(must(), [](S& s) { s.points_milli = -1; }) == "E32");
  CHECK(codes_after(must(), [](S& s) { s.severity = at("critical"); }).empty());
  CHECK(codes_after(must(), [](S& s) { s.severity = at("critical"), s.credit = at("share"); }) == "E33");
}

TEST_CASE("sentences that cannot be filled or are missing are refused") {
  const auto say = [](const char* text) {
    S spec = needs();
    spec.say = {{"en", "fail", at(text)}};
    rules::CompileInput input = toy_input({spec});
    input.languages = {"en"};
    return codes(input);
  };
  CHECK(say("Bolt {x.item} at {x.time}.").empty());
  CHECK(say("Since {z.time}.") == "E34");
  CHECK(say("With {x.itm}.") == "E34");
  CHECK(say("With {sheet.torque}.") == "E34");
  CHECK(say("With {missing}.") == "E34");
  CHECK(say("With {x.item.") == "E34");
  CHECK(say("") == "E35");
}

}  // namespace proofstand::testing

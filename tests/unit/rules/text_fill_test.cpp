// Danger: the sentence on the mark sheet names another bolt, time or figure than the one that lost the points.
#include "sim/rules/text_fill.h"

#include "tests/support/catch.h"
#include "tests/support/rules_toy.h"

namespace proofstand::testing {
namespace {

std::string said(rules::RuleSpec spec, const std::string& verdict, const std::string& text, const std::string& trace) {
  spec.say = {{"en", verdict, at(text)}};
  rules::CompileInput input = toy_input({spec});
  input.sheet = {{"bolt_torque", {5.0, base::Dimension::Torque}, 0.4}};
  const rules::RuleProgram program = compiled(input);
  return rules::fill_text(program, rules::judge(program, toy_trace(trace)), 0, "en");
}

}  // namespace

TEST_CASE("a sentence names the records that lost the points") {
  rules::RuleSpec needs = rule("needs");
  needs.x = on("T");
  needs.y = on("R");
  needs.voided_by = on("L");
  const std::string text = "{x.item} at {x.time} although not turned{z? since it was lifted at {z.time}}.";
  CHECK(said(needs, "fail", text, "65:T#3 90") == "bolt 4 at 1:05 although not turned.");
  CHECK(said(needs, "fail", text, "1:R 2:L 65:T#3 90") ==
        "bolt 4 at 1:05 although not turned since it was lifted at 0:02.");
  CHECK(said(needs, "fail", text, "1:R 65:T#3 90").empty());
}

TEST_CASE("a sentence gives figures with their units, expected and found") {
  rules::RuleSpec measure = rule("measure");
  measure.x = on("T");
  measure.value = at("torque");
  measure.range = at("sheet.bolt_torque");
  const std::string text =
      "{x.item} reached {found}; the sheet says {sheet.bolt_torque} ± {sheet.bolt_torque.tolerance} ({expected}).";
  CHECK(said(measure, "fail", text, "1:T#3 10") ==
        "bolt 4 reached 0 N·m; the sheet says 5 N·m ± 0.4 N·m (4.6 N·m – 5.4 N·m).");
}

TEST_CASE("a sentence lists what is missing and counts") {
  rules::RuleSpec rounds = rule("rounds");
  rounds.x = on("T");
  rounds.over = at("ring");
  rounds.pattern = at("any");
  CHECK(said(rounds, "fail", "{missing} left out; {slips} twice.", "1:T#0 2:T#1 3:T#1 4:T#3 9") ==
        "bolt 3, bolt 5, bolt 6 left out; 1 twice.");
  rules::RuleSpec never = rule("measure");
  never.x = on("M");
  never.value = at("value");
  never.range = at("..5");
  CHECK(said(never, "fail", "{count} of {cases}, worst {worst.value} at {worst.time}.", "1:M=6 62:M=9 63:M=2 70") ==
        "2 of 3, worst 9 at 1:02.");
}

TEST_CASE("a sentence is taken in the language asked for, or in one that there is") {
  rules::RuleSpec must = rule("must");
  must.x = on("A");
  must.say = {{"en", "fail", at("Missing.")}, {"de", "fail", at("Fehlt.")}};
  const rules::RuleProgram program = compiled({must});
  const rules::Report report = rules::judge(program, toy_trace("5"));
  CHECK(rules::fill_text(program, report, 0, "de") == "Fehlt.");
  CHECK(rules::fill_text(program, report, 0, "fr") == "Missing.");
}

}  // namespace proofstand::testing

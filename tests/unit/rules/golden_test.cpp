// Danger: a kind of rule means something else than the author guide says, at an exact bound or a tie.
#include "tests/support/catch.h"
#include "tests/support/rules_toy.h"

namespace proofstand::testing {
namespace {

struct Golden {
  const char* name;
  rules::RuleSpec spec;
  const char* trace;
  const char* cases;
};

rules::RuleSpec x_rule(const char* kind, const char* x) {
  rules::RuleSpec spec = rule(kind);
  spec.x = on(x);
  return spec;
}
rules::RuleSpec pair_rule(const char* kind, const char* x, const char* y) {
  rules::RuleSpec spec = x_rule(kind, x);
  spec.y = on(y);
  return spec;
}
template <class Change>
rules::RuleSpec with(rules::RuleSpec spec, Change&& change) {
  change(spec);
  return spec;
}
rules::RuleSpec phi_rule(const char* kind, const char* duration) {
  rules::RuleSpec spec = rule(kind);
  spec.condition = at("phi");
  spec.duration = at(duration);
  return spec;
}
rules::RuleSpec order_abc() {
  rules::RuleSpec spec = rule("order");
  spec.steps = {on("A"), on("B"), on("C")};
  return spec;
}
rules::RuleSpec measure_m(const char* pick, const char* per) {
  rules::RuleSpec spec = x_rule("measure", "M");
  spec.value = at("value");
  spec.range = at("85..95");
  spec.pick = at(pick);
  spec.per = at(per);
  return spec;
}
rules::RuleSpec opposite(int passes) {
  rules::RuleSpec spec = x_rule("rounds", "T");
  spec.over = at("ring");
  spec.pattern = at("opposite");
  spec.passes = passes;
  return spec;
}

std::vector<Golden> golden_table() {
  using S = rules::RuleSpec;
  const S needs = pair_rule("needs", "T", "R");
  const S leads = with(pair_rule("leads", "S", "P"), [](S& s) { s.within = at("5 s"); });
  const auto scoped = [](S spec, const char* form, const char* a, const char* b) {
    spec.scope = scope(form, *a ? on(a) : rules::SelectorSpec{}, *b ? on(b) : rules::SelectorSpec{});
    return spec;
  };
  return {
      {"must, nothing", x_rule("must", "X"), "10", "bad"},
      {"never, nothing", x_rule("never", "X"), "10", "ok"},
      {"never after last", scoped(x_rule("never", "C"), "after_last", "W", ""), "1:W 3:C 5:W 9:D 10", "2:ok"},
      {"never after first", scoped(x_rule("never", "C"), "after_first", "W", ""), "1:W 3:C 5:W 9:D 10", "0:bad"},
      {"never after last, no opener", scoped(x_rule("never", "C"), "after_last", "W", ""), "3:C 10", "idle"},
      {"needs, nothing", needs, "10", "idle"},
      {"needs", needs, "1:T 2:R 3:T 10", "0:bad, 2:ok"},
      {"needs void", with(needs, [](S& s) { s.voided_by = on("L"); }), "1:R 2:L 3:T 4:R 5:T 10", "2:bad, 4:ok"},
      {"needs fresh", with(needs, [](S& s) { s.fresh = true; }), "1:R 2:T 3:T 10", "1:ok, 2:bad"},
      {"needs gap within",
       with(needs,
            [](S& s) {
              s.gap = at("5 s");
              s.within = at("8 s");
            }),
       "0:R 4:T 5:T 8:T 9:T 10", "1:bad, 2:ok, 3:ok, 4:bad"},
      {"needs, tie, too late", needs, "4:T 4:R 10", "0:bad"},
      {"needs, tie, in time", needs, "4:R 4:T 10", "1:ok"},
      {"leads in time", leads, "0:S 5:P 10", "0:ok"},
      {"leads late", leads, "0:S 6:P 10", "0:bad"},
      {"leads open at the end", leads, "8:S 10", "0:bad"},
      {"leads void", with(pair_rule("leads", "S", "P"), [](S& s) { s.voided_by = on("Z"); }), "0:S 1:Z 2:P 10",
       "0:bad"},
      {"hold", phi_rule("hold", "5 s"), "1:S1 6:S0 10", "ok"},
      {"hold, blip", phi_rule("hold", "5 s"), "1:S1 3:S0 3:S1 6:S0 10", "ok"},
      {"hold, broken", phi_rule("hold", "5 s"), "1:S1 3:S0 4:S1 8:S0 10", "bad"},
      {"hold to the end", phi_rule("hold", "5 s"), "5:S1 10", "ok"},
      {"steady", with(phi_rule("steady", "3 s"), [](S& s) { s.x = on("X"); }), "1:S1 4:X 10", "1:ok"},
      {"steady, off at x", with(phi_rule("steady", "3 s"), [](S& s) { s.x = on("X"); }), "1:S1 4:S0 4:X 10", "2:ok"},
      {"steady, too short", with(phi_rule("steady", "3 s"), [](S& s) { s.x = on("X"); }), "2:S1 4:X 10", "1:bad"},
      {"keep", with(phi_rule("keep", ""), [](S& s) { s.budget = at("2 s"); }), "0:S1 4:S0 6:S1 10", "ok"},
      {"keep, over", with(phi_rule("keep", ""), [](S& s) { s.budget = at("2 s"); }), "0:S1 4:S0 7:S1 10", "bad"},
      {"between, not closed", scoped(x_rule("never", "X"), "between", "A", "B"), "1:A 2:X 10", "idle"},
      {"from, not closed", scoped(x_rule("never", "X"), "from_to", "A", "B"), "1:A 2:X 10", "0:bad"},
      {"measure each", measure_m("each", ""), "1:M#0=90 2:M#1=84.9 3:M#1=90 10", "0:ok, 1:bad, 2:ok"},
      {"measure last per item", measure_m("last", "item"), "1:M#0=90 2:M#1=84.9 3:M#1=90 10", "0:ok, 2:ok"},
      {"order", order_abc(), "1:B 2:A 3:B 4:C 10", "3:ok"},
      {"order, wrong", order_abc(), "1:C 2:A 3:B 10", "2:bad"},
      {"rounds", opposite(2), "0:T#0 1:T#3 2:T#1 3:T#4 4:T#2 5:T#5 6:T#2 7:T#5 8:T#0 9:T#3 10:T#1 11:T#4 20", "ok"},
      {"rounds, second in a circle", opposite(2),
       "0:T#0 1:T#3 2:T#1 3:T#4 4:T#2 5:T#5 6:T#0 7:T#1 8:T#2 9:T#3 10:T#4 11:T#5 20", "bad"},
      {"rounds, the last of a pass looked after", opposite(2),
       "0:T#0 1:T#3 2:T#1 3:T#4 4:T#2 5:T#5 6:T#5 7:T#2 8:T#5 9:T#0 10:T#3 11:T#1 12:T#4 20", "ok"},
      {"rounds, repeat in a pass", opposite(1), "0:T#0 1:T#3 2:T#3 3:T#1 4:T#4 5:T#2 6:T#5 20", "ok"},
  };
}

}  // namespace

TEST_CASE("every kind of rule means what the author guide says, at bounds and ties") {
  for (const Golden& row : golden_table()) {
    INFO(row.name << " on " << row.trace);
    CHECK(case_words(judged(compiled({row.spec}), row.trace)) == row.cases);
  }
}

}  // namespace proofstand::testing

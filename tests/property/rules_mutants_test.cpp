// Danger: the comparison with the definitions would not notice a wrong engine. Each wrong reading of a rule below must
// be told apart from the right one by the random runs.
#include <functional>

#include "tests/support/catch.h"
#include "tests/support/rules_random.h"

namespace proofstand::testing {
namespace {

using rules::Rule;
using rules::ScopeForm;

struct Mutant {
  const char* name;
  const char* kind;
  std::function<bool(Rule&)> change;  ///< false when this rule has nothing to change
};

const std::vector<Mutant>& mutants() {
  const auto form = [](ScopeForm from, ScopeForm to, bool discards) {
    return [=](Rule& r) {
      if (r.form != from) return false;
      r.form = to;
      r.discards = discards;
      return true;
    };
  };
  static const std::vector<Mutant> all = {
      {"within one more", "needs", [](Rule& r) { return r.within >= 0 && ++r.within; }},
      {"within one less", "leads", [](Rule& r) { return r.within > 0 && r.within--; }},
      {"gap one more", "needs", [](Rule& r) { return r.gap >= 0 && ++r.gap; }},
      {"fresh forgotten", "needs", [](Rule& r) { return r.fresh && !(r.fresh = false); }},
      {"looks over the whole run", "needs", [](Rule& r) { return !r.look_run && (r.look_run = true); }},
      {"key forgotten", "needs", [](Rule& r) { return r.same_x >= 0 && (r.same_x = r.same_y = r.same_void = -1) < 0; }},
      {"one each forgotten", "leads", [](Rule& r) { return r.one_each && !(r.one_each = false); }},
      {"one more wanted", "count", [](Rule& r) { return ++r.count_lo > 0; }},
      {"one more allowed", "count", [](Rule& r) { return r.count_hi >= 0 && ++r.count_hi; }},
      {"different values forgotten", "count", [](Rule& r) { return r.distinct >= 0 && (r.distinct = -1) < 0; }},
      {"longer", "hold", [](Rule& r) { return ++r.duration > 0; }},
      {"longer", "steady", [](Rule& r) { return ++r.duration > 0; }},
      {"more budget", "keep", [](Rule& r) { return ++r.budget > 0; }},
      {"longer gaps", "recur", [](Rule& r) { return ++r.duration > 0; }},
      {"later", "within", [](Rule& r) { return ++r.within > 0; }},
      {"first for last", "measure",
       [](Rule& r) { return r.pick == rules::Pick::Last && ((r.pick = rules::Pick::First), true); }},
      {"each for first", "measure",
       [](Rule& r) { return r.pick == rules::Pick::First && ((r.pick = rules::Pick::Each), true); }},
      {"bound open", "measure", [](Rule& r) { return r.range_hi >= 0 && (r.range_hi = -1) < 0; }},
      {"one more pass", "rounds", [](Rule& r) { return ++r.passes > 0; }},
      {"any pattern", "rounds",
       [](Rule& r) { return r.pattern == rules::Pattern::Opposite && ((r.pattern = rules::Pattern::Any), true); }},
      {"not strict", "rounds", [](Rule& r) { return r.strict && !(r.strict = false); }},
      {"first steps for chains", "order", [](Rule& r) { return !r.first && (r.first = true); }},
      {"first for last opener", "never", form(ScopeForm::AfterLast, ScopeForm::AfterFirst, false)},
      {"weak for strong", "never", form(ScopeForm::Between, ScopeForm::FromTo, false)},
      {"until for before", "must", form(ScopeForm::BeforeFirst, ScopeForm::UntilFirst, false)},
  };
  return all;
}

bool differ(const rules::RuleProgram& program, const rules::RuleProgram& wrong, Draws& draws, std::size_t most) {
  for (int run = 0; run < 8; ++run) {
    const event::Trace trace = random_trace(draws, most);
    if (case_words(rules::judge(program, trace).rules[0]) != case_words(rules::judge(wrong, trace).rules[0]))
      return true;
  }
  return false;
}

bool is_caught(const Mutant& mutant) {
  for (std::uint64_t seed = 1; seed <= 20'000; ++seed) {
    Draws draws(seed);
    const rules::RuleSpec spec = random_rule_of(draws, mutant.kind);
    rules::RuleProgram program = compiled({spec}, 4);
    rules::RuleProgram wrong = program;
    if (!mutant.change(wrong.rules[0])) continue;
    if (differ(program, wrong, draws, std::string(mutant.kind) == "rounds" ? 24 : 14)) return true;
  }
  return false;
}

}  // namespace

TEST_CASE("rules: random runs tell every wrong reading of a rule from the right one") {
  for (const Mutant& mutant : mutants()) {
    INFO(mutant.kind << ": " << mutant.name);
    CHECK(is_caught(mutant));
  }
}

TEST_CASE("rules: random runs notice when what undoes a permission or a promise is overlooked") {
  for (const char* kind : {"needs", "leads"}) {
    bool caught = false;
    for (std::uint64_t seed = 1; seed <= 2000 && !caught; ++seed) {
      Draws draws(seed);
      rules::RuleSpec spec = random_rule_of(draws, kind);
      if (!spec.voided_by.given()) continue;
      const rules::RuleProgram program = compiled({spec}, 4);
      spec.voided_by = {};
      caught = differ(program, compiled({spec}, 4), draws, 14);
    }
    INFO(kind);
    CHECK(caught);
  }
}

}  // namespace proofstand::testing

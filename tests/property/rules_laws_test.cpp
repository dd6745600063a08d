// Danger: a mark depends on something that has nothing to do with the work: the unit of time, the order of rules, when
// somebody looked, or whether the run was interrupted.
#include <algorithm>
#include <map>

#include "tests/support/catch.h"
#include "tests/support/rules_random.h"

namespace proofstand::testing {
namespace {

// what a result says, without positions when records were added
std::string said(const rules::RuleResult& r, bool positions) {
  std::string words = std::to_string(r.score_milli) + "/" + std::string(rules::verdict_word(r.verdict)) + " " +
                      std::to_string(r.cases) + " " + std::to_string(r.ok) + " " + std::to_string(r.bad);
  return positions ? words + " " + case_words(r) + " " + std::to_string(r.broken_tick) : words;
}

template <class Law>
void for_random_pairs(std::uint64_t pairs, Law&& law) {
  for (std::uint64_t seed = 1; seed <= pairs; ++seed) {
    Draws draws(seed);
    const rules::RuleSpec spec = random_rule(draws);
    const event::Trace trace = random_trace(draws, spec.kind.text == "rounds" ? 20 : 12);
    INFO("seed " << seed << ", " << spec.kind.text << " in " << spec.scope.form.text);
    law(spec, trace, draws);
  }
}

rules::RuleResult result(const rules::RuleProgram& program, const event::Trace& trace) {
  return rules::judge(program, trace).rules[0];
}

}  // namespace

TEST_CASE("rules: finer ticks change nothing") {
  for_random_pairs(1500, [](const rules::RuleSpec& spec, const event::Trace& trace, Draws& draws) {
    const auto k = static_cast<std::int64_t>(2 + draws.below(5));
    rules::CompileInput fine = toy_input({spec}, 4);
    fine.ticks_per_s = k;
    event::Trace slow = trace;
    slow.end_tick *= k;
    for (event::Record& record : slow.records) record.tick *= k;
    const std::string coarse = said(result(compiled({spec}, 4), trace), false);
    REQUIRE(said(result(compiled(fine), slow), false) == coarse);
  });
}

TEST_CASE("rules: records that no rule reads change nothing, nor does setting a value to what it is") {
  for_random_pairs(1500, [](const rules::RuleSpec& spec, const event::Trace& trace, Draws& draws) {
    if (spec.x.event.text == "phi") return;
    event::Trace more = trace;
    const auto at = static_cast<std::ptrdiff_t>(1 + draws.below(trace.records.size()));
    event::Record other;
    other.kind = 'Q' - 'A';
    other.tick = more.records[static_cast<std::size_t>(at - 1)].tick;
    if (draws.one_in(2)) {
      // the same value again
      other.kind = 26;
      for (std::ptrdiff_t i = 0; i < at; ++i) {
        const event::Record& before = trace.records[static_cast<std::size_t>(i)];
        if (before.kind == 26) other.values[0] = before.values[0];
      }
    }
    more.records.insert(more.records.begin() + at, other);
    const rules::RuleProgram program = compiled({spec}, 4);
    REQUIRE(said(result(program, more), false) == said(result(program, trace), false));
  });
}

TEST_CASE("rules: a weaker bound never loses what a stricter one kept") {
  for_random_pairs(2500, [](const rules::RuleSpec& spec, const event::Trace& trace, Draws&) {
    rules::RuleProgram program = compiled({spec}, 4);
    rules::RuleProgram weaker = program;
    rules::Rule& rule = weaker.rules[0];
    if (rule.one_each) return;
    if (rule.within >= 0) ++rule.within;
    if (rule.gap > 0) --rule.gap;
    if (rule.duration > 1 && rule.kind != rules::RuleKind::Recur) --rule.duration;
    if (rule.kind == rules::RuleKind::Recur) ++rule.duration;
    ++rule.budget;
    if (rule.count_hi >= 0) ++rule.count_hi;
    if (rule.count_lo > 0) --rule.count_lo;
    if (rule.passes > 1) --rule.passes;
    const rules::RuleResult strict = result(program, trace);
    const rules::RuleResult loose = result(weaker, trace);
    REQUIRE(strict.cases == loose.cases);
    for (const rules::Case& kept : strict.ok_cases) {
      REQUIRE(std::none_of(loose.bad_cases.begin(), loose.bad_cases.end(), [&](const rules::Case& lost) {
        return lost.anchor == kept.anchor && kept.anchor >= 0 && lost.items == kept.items;
      }));
    }
    REQUIRE(loose.ok >= strict.ok);
  });
}

TEST_CASE("rules: rounds do not know which bolt is the first, nor which way round") {
  for (std::uint64_t seed = 1; seed <= 1500; ++seed) {
    Draws draws(seed);
    rules::RuleSpec spec = random_rule_of(draws, "rounds");
    if (spec.pattern.text == "listed") continue;
    spec.scope = {};
    spec.x = on("A");
    const rules::RuleProgram program = compiled({spec}, 4);
    event::Trace trace = random_trace(draws, 24);
    event::Trace turned = trace;
    const double turn = static_cast<double>(draws.below(4));
    const bool mirror = draws.one_in(2);
    for (event::Record& record : turned.records) {
      if (record.kind == 26) continue;
      const double image = mirror ? 4.0 - record.values[0] : record.values[0];
      record.values[0] = static_cast<double>(static_cast<int>(image + turn) % 4);
    }
    INFO("seed " << seed);
    REQUIRE(said(result(program, turned), false) == said(result(program, trace), false));
  }
}

TEST_CASE("rules: a strong scope judges no case that its weak sister does not") {
  static const std::pair<const char*, const char*> kSisters[] = {{"between", "from_to"},
                                                                 {"before_first", "until_first"}};
  for_random_pairs(2000, [](rules::RuleSpec spec, const event::Trace& trace, Draws& draws) {
    const auto& [strong, weak] = kSisters[draws.below(2)];
    const bool opens = std::string(strong) == "between";
    spec.scope = scope(strong, opens ? on("A") : rules::SelectorSpec{}, on("B"));
    const rules::RuleResult few = result(compiled({spec}, 4), trace);
    spec.scope.form = at(weak);
    const rules::RuleResult many = result(compiled({spec}, 4), trace);
    const auto has = [](const std::vector<rules::Case>& all, const rules::Case& one) {
      return std::any_of(all.begin(), all.end(), [&](const rules::Case& other) {
        return other.anchor == one.anchor && other.items == one.items;
      });
    };
    for (const rules::Case& one : few.ok_cases) REQUIRE(has(many.ok_cases, one));
    for (const rules::Case& one : few.bad_cases) REQUIRE(has(many.bad_cases, one));
  });
}

TEST_CASE("rules: of two records at one moment, one that no rule reads may come first or last") {
  for_random_pairs(1500, [](const rules::RuleSpec& spec, const event::Trace& trace, Draws& draws) {
    if (trace.records.empty()) return;
    const auto at = static_cast<std::ptrdiff_t>(draws.below(trace.records.size()));
    event::Record other;
    other.kind = 'Q' - 'A';
    other.tick = trace.records[static_cast<std::size_t>(at)].tick;
    event::Trace before = trace, after = trace;
    before.records.insert(before.records.begin() + at, other);
    after.records.insert(after.records.begin() + at + 1, other);
    const rules::RuleProgram program = compiled({spec}, 4);
    REQUIRE(said(result(program, before), false) == said(result(program, after), false));
  });
}

TEST_CASE("rules: a run that goes on after a stretch has closed adds its cases to those before") {
  std::uint64_t with_cases = 0;
  for_random_pairs(2500, [&](rules::RuleSpec spec, const event::Trace& first, Draws& draws) {
    // what remembers a fluent, or counts over the whole run, is not the sum of its stretches
    static const std::vector<std::string> kOfEvents = {"must", "never", "needs", "leads", "order", "count"};
    if (std::find(kOfEvents.begin(), kOfEvents.end(), spec.kind.text) == kOfEvents.end()) return;
    for (const rules::SelectorSpec* selector : {&spec.x, &spec.y, &spec.voided_by}) {
      if ((selector->event.text + selector->where.text).find("phi") != std::string::npos) return;
    }
    spec.scope = scope("from_to", on("A"), on("B"));
    event::Trace closed = first;
    event::Record closing;
    closing.kind = 'B' - 'A';
    closing.tick = closed.end_tick;
    closed.records.push_back(closing);
    const event::Trace second = random_trace(draws, 12);
    event::Trace whole = closed;
    for (event::Record record : second.records) {
      if (record.kind == 26 && record.tick == 0) continue;  // the fluent's start is not told twice
      record.tick += closed.end_tick;
      whole.records.push_back(record);
    }
    whole.end_tick = closed.end_tick + second.end_tick;
    const rules::RuleProgram program = compiled({spec}, 4);
    const rules::RuleResult a = result(program, closed), b = result(program, second), both = result(program, whole);
    INFO(said(a, false) << " | " << said(b, false) << " | " << said(both, false));
    REQUIRE(both.cases == a.cases + b.cases);
    REQUIRE(both.ok == a.ok + b.ok);
    REQUIRE(both.bad == a.bad + b.bad);
    with_cases += a.cases > 0 && b.cases > 0 ? 1 : 0;
  });
  CHECK(with_cases > 20);  // sums of nothing prove nothing
}

TEST_CASE("rules: looking in between changes nothing") {
  for_random_pairs(2000, [](const rules::RuleSpec& spec, const event::Trace& trace, Draws& draws) {
    const rules::RuleProgram program = compiled({spec}, 4);
    rules::EngineState state = rules::start(program);
    for (const event::Record& record : trace.records) {
      while (state.tick < record.tick && draws.one_in(2)) rules::advance(program, state, state.tick + 1);
      rules::feed(program, state, record);
    }
    while (state.tick < trace.end_tick && draws.one_in(2)) rules::advance(program, state, state.tick + 1);
    const rules::RuleResult looked = rules::finish(program, state, trace.end_tick, trace.end).rules[0];
    REQUIRE(said(looked, true) == said(result(program, trace), true));
  });
}

TEST_CASE("rules: the state can be written and read back at any record") {
  for_random_pairs(1500, [](const rules::RuleSpec& spec, const event::Trace& trace, Draws& draws) {
    const rules::RuleProgram program = compiled({spec}, 4);
    const std::uint64_t stop = draws.below(trace.records.size() + 1);
    rules::EngineState state = rules::start(program);
    for (std::size_t i = 0; i < trace.records.size(); ++i) {
      if (i == stop) {
        base::ByteWriter bytes;
        rules::write_state(program, state, bytes);
        base::ByteReader reader(bytes.bytes());
        base::Result<rules::EngineState> restored = rules::read_state(program, reader);
        REQUIRE(restored.has_value());
        REQUIRE(reader.at_end());
        base::ByteWriter again;
        rules::write_state(program, *restored, again);
        REQUIRE(again.bytes() == bytes.bytes());
        state = std::move(*restored);
      }
      rules::feed(program, state, trace.records[i]);
    }
    const rules::RuleResult restored = rules::finish(program, state, trace.end_tick, trace.end).rules[0];
    REQUIRE(said(restored, true) == said(result(program, trace), true));
  });
}

TEST_CASE("rules: neither their order nor their neighbours change a verdict") {
  for (std::uint64_t seed = 1; seed <= 200; ++seed) {
    Draws draws(seed);
    std::vector<rules::RuleSpec> specs;
    for (int i = 0; i < 8; ++i) specs.push_back(random_rule(draws, "r" + std::to_string(i)));
    std::vector<rules::RuleSpec> turned(specs.rbegin(), specs.rend());
    const rules::RuleProgram all = compiled(specs, 4);
    const rules::RuleProgram back = compiled(turned, 4);
    for (int run = 0; run < 3; ++run) {
      const event::Trace trace = random_trace(draws);
      const rules::Report together = rules::judge(all, trace);
      const rules::Report reversed = rules::judge(back, trace);
      for (std::size_t i = 0; i < specs.size(); ++i) {
        INFO("seed " << seed << ", " << specs[i].kind.text);
        const std::string alone = said(result(compiled({specs[i]}, 4), trace), true);
        REQUIRE(said(together.rules[i], true) == alone);
        REQUIRE(said(reversed.rules[specs.size() - 1 - i], true) == alone);
      }
    }
  }
}

TEST_CASE("rules: points stay within what was judged, and what was judged within what was declared") {
  static const char* const kCredits[] = {"all", "share", "worst"};
  static const char* const kIdles[] = {"exclude", "fail"};
  for (std::uint64_t seed = 1; seed <= 400; ++seed) {
    Draws draws(seed);
    std::vector<rules::RuleSpec> specs;
    for (int i = 0; i < 6; ++i) {
      specs.push_back(random_rule(draws, "r" + std::to_string(i)));
      specs.back().points_milli = static_cast<std::int64_t>(500 + draws.below(5000));
      specs.back().credit = at(kCredits[draws.below(3)]);
      specs.back().idle = at(kIdles[draws.below(2)]);
    }
    specs[1].after_failure_of = {at("r0")};
    const rules::RuleProgram program = compiled(specs, 4);
    const rules::Totals totals = rules::judge(program, random_trace(draws)).totals;
    INFO("seed " << seed);
    REQUIRE(totals.earned_milli >= 0);
    REQUIRE(totals.earned_milli <= totals.judged_milli);
    REQUIRE(totals.judged_milli <= totals.covered_milli);
    REQUIRE(totals.covered_milli <= totals.declared_milli);
  }
}

TEST_CASE("rules: one answer each serves as many as any other way of pairing") {
  std::uint64_t with_pairs = 0;
  for (std::uint64_t seed = 1; seed <= 1500; ++seed) {
    Draws draws(seed);
    rules::RuleSpec spec = rule("leads");
    spec.x = on("A");
    spec.y = on("B");
    spec.within = at(std::to_string(draws.below(6)) + " s");
    spec.one_each = true;
    event::Trace trace = random_trace(draws, 12);
    for (event::Record& record : trace.records) {
      if (record.kind != 26) record.kind = static_cast<event::KindId>(record.kind % 2);
    }
    const rules::RuleProgram program = compiled({spec}, 4);
    // largest pairing by trying to free a partner for each x in turn
    const auto fits = [&](std::size_t x, std::size_t y) {
      const auto& r = trace.records;
      return y > x && r[x].kind == 0 && r[y].kind == 1 && r[y].tick - r[x].tick <= program.rules[0].within;
    };
    std::map<std::size_t, std::size_t> partner;
    std::vector<bool> tried;
    const std::size_t n = trace.records.size();
    const auto free_for = [&](auto&& self, std::size_t x) -> bool {
      for (std::size_t y = 0; y < n; ++y) {
        if (!fits(x, y) || tried[y]) continue;
        tried[y] = true;
        if (partner.count(y) == 0 || self(self, partner[y])) {
          partner[y] = x;
          return true;
        }
      }
      return false;
    };
    std::int64_t most = 0;
    for (std::size_t x = 0; x < n; ++x) {
      tried.assign(n, false);
      if (free_for(free_for, x)) ++most;
    }
    INFO("seed " << seed);
    REQUIRE(result(program, trace).ok == most);
    if (most > 1) ++with_pairs;
  }
  CHECK(with_pairs > 300);
}

}  // namespace proofstand::testing

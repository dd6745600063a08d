// Danger: a hint says "lost" while the job can still be saved, or says it too late.
#include "sim/rules/live.h"
#include "tests/support/catch.h"
#include "tests/support/rules_random.h"

namespace proofstand::testing {

using rules::LiveStatus;

TEST_CASE("rules: what is called met or broken stays so, from the exact moment") {
  std::uint64_t met = 0;
  std::uint64_t broken = 0;
  for (std::uint64_t seed = 1; seed <= 2500; ++seed) {
    Draws draws(seed);
    const rules::RuleSpec spec = random_rule(draws);
    const rules::RuleProgram program = compiled({spec}, 4);
    const event::Trace trace = random_trace(draws, 14);
    const rules::RuleResult last = rules::judge(program, trace).rules[0];
    rules::EngineState state = rules::start(program);
    LiveStatus before = LiveStatus::Idle;
    INFO("seed " << seed << ", " << spec.kind.text << " in " << spec.scope.form.text);
    for (const event::Record& record : trace.records) {
      rules::feed(program, state, record);
      const rules::LiveRule live = rules::live_view(program, state)[0];
      if (before == LiveStatus::Met || before == LiveStatus::Broken) REQUIRE(live.status == before);
      if (live.status == LiveStatus::Met) REQUIRE(last.verdict == rules::Verdict::Pass);
      if (live.status == LiveStatus::Broken) {
        REQUIRE(last.score_milli < 1000);
        REQUIRE(last.bad > 0);
        REQUIRE(live.since_tick <= state.tick);
        REQUIRE(live.since_tick >= last.broken_tick);
        REQUIRE(live.lost_milli > 0);
      }
      before = live.status;
    }
    if (before == LiveStatus::Met) ++met;
    if (before == LiveStatus::Broken) ++broken;
  }
  CHECK(met > 50);
  CHECK(broken > 300);
}

TEST_CASE("rules: a rule that a moment can break is called broken at that very moment") {
  // looked at every tick, the first "broken" must come at the tick that the case names as settled
  std::uint64_t seen = 0;
  for (std::uint64_t seed = 1; seed <= 1500; ++seed) {
    static const char* const kPrompt[] = {"never", "needs", "leads", "keep", "within", "recur"};
    Draws draws(seed);
    rules::RuleSpec spec = random_rule_of(draws, kPrompt[draws.below(6)]);
    spec.scope = {};
    const rules::RuleProgram program = compiled({spec}, 4);
    const event::Trace trace = random_trace(draws, 12);
    const base::Tick due = rules::judge(program, trace).rules[0].broken_tick;
    rules::EngineState state = rules::start(program);
    base::Tick noticed = rules::kNoTick;
    const auto look = [&] {
      if (noticed == rules::kNoTick && rules::live_view(program, state)[0].status == LiveStatus::Broken)
        noticed = state.tick;
    };
    for (const event::Record& record : trace.records) {
      while (state.tick < record.tick) {
        rules::advance(program, state, state.tick + 1);
        look();
      }
      rules::feed(program, state, record);
      look();
    }
    while (state.tick < trace.end_tick) {
      rules::advance(program, state, state.tick + 1);
      look();
    }
    if (due == rules::kNoTick || due >= trace.end_tick) continue;
    ++seen;
    INFO("seed " << seed << ", " << spec.kind.text);
    REQUIRE(noticed == due);
  }
  CHECK(seen > 200);
}

}  // namespace proofstand::testing

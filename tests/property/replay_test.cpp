// Danger: replay that is only nearly the run makes records worthless as proof. Replay equals run, whatever the variant;
// taking a practice run back and going on equals a run that was never taken back.
#include "sim/record/attempt_reader.h"
#include "sim/record/marking.h"
#include "sim/record/replay_check.h"
#include "tests/support/catch.h"
#include "tests/support/scripted_attempt.h"

namespace proofstand::testing {

TEST_CASE("replay equals run, on several variants") {
  for (std::uint64_t seed = 0; seed < 6; ++seed) {
    const auto worked = work_attempt(worn_front_rotor(seed), reference_script());
    const auto attempt = record::read_attempt(*worked.bytes, "test.attempt");
    REQUIRE(attempt);
    const auto scenario = record::scenario_of(*attempt);
    REQUIRE(scenario);
    const auto check = record::check_replay(*attempt, *scenario);
    REQUIRE(check);
    INFO("seed " << seed << ": " << (check->first ? check->first->field : std::string()));
    CHECK_FALSE(check->first);
    CHECK(check->states > 20);
  }
}

TEST_CASE("a session taken back and worked again the same way has the same bench and the same rules' state") {
  const scenario::DrawnScenario scenario = worn_front_rotor(1);
  const auto worked = work_attempt(scenario, short_script());
  const auto attempt = record::read_attempt(*worked.bytes, "test.attempt");
  REQUIRE(attempt);
  const auto bytes = std::make_shared<std::string>();
  auto session = record::Session::begin(std::make_unique<record::MemorySink>(bytes), {}, scenario);
  REQUIRE(session);
  const auto play = [&](base::Tick from) {
    for (const event::Action& action : attempt->actions) {
      if (action.tick <= from || session->closed()) continue;
      session->act(action);
      REQUIRE(session->keep());
    }
  };
  base::Tick back = 0;
  for (const event::Action& action : attempt->actions) {
    if (action.tick <= attempt->last_tick / 2) back = action.tick;
  }
  // up to three quarters, back to the middle, then to the end
  for (const event::Action& action : attempt->actions) {
    if (action.tick > attempt->last_tick * 3 / 4) break;
    session->act(action);
    REQUIRE(session->keep());
  }
  REQUIRE(session->rewind(back));
  CHECK(session->bench().tick() == back);
  play(back);
  REQUIRE(session->closed());
  const auto second = record::read_attempt(*bytes, "test.attempt");
  REQUIRE(second);
  CHECK(second->rewinds.size() == 1);
  REQUIRE(second->closing);
  CHECK(second->closing->trace_hash == attempt->closing->trace_hash);
  const auto drawn = record::scenario_of(*second);
  REQUIRE(drawn);
  const auto check = record::check_replay(*second, *drawn);
  REQUIRE(check);
  INFO((check->first ? check->first->field : std::string()));
  CHECK_FALSE(check->first);
}

}  // namespace proofstand::testing

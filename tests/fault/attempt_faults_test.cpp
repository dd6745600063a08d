// Danger: a full disk, a killed program or a torn line must never cost more than the last moment, nor the marks.
#include "sim/record/attempt_reader.h"
#include "sim/record/marking.h"
#include "sim/record/replay_check.h"
#include "tests/support/catch.h"
#include "tests/support/scripted_attempt.h"

namespace proofstand::testing {
namespace {

std::size_t lines_of(const std::string& bytes) {
  std::size_t lines = 0;
  for (const char c : bytes) lines += c == '\n' ? 1 : 0;
  return lines;
}

// verdicts of all rules, in words: what must survive every accident
std::string verdicts_of(const std::string& bytes) {
  auto attempt = record::read_attempt(bytes, "test.attempt");
  REQUIRE(attempt);
  REQUIRE(attempt->closing);
  const auto marking = record::mark_attempt(std::move(*attempt));
  REQUIRE(marking);
  std::string out;
  for (const rules::RuleResult& result : marking->report.rules) {
    out += marking->program.id_of(result.rule) + " " + std::string(rules::verdict_word(result.verdict)) + "\n";
  }
  return out;
}

void require_replay_equal(const std::string& bytes) {
  const auto attempt = record::read_attempt(bytes, "test.attempt");
  REQUIRE(attempt);
  const auto scenario = record::scenario_of(*attempt);
  REQUIRE(scenario);
  const auto check = record::check_replay(*attempt, *scenario);
  REQUIRE(check);
  INFO((check->first ? check->first->field : std::string()));
  CHECK_FALSE(check->first);
  CHECK(check->events > 0);
}

}  // namespace

TEST_CASE("a short job closes, marks and replays") {
  const auto whole = work_attempt(worn_front_rotor(0), short_script());
  REQUIRE_FALSE(whole.error);
  INFO((whole.stuck ? whole.stuck->sentence() : std::string()));
  REQUIRE(whole.closed);
  require_replay_equal(*whole.bytes);
}

TEST_CASE("whichever write fails, what was written can be gone on with to the same marks") {
  const scenario::DrawnScenario scenario = worn_front_rotor(0);
  const auto whole = work_attempt(scenario, short_script());
  REQUIRE(whole.closed);
  const std::string expected = verdicts_of(*whole.bytes);
  std::size_t failed = 0;
  for (std::size_t n = 1;; ++n) {
    const std::size_t part = (n * 37) % 90;
    const auto broken = work_attempt(scenario, short_script(), record::Way::Exam, n, part);
    if (!broken.error) break;
    ++failed;
    INFO("write " << n << " fails after " << part << " bytes");
    CHECK(broken.error->code == "file-write");
    CHECK_FALSE(broken.closed);
    const auto resumed = resume_attempt(*broken.bytes, short_script());
    if (n == 1) {
      CHECK(resumed.error);
      continue;
    }
    REQUIRE_FALSE(resumed.error);
    REQUIRE(resumed.closed);
    CHECK(verdicts_of(*resumed.bytes) == expected);
    require_replay_equal(*resumed.bytes);
  }
  CHECK(failed == lines_of(*whole.bytes));
}

TEST_CASE("killed at every line, then killed again, the attempt is still finished with the same marks") {
  const auto whole = work_attempt(worn_front_rotor(0), short_script());
  REQUIRE(whole.closed);
  const std::string expected = verdicts_of(*whole.bytes);
  const std::size_t lines = lines_of(*whole.bytes);
  std::size_t at = 0;
  for (std::size_t line = 1; line < lines; ++line) {
    at = whole.bytes->find('\n', at) + 1;
    INFO("killed after line " << line);
    const auto once = resume_attempt(whole.bytes->substr(0, at), short_script(), 6);
    const std::string again = *once.bytes;
    const auto resumed = once.closed ? once : resume_attempt(again, short_script());
    REQUIRE_FALSE(resumed.error);
    REQUIRE(resumed.closed);
    CHECK(verdicts_of(*resumed.bytes) == expected);
    require_replay_equal(*resumed.bytes);
  }
}

TEST_CASE("an attempt that was closed is never written to again") {
  const auto whole = work_attempt(worn_front_rotor(0), short_script());
  REQUIRE(whole.closed);
  const auto resumed = resume_attempt(*whole.bytes, short_script());
  REQUIRE(resumed.error);
  CHECK(resumed.error->code == "closed");
  CHECK(*resumed.bytes == *whole.bytes);
}

TEST_CASE("resuming with another script is refused, not mixed") {
  const auto whole = work_attempt(worn_front_rotor(0), short_script());
  std::size_t at = 0;
  for (int line = 0; line < 12; ++line) at = whole.bytes->find('\n', at) + 1;
  std::string other = short_script();
  other.replace(other.find("20"), 2, "90");
  const auto resumed = resume_attempt(whole.bytes->substr(0, at), other);
  REQUIRE(resumed.error);
  CHECK(resumed.error->code == "other-script");
}

TEST_CASE("an attempt cut off and never resumed is marked as far as it goes, and called not judged") {
  const auto whole = work_attempt(worn_front_rotor(0), short_script());
  std::size_t half = 0;
  for (std::size_t line = 0; line < lines_of(*whole.bytes) / 2; ++line) half = whole.bytes->find('\n', half) + 1;
  auto attempt = record::read_attempt(whole.bytes->substr(0, half), "test.attempt");
  REQUIRE(attempt);
  REQUIRE_FALSE(attempt->closing);
  const auto marking = record::mark_attempt(std::move(*attempt));
  REQUIRE(marking);
  CHECK(marking->replayed);
  CHECK(marking->report.overall == rules::Overall::NotJudged);
}

TEST_CASE("a recorded action that was changed and resealed makes the replay diverge, with tick and field") {
  const auto whole = work_attempt(worn_front_rotor(0), short_script());
  auto attempt = record::read_attempt(*whole.bytes, "test.attempt");
  REQUIRE(attempt);
  const auto scenario = record::scenario_of(*attempt);
  REQUIRE(scenario);
  // another thing is taken than was
  bool changed = false;
  for (event::Action& action : attempt->actions) {
    if (changed || action.kind != event::ActionKind::Take) continue;
    action.numbers[1] = action.numbers[1] == 0 ? 1 : action.numbers[1] - 1;
    changed = true;
  }
  REQUIRE(changed);
  const auto check = record::check_replay(*attempt, *scenario);
  REQUIRE(check);
  REQUIRE(check->first);
  CHECK(check->first->tick > 0);
  CHECK_FALSE(check->first->field.empty());
}

TEST_CASE("an attempt of another bench is marked but not replayed, and says so") {
  const auto whole = work_attempt(worn_front_rotor(0), short_script());
  auto attempt = record::read_attempt(*whole.bytes, "test.attempt");
  REQUIRE(attempt);
  attempt->head.bench += 1;
  const auto scenario = record::scenario_of(*attempt);
  REQUIRE(scenario);
  const auto check = record::check_replay(*attempt, *scenario);
  REQUIRE_FALSE(check);
  CHECK(check.error().code == "other-bench");
  CHECK(record::mark_attempt(std::move(*attempt)));
}

}  // namespace proofstand::testing

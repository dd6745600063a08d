#include "tests/support/scripted_attempt.h"

#include "sim/record/attempt_reader.h"
#include "sim/record/marking.h"

namespace proofstand::testing {
namespace {

constexpr std::uint64_t kHandSeed = 5;

hand::ModelledHand make_hand(std::string_view script, const scenario::DrawnScenario& scenario) {
  hand::ReadScript read = hand::read_hand_script(script, "test.hand", scenario.setup);
  STAND_ASSERT(read.script != nullptr);
  return hand::ModelledHand(read.script, hand::journeyman(), kHandSeed);
}

void work(ScriptedAttempt& out, hand::ModelledHand& hand, record::Session& session) {
  const auto run = record::work_script(hand, session);
  if (!run) {
    out.error = run.error();
    return;
  }
  out.stuck = run->stuck;
  out.closed = session.closed();
}

}  // namespace

scenario::DrawnScenario worn_front_rotor(std::uint64_t seed) {
  const scenario::Loaded loaded =
      scenario::load_scenario(std::string(PROOFSTAND_ROOT) + "/scenarios/six-bolt/worn-front-rotor.toml");
  STAND_ASSERT(loaded.usable);
  auto drawn = scenario::draw(*loaded.file, seed);
  STAND_ASSERT(drawn.has_value());
  return std::move(*drawn);
}

std::string reference_script() {
  const auto text =
      record::load_bytes(std::string(PROOFSTAND_ROOT) + "/demo/scripts/worn-front-rotor.hand", std::size_t{1} << 20);
  STAND_ASSERT(text.has_value());
  return *text;
}

std::string short_script() {
  return "measure the thickness of the old rotor with the micrometer at 72 mm, at 20\xC2\xB0\n"
         "write the least reading of the old rotor as old thickness\n"
         "for each N of 1, 4:\n"
         "    crack bolt N with the key\n"
         "hand over\n";
}

ScriptedAttempt work_attempt(const scenario::DrawnScenario& scenario, std::string_view script, record::Way way,
                             std::size_t fail_at, std::size_t part) {
  ScriptedAttempt out;
  record::AttemptHead head;
  head.program = "test";
  head.hand = "journeyman";
  head.hand_seed = static_cast<std::int64_t>(kHandSeed);
  head.way = way;
  auto session = record::Session::begin(std::make_unique<record::MemorySink>(out.bytes, fail_at, part), head, scenario);
  if (!session) {
    out.error = session.error();
    return out;
  }
  hand::ModelledHand hand = make_hand(script, scenario);
  work(out, hand, *session);
  return out;
}

ScriptedAttempt resume_attempt(const std::string& bytes, std::string_view script, std::size_t fail_at,
                               std::size_t part) {
  ScriptedAttempt out;
  const auto attempt = record::read_attempt(bytes, "test.attempt");
  if (!attempt) {
    out.error = attempt.error();
    return out;
  }
  *out.bytes = bytes.substr(0, attempt->good_bytes);
  const auto scenario = record::scenario_of(*attempt);
  STAND_ASSERT(scenario.has_value());
  hand::ModelledHand hand = make_hand(script, *scenario);
  const auto caught_up = record::catch_up(hand, *attempt, *scenario);
  if (!caught_up) {
    out.error = caught_up.error();
    return out;
  }
  auto session =
      record::Session::go_on(std::make_unique<record::MemorySink>(out.bytes, fail_at, part), *attempt, *scenario);
  if (!session) {
    out.error = session.error();
    return out;
  }
  hand.begin_instruction_again();
  work(out, hand, *session);
  return out;
}

}  // namespace proofstand::testing

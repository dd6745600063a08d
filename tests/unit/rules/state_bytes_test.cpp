// Danger: a rewind goes on from a state that is not the one that was kept, or a damaged one brings the program down.
#include "tests/support/catch.h"
#include "tests/support/rules_random.h"
#include "tests/support/rules_toy.h"

namespace proofstand::testing {
namespace {

std::vector<rules::RuleSpec> one_of_each() {
  std::vector<rules::RuleSpec> specs;
  Draws draws(7);
  for (const char* kind : {"must", "never", "count", "needs", "leads", "order", "hold", "steady", "keep", "measure",
                           "rounds", "within", "recur"}) {
    specs.push_back(random_rule_of(draws, kind, kind));
  }
  return specs;
}

std::string bytes_after(const rules::RuleProgram& program, const event::Trace& trace) {
  rules::EngineState state = rules::start(program);
  for (const event::Record& record : trace.records) rules::feed(program, state, record);
  base::ByteWriter out;
  rules::write_state(program, state, out);
  return out.bytes();
}

}  // namespace

TEST_CASE("a state of other rules is refused with a sentence") {
  Draws draws(3);
  const rules::RuleProgram all = compiled(one_of_each(), 4);
  const std::string bytes = bytes_after(all, random_trace(draws, 40));
  std::vector<rules::RuleSpec> fewer = one_of_each();
  fewer.pop_back();
  base::ByteReader in(bytes);
  const auto read = rules::read_state(compiled(fewer, 4), in);
  REQUIRE(!read.has_value());
  CHECK(read.error().code == "state-of-other-rules");
  CHECK(!read.error().instead.empty());
}

TEST_CASE("a damaged state is refused, or goes on without harm") {
  const rules::RuleProgram program = compiled(one_of_each(), 4);
  Draws draws(11);
  const event::Trace trace = random_trace(draws, 40);
  const std::string whole = bytes_after(program, trace);
  std::size_t refused = 0;
  for (std::size_t length = 0; length < whole.size(); length += 1 + draws.below(97)) {
    base::ByteReader in(std::string_view(whole).substr(0, length));
    if (!rules::read_state(program, in).has_value()) ++refused;
  }
  CHECK(refused > 10);
  for (int round = 0; round < 1500; ++round) {
    std::string bytes = whole;
    // beyond the version and the fingerprint, anything may be wrong
    const std::size_t at = 16 + draws.below(bytes.size() - 16);
    bytes[at] = static_cast<char>(draws.below(256));
    base::ByteReader in(bytes);
    base::Result<rules::EngineState> state = rules::read_state(program, in);
    if (!state.has_value()) continue;
    event::Record record;
    record.kind = 0;
    record.tick = state->tick;
    rules::feed(program, *state, record);
    const rules::Report report = rules::finish(program, *state, state->tick, event::EndReason::Finished);
    CHECK(report.rules.size() == program.rules.size());
  }
}

TEST_CASE("two runs over the same records give the same bytes") {
  const rules::RuleProgram program = compiled(one_of_each(), 4);
  Draws draws(5);
  const event::Trace trace = random_trace(draws, 60);
  CHECK(bytes_after(program, trace) == bytes_after(program, trace));
}

}  // namespace proofstand::testing

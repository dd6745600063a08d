// Danger: a refusal's code and the word in its event drifting apart would tell the trainee another reason than the
// bench's.
#include "sim/bench/refusal.h"

#include "sim/event/job_events.h"
#include "tests/support/catch.h"

using namespace proofstand;

TEST_CASE("refusal codes are the words of the event that reports them, in order") {
  const event::Vocabulary vocabulary = event::job_vocabulary({});
  const event::Kind& kind = vocabulary.kinds[*vocabulary.find_kind("refused")];
  const auto& words = kind.fields[*event::Vocabulary::find_field(kind, "why")].choices;
  for (std::size_t i = 0; i < words.size(); ++i) {
    CHECK(bench::code_of(static_cast<bench::Refusal>(i)) == words[i]);
  }
  CHECK(static_cast<std::size_t>(bench::Refusal::WheelTurning) + 1 == words.size());
}

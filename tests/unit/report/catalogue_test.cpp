// Danger: a code without a sentence reaches a person as a code; a sentence with the wrong slots says nonsense.
#include "sim/report/catalogue.h"

#include <algorithm>

#include "sim/event/job_events.h"
#include "sim/rules/report.h"
#include "tests/support/catch.h"

namespace proofstand::report {

TEST_CASE("every refusal of the vocabulary has its sentence") {
  const event::Vocabulary vocabulary = event::job_vocabulary({});
  const auto kind = vocabulary.find_kind("refused");
  REQUIRE(kind);
  const auto why = event::Vocabulary::find_field(vocabulary.kinds[*kind], "why");
  REQUIRE(why);
  for (const std::string& code : vocabulary.kinds[*kind].fields[*why].choices) {
    INFO(code);
    CHECK(has_phrase("refusal." + code));
  }
}

TEST_CASE("every verdict, reason and idle reason of the rules has its sentence") {
  for (int i = 0; i <= static_cast<int>(rules::Reason::CutOff); ++i) {
    const std::string key = "case." + std::string(rules::reason_word(static_cast<rules::Reason>(i)));
    INFO(key);
    CHECK(has_phrase(key));
  }
  for (int i = 0; i <= static_cast<int>(rules::OverallReason::CriticalUnjudged); ++i) {
    const std::string key = "reason." + std::string(rules::overall_reason_word(static_cast<rules::OverallReason>(i)));
    INFO(key);
    CHECK(has_phrase(key));
  }
  for (int i = 1; i <= static_cast<int>(rules::IdleReason::ChildrenIdle); ++i) {
    const std::string key = "idle." + std::string(rules::idle_word(static_cast<rules::IdleReason>(i)));
    INFO(key);
    CHECK(has_phrase(key));
  }
  for (int i = 0; i <= static_cast<int>(rules::Overall::NotJudged); ++i) {
    CHECK(has_phrase("verdict." + std::string(rules::overall_word(static_cast<rules::Overall>(i)))));
  }
}

TEST_CASE("keys are unique and no sentence is empty") {
  std::vector<std::string_view> keys = phrase_keys();
  std::sort(keys.begin(), keys.end());
  CHECK(std::adjacent_find(keys.begin(), keys.end()) == keys.end());
  for (const std::string_view key : keys) CHECK_FALSE(phrase(key, "en").empty());
}

TEST_CASE("slots are filled in order, and a language that lacks a sentence speaks English") {
  CHECK(phrase("case.below", "en", {"4 N", "5 N"}) == "below the range: 4 N, asked 5 N");
  CHECK(phrase("verdict.passed", "de") == "Bestanden");
  CHECK(phrase("case.late", "de") == phrase("case.late", "en"));
}

}  // namespace proofstand::report

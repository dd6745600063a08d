// Danger: text, JSON and page of one attempt that say different things; or a finding without its proof.
#include "sim/report/mark_sheet_text.h"

#include "sim/base/words.h"
#include "sim/record/attempt_reader.h"
#include "sim/record/json_text.h"
#include "sim/record/marking.h"
#include "sim/report/make_mark_sheet.h"
#include "tests/support/catch.h"
#include "tests/support/scripted_attempt.h"

namespace proofstand::report {
namespace {

// marked once: the short job, which leaves most of the work undone
const record::Marking& short_job() {
  static const record::Marking marking = [] {
    const auto worked = testing::work_attempt(testing::worn_front_rotor(2), testing::short_script());
    auto attempt = record::read_attempt(*worked.bytes, "short.attempt");
    STAND_ASSERT(attempt.has_value());
    auto marked = record::mark_attempt(std::move(*attempt));
    STAND_ASSERT(marked.has_value());
    return std::move(*marked);
  }();
  return marking;
}

std::size_t columns_of(std::string_view text) {
  std::size_t columns = 0;
  for (const char c : text) columns += (static_cast<unsigned char>(c) & 0xC0U) == 0x80U ? 0 : 1;
  return columns;
}

}  // namespace

TEST_CASE("every rule of the exercise stands on the sheet once") {
  const MarkSheet sheet = make_mark_sheet(short_job(), "en");
  CHECK(sheet.lost.size() + sheet.met.size() + sheet.aside.size() == short_job().report.rules.size());
  CHECK(sheet.bolts.size() == 6);
  CHECK(sheet.faces.size() == 2);
  CHECK(sheet.joint);
  CHECK(sheet.card.size() == short_job().scenario.setup.card.size());
  CHECK_FALSE(sheet.cautions.empty());
  CHECK_FALSE(sheet.reason.empty());
}

TEST_CASE("what was lost is said in a sentence, says why, and costs what the report says") {
  const MarkSheet sheet = make_mark_sheet(short_job(), "en");
  REQUIRE_FALSE(sheet.lost.empty());
  std::int64_t earned = 0;
  for (const std::vector<FindingLine>* list : {&sheet.lost, &sheet.met}) {
    for (const FindingLine& line : *list) earned += line.earned_milli;
  }
  for (const FindingLine& line : sheet.lost) {
    INFO(line.rule);
    CHECK_FALSE(line.what.empty());
    CHECK_FALSE(line.why.empty());
    CHECK(line.what.find('{') == std::string::npos);
  }
  CHECK(earned == sheet.totals.earned_milli);
  // critical ones come first
  for (std::size_t i = 1; i < sheet.lost.size(); ++i) {
    CHECK_FALSE((sheet.lost[i].severity == "critical" && sheet.lost[i - 1].severity != "critical"));
  }
}

TEST_CASE("the text keeps to 100 columns and says verdict, points, every lost rule and the cautions") {
  const MarkSheet sheet = make_mark_sheet(short_job(), "en");
  const std::string text = mark_sheet_text(sheet, "en");
  CHECK(text.rfind(sheet.verdict_words, 0) == 0);
  for (const std::string_view line : base::split_lines(text)) {
    INFO(line);
    CHECK(columns_of(line) <= 100);
    CHECK((line.empty() || line.back() != ' '));
  }
  for (const FindingLine& line : sheet.lost) CHECK(text.find(line.rule) != std::string::npos);
  CHECK(text.find("Cautions") != std::string::npos);
  CHECK(text.find("not signed") != std::string::npos);
}

TEST_CASE("the JSON holds the same figures under keys that name their units") {
  const MarkSheet sheet = make_mark_sheet(short_job(), "en");
  record::JsonReader reader;
  const std::string text = mark_sheet_json(sheet);
  const auto view = reader.read(text, "sheet");
  REQUIRE(view);
  CHECK(view->text("verdict") == "not-yet");
  CHECK(view->find("points")->find("earned")->node().real_1 ==
        Approx(static_cast<double>(sheet.totals.earned_milli) / 1000.0));
  const auto computed = view->find("computed");
  REQUIRE(computed);
  const auto bolts = computed->list("bolts");
  REQUIRE(bolts);
  std::size_t i = 0;
  for (const record::JsonView bolt : bolts->children()) {
    const BoltLine& line = sheet.bolts[i++];
    CHECK(bolt.whole("bolt") == static_cast<std::int64_t>(line.bolt + 1));
    if (line.present) CHECK(bolt.find("preload_n")->node().real_1 == line.preload_n);
  }
  const auto joint = computed->find("joint");
  REQUIRE(joint);
  for (const char* key : {"clamp_n", "capacity_nm", "slip_angle_deg", "clearance_mm", "knock_j", "runout_mm"}) {
    INFO(key);
    CHECK(joint->find(key));
  }
  CHECK(view->list("findings")->size() == short_job().report.rules.size());
}

TEST_CASE("the sheet speaks German where the exercise does") {
  const MarkSheet german = make_mark_sheet(short_job(), "de");
  const MarkSheet english = make_mark_sheet(short_job(), "en");
  CHECK(german.verdict_words == "Noch nicht");
  CHECK(german.lost.size() == english.lost.size());
  std::size_t other = 0;
  for (std::size_t i = 0; i < german.lost.size(); ++i) other += german.lost[i].what != english.lost[i].what ? 1 : 0;
  CHECK(other > 0);
}

}  // namespace proofstand::report

#include "sim/bench/card.h"

#include "sim/bench/card_truth.h"
#include "tests/support/bench_parts.h"
#include "tests/support/catch.h"

namespace proofstand::bench {
namespace {

using testing::BenchParts;

BenchParts started() {
  BenchParts parts;
  note_start_of_card(parts.world());
  return parts;
}

// danger: a comma or a unit makes another number of the same reading
TEST_CASE("a length is read as people write it") {
  for (const std::string text : {"1.42", "1,42", "1.42 mm", " 1,42mm ", "0.142 cm"}) {
    BenchParts parts = started();
    REQUIRE(write_card(parts.world(), parts.job.old_thickness, text) == Refusal::None);
    const auto written = parts.of_kind("card_length");
    REQUIRE(written.size() == 1);
    CHECK(parts.field(written[0], "written") == Approx(0.00142));
    CHECK(parts.field(written[0], "truth") == Approx(0.00142).margin(2e-6));
    CHECK(parts.field(written[0], "off_truth") == Approx(0.0).margin(2e-6));
    CHECK_FALSE(parts.knows(written[0], "indicated"));
    CHECK(parts.state.card[0].text == text);
  }
}

// danger: nonsense on the card is taken for zero, or crashes
TEST_CASE("what is no number is refused and changes nothing") {
  for (const std::string text : {"", "thin", "1.4.2", "5 N·m", "-1.4", "nan", "inf", "1e400", "\x01\x02", "9999"}) {
    BenchParts parts = started();
    CHECK(write_card(parts.world(), parts.job.old_thickness, text) == Refusal::NotANumber);
    CHECK(parts.events.empty());
    CHECK_FALSE(parts.state.card[0].filled);
  }
  BenchParts parts = started();
  CHECK(write_card(parts.world(), CardEntryId{200}, "1") == Refusal::NoSuchPlace);
}

// danger: the card is held against a reading nobody took, or an honest least reading counts as invented
TEST_CASE("a written length is held against what the instrument showed") {
  BenchParts parts = started();
  note_thickness(parts.world(), parts.job.old_rotor, 0.00141);
  note_thickness(parts.world(), parts.job.old_rotor, 0.00144);
  note_thickness(parts.world(), parts.job.new_rotor, 0.00180);
  REQUIRE(write_card(parts.world(), parts.job.old_thickness, "1.41") == Refusal::None);
  REQUIRE(write_card(parts.world(), parts.job.old_thickness, "1.44") == Refusal::None);
  REQUIRE(write_card(parts.world(), parts.job.old_thickness, "1.60") == Refusal::None);
  const auto written = parts.of_kind("card_length");
  REQUIRE(written.size() == 3);
  CHECK(parts.field(written[0], "off_indicated") == Approx(0.0).margin(1e-12));
  CHECK(parts.field(written[1], "off_indicated") == Approx(0.0).margin(1e-12));
  CHECK(parts.field(written[2], "off_indicated") == Approx(0.00016));
}

// danger: a torque written down that the tool never gave
TEST_CASE("a torque is held against the tool that last clicked") {
  BenchParts parts = started();
  REQUIRE(write_card(parts.world(), parts.job.torque_used, "5") == Refusal::None);
  CHECK_FALSE(parts.knows(parts.of_kind("card_torque")[0], "indicated"));
  parts.state.tools[2].last_click_nm = 5.0;
  REQUIRE(write_card(parts.world(), parts.job.torque_used, "5,2 Nm") == Refusal::None);
  CHECK(parts.field(parts.of_kind("card_torque")[1], "off_indicated") == Approx(0.2));
  REQUIRE(write_card(parts.world(), parts.job.torque_used, "44.3 in-lbf") == Refusal::None);
  CHECK(parts.field(parts.of_kind("card_torque")[2], "written") == Approx(5.005).margin(0.002));
}

// danger: the decision is held against the wrong rotor's stamp
TEST_CASE("the decision follows the old rotor's own stamp, and what cannot be mended is reported") {
  BenchParts worn = started();
  REQUIRE(write_card(worn.world(), worn.job.decision, "replace") == Refusal::None);
  CHECK(worn.field(worn.of_kind("card_choice")[0], "agrees") == 1.0);
  REQUIRE(write_card(worn.world(), worn.job.decision, "keep") == Refusal::None);
  CHECK(worn.field(worn.of_kind("card_choice")[1], "agrees") == 0.0);
  CHECK(write_card(worn.world(), worn.job.decision, "locker") == Refusal::NotANumber);

  testing::SixBolt other_stamp = testing::six_bolt();
  other_stamp.setup.rotors[0].stamp_m = 0.0014;
  BenchParts good(other_stamp);
  note_start_of_card(good.world());
  REQUIRE(write_card(good.world(), good.job.decision, "keep") == Refusal::None);
  CHECK(good.field(good.of_kind("card_choice")[0], "agrees") == 1.0);

  BenchParts ruined = started();
  ruined.state.bolts[3].recess_wear_m = 0.0005;
  REQUIRE(write_card(ruined.world(), ruined.job.decision, "stop and report") == Refusal::None);
  CHECK(ruined.field(ruined.of_kind("card_choice")[0], "agrees") == 1.0);
}

// danger: locker claimed on the card that is on no bolt
TEST_CASE("what locks the threads is read off the bolts") {
  BenchParts parts = started();
  REQUIRE(write_card(parts.world(), parts.job.locker_used, "patch") == Refusal::None);
  CHECK(parts.field(parts.of_kind("card_choice")[0], "agrees") == 1.0);
  for (HoleState& hole : parts.state.holes) hole.locker_m3 = 10e-9;
  REQUIRE(write_card(parts.world(), parts.job.locker_used, "locker") == Refusal::None);
  CHECK(parts.field(parts.of_kind("card_choice")[1], "agrees") == 1.0);
}

// danger: a remark in another script is counted in bytes
TEST_CASE("letters of a note are counted as letters") {
  BenchParts parts = started();
  REQUIRE(write_card(parts.world(), parts.job.remarks, "für Fahrer") == Refusal::None);
  CHECK(parts.field(parts.of_kind("card_note")[0], "letters") == 10.0);
}

}  // namespace
}  // namespace proofstand::bench

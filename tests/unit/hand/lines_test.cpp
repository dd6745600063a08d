// Danger: a line that is read but not worked, or that works something else, is a fault in every script that uses it.
#include <string>

#include "tests/support/catch.h"
#include "tests/support/six_bolt_setup.h"
#include "tests/support/worked_job.h"

using namespace proofstand;
using testing::six_bolt;
using testing::work_job;
using testing::WorkedJob;

namespace {

hand::HandSkill steady() {
  hand::HandSkill skill = hand::journeyman();
  skill.pull_again_1 = 0.0;
  return skill;
}

struct Line {
  const char* script;
  const char* event;  ///< that it must bring about
  const char* field;  ///< of that event's last record; empty: none
  double value;
};

const Line kLines[] = {
    {"glove both hands", "gloved", "on", 1.0},
    {"glove the left hand\nbare the left hand", "gloved", "on", 0.0},
    {"take the key\npass the key\nput back the key", "put_down", "hand", 0.0},
    {"work left-handed\ntake the key", "took", "hand", 0.0},
    {"touch the outer track of the old rotor with the left hand", "touched", "hand", 0.0},
    {"hold the tyre with the right hand\nwait 1 s\nlet go with the right hand", "touched", "hand", 1.0},
    {"bring the lamp to recess 3, for 1.5 s", "inspected", "bolt", 2.0},
    {"look at recess 3 with the lamp", "inspected", "bolt", 2.0},
    {"pick recess 3 clean with the pick", "recess_cleaned", "debris", 0.0},
    {"take the clean rag\nturn over the clean rag\nwipe the outer track of the old rotor with the clean rag", "wiped",
     "fresh_fold", 1.0},
    {"wet the clean rag with 20 drops of alcohol\nwipe the outer track of the old rotor with the clean rag", "wiped",
     "solvent", 1.0},
    {"wipe both faces of the old rotor with the clean rag", "wiped", "coverage", 1.0},
    {"squeeze 3 drops of oil onto the outer track of the old rotor", "applied", "", 0.0},
    {"squeeze 1 drop of threadlocker onto new bolt 3", "applied", "", 0.0},
    {"measure the diameter of the old rotor with the vernier", "measured_size", "reading", 0.160},
    {"measure the thickness of the old rotor with the micrometer at 72 mm, at 90°, squeezing", "measured", "squeezed",
     1.0},
    {"read the runout of the old rotor with the dial gauge", "watched_runout", "", 0.0},
    {"write the stamp of the old rotor as stamp", "card_length", "off_truth", 0.0},
    {"write decision: replace", "card_choice", "word", 1.0},
    {"move the wheel to the bike", "wheel_at", "place", 1.0},
    {"spin the wheel at 1 turn/s", "wheel_spun", "forward", 1.0},
    {"spin the wheel at 1 turn/s, backwards", "wheel_spun", "forward", 0.0},
    {"set the click driver to 5.0 N·m", "driver_set", "setting", 5.0},
    {"tighten bolt 4 with the key, to 3 N·m\nlet go", "touched", "", 0.0},
};

}  // namespace

TEST_CASE("each line brings about what it says") {
  for (const Line& line : kLines) {
    const WorkedJob job = work_job(std::string(line.script) + "\nhand over", six_bolt().setup, steady());
    INFO(line.script);
    INFO(job.trouble.sentence());
    REQUIRE(job.finished);
    const auto records = job.records(line.event);
    REQUIRE_FALSE(records.empty());
    if (*line.field != '\0') {
      INFO(line.field);
      CHECK(job.field(records.back(), line.field) == Approx(line.value).margin(1e-9).epsilon(0.01));
    }
  }
}

TEST_CASE("a hand at a wheel that turns by itself ends the run, and the script with it") {
  const WorkedJob job = work_job("spin the wheel at 1 turn/s, for 1 s\nstop the wheel\nhand over", six_bolt().setup);
  CHECK(job.finished);
  CHECK(job.records("endangered").size() == (job.records("handed_over").empty() ? 1u : 0u));
}

TEST_CASE("what cannot be done is said with line, what stood in the way and what to write") {
  struct Stuck {
    const char* script;
    const char* says;
  };
  const Stuck stuck[] = {
      {"wait 1 s\nrun bolt 1 in with the key\ntake the old rotor off by its edge", "job.hand:3"},
      {"take the old rotor off by its edge", "bolts_hold_it"},
      {"put the new rotor on, printed side out", "job.hand:1"},
      {"start new bolt 1 in hole 1, turning back", "hole_taken"},
      {"move the wheel to the bike\ncrack bolt 1 with the key", "wheel_in_bike"},
      {"write the runout read as old runout", "read the runout first"},
      {"crack bolt 1", "add \"with the key\""},
      {"tighten bolt 1 until it clicks, with the key", "does not click"},
  };
  for (const Stuck& one : stuck) {
    const WorkedJob job = work_job(one.script, six_bolt().setup);
    INFO(one.script);
    CHECK_FALSE(job.finished);
    INFO(job.trouble.sentence());
    CHECK(job.trouble.sentence().find(one.says) != std::string::npos);
  }
}

TEST_CASE("a weak hand cannot crack with a straight handle what a key cracks") {
  hand::HandSkill weak = steady();
  weak.strength_percentile_1 = 0.35;
  CHECK_FALSE(work_job("crack bolt 1 with the driver", six_bolt().setup, weak).finished);
  CHECK(work_job("crack bolt 1 with the key\nhand over", six_bolt().setup, weak).finished);
}

TEST_CASE("a slow pull stops at the click, a quick one goes past it") {
  const auto peak = [](const char* rate) {
    const WorkedJob job = work_job(
        "set the click driver to 6.0 N·m\ntighten bolt 4 until it clicks and no further, with "
        "the click driver, at " +
            std::string(rate) + "\nhand over",
        six_bolt().setup, steady());
    REQUIRE(job.finished);
    return job.field(job.records("tightened").back(), "peak_torque");
  };
  CHECK(peak("10°/s") < 6.4);
  CHECK(peak("110°/s") > peak("10°/s") + 0.3);
}

// Danger: the modelled hand stands for a person in every proof of this project; a hand that gets stuck, or that does
// more than a person could perceive, proves nothing.
#include <algorithm>
#include <string>

#include "tests/support/catch.h"
#include "tests/support/six_bolt_setup.h"
#include "tests/support/worked_job.h"

using namespace proofstand;
using testing::six_bolt;
using testing::work_job;
using testing::WorkedJob;

namespace {

constexpr std::string_view kTakeApart =
    "pick recess 3 clean with the pick\n"
    "for each N of 1, 4, 2, 5, 3, 6:\n"
    "    crack bolt N with the key\n"
    "for each N of 1, 4, 2, 5, 3, 6:\n"
    "    run bolt N out with the driver\n"
    "take the old rotor off by its edge\n"
    "lay the old rotor down, printed side up\n";

constexpr std::string_view kPutTogether =
    "put the new rotor on, printed side out, by its edge\n"
    "for each N of 1, 4, 2, 5, 3, 6:\n"
    "    start new bolt N in hole N, turning back\n"
    "for each N of 1, 4, 2, 5, 3, 6:\n"
    "    run bolt N in with the driver\n"
    "hold the new rotor against the bolts by its arms\n"
    "snug bolt 1 with the key, to 1.5 N·m\n"
    "snug bolt 4 with the key, to 1.5 N·m\n"
    "let go with the other hand\n"
    "for each N of 2, 5, 3, 6:\n"
    "    snug bolt N with the key, to 1.5 N·m\n"
    "set the click driver to 3.0 N·m\n"
    "for each N of 1, 4, 2, 5, 3, 6:\n"
    "    tighten bolt N until it clicks, with the click driver, at 10°/s\n"
    "set the click driver to 5.0 N·m\n"
    "for each N of 1, 4, 2, 5, 3, 6:\n"
    "    tighten bolt N until it clicks, with the click driver, at 10°/s\n";

std::string whole_job() { return std::string(kTakeApart) + std::string(kPutTogether) + "hand over\n"; }

}  // namespace

TEST_CASE("a journeyman takes a rotor off and fits another, every bolt to the figure") {
  const WorkedJob job = work_job(whole_job(), six_bolt().setup);
  INFO(job.trouble.sentence());
  INFO(job.told());
  REQUIRE(job.finished);
  CHECK(job.records("cracked").size() == 6);
  CHECK(job.records("bolt_out").size() == 6);
  CHECK(job.records("rotor_off").size() == 1);
  CHECK(job.records("rotor_on").size() == 1);
  CHECK(job.records("tool_slipped").empty());
  const auto started = job.records("started");
  REQUIRE(started.size() == 6);
  for (const auto& record : started) {
    CHECK(job.field(record, "turned_back") == 1.0);
    CHECK(job.field(record, "crossed") == 0.0);
  }
  const auto left = job.records("left_bolt");
  REQUIRE(left.size() == 6);
  for (const auto& record : left) {
    CHECK(job.field(record, "preload") > 2500.0);
    CHECK(job.field(record, "preload") < 9000.0);
  }
  const auto turned = job.records("rotor_turned");
  REQUIRE_FALSE(turned.empty());
  CHECK(job.field(turned.front(), "sense") == 0.0);
}

TEST_CASE("the same script, hands and seed do the same; another seed scatters otherwise") {
  const WorkedJob a = work_job(whole_job(), six_bolt().setup);
  const WorkedJob b = work_job(whole_job(), six_bolt().setup);
  const WorkedJob c = work_job(whole_job(), six_bolt().setup, hand::journeyman(), 2);
  CHECK(a.told() == b.told());
  CHECK(a.told() != c.told());
}

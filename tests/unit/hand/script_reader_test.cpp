// Danger: a script that reads as something else than its author meant works another job, and every fault that it was
// written to show is shown by accident.
#include <cstdlib>
#include <fstream>
#include <sstream>
#include <string>

#include "sim/hand/hand_script.h"
#include "sim/hand/script.h"
#include "sim/hand/script_forms.h"
#include "tests/support/catch.h"
#include "tests/support/six_bolt_setup.h"

using namespace proofstand;
using hand::Doing;
using hand::Say;

namespace {

hand::ReadScript read(std::string_view text) {
  return hand::read_hand_script(text, "job.hand", testing::six_bolt().setup);
}
std::string first_fault(std::string_view text) {
  const hand::ReadScript read_script = read(text);
  return read_script.faults.list.empty() ? "" : read_script.faults.list.front().sentence();
}

}  // namespace

TEST_CASE("every form's own example reads as that form") {
  for (const hand::Form& form : hand::script_forms()) {
    INFO(form.example);
    const hand::ReadScript got = read(form.example);
    REQUIRE(got.faults.list.empty());
    REQUIRE(got.script);
    CHECK(got.script->instructions.front().doing == form.doing);
  }
}

TEST_CASE("the page for authors shows every form, so that none is known to the reader alone") {
  const std::string page = hand::script_language_page();
  for (const hand::Form& form : hand::script_forms()) CHECK(page.find(form.head) != std::string::npos);
}

TEST_CASE("the page that ships is the one the reader's own table makes") {
  const std::string path = std::string(PROOFSTAND_ROOT) + "/assets/help/hand-scripts.md";
  if (std::getenv("PROOFSTAND_ACCEPT") != nullptr) std::ofstream(path) << hand::script_language_page();
  std::ifstream in(path);
  std::stringstream text;
  text << in.rdbuf();
  CHECK(text.str() == hand::script_language_page());
}

TEST_CASE("numbers keep their units, clauses stand in any order") {
  const auto got = read("tighten bolt 4 until it clicks, pulling on 6°, with the click driver, at 10°/s");
  REQUIRE(got.script);
  const hand::Instruction& line = got.script->instructions.at(0);
  CHECK(line.bolt == static_cast<event::BoltId>(3));
  CHECK(*line.over_rad == Approx(0.104719755));
  CHECK(*line.rate_rad_s == Approx(0.174532925));
  CHECK(line.says(Say::ToClick));
  CHECK(line.tool == testing::six_bolt().click_driver);
}

TEST_CASE("a thing is known by its whole name") {
  const auto got =
      read("take the click driver\ntake the driver\nstart new bolt 3 in hole 5\nlook at recess 3 with the lamp");
  REQUIRE(got.script);
  CHECK(got.script->instructions.at(0).thing == testing::six_bolt().click_driver);
  CHECK(got.script->instructions.at(1).thing == testing::six_bolt().driver);
  CHECK(got.script->instructions.at(2).thing == testing::six_bolt().new_bolts[2]);
  CHECK(got.script->instructions.at(2).bolt == static_cast<event::BoltId>(4));
  CHECK(got.script->instructions.at(3).place == event::PlaceKind::BoltRecess);
}

TEST_CASE("a block repeats its lines for each value, also within another") {
  const auto got = read(
      "for each N of 1, 4, 2:\n"
      "    crack bolt N with the key   # all of them first\n"
      "for each R of old rotor, new rotor:\n"
      "    for each A of 0°, 0.25 turns:\n"
      "        measure the thickness of R with the micrometer at 72 mm, at A\n"
      "wait 3 s\n");
  REQUIRE(got.faults.list.empty());
  REQUIRE(got.script);
  const auto& lines = got.script->instructions;
  REQUIRE(lines.size() == 8);
  CHECK(lines[1].bolt == static_cast<event::BoltId>(3));
  CHECK(lines[1].line == 2);
  CHECK(*lines[4].angle_rad == Approx(1.5707963));
  CHECK(lines[4].thing == testing::six_bolt().old_rotor);
  CHECK(lines[6].thing == testing::six_bolt().new_rotor);
  CHECK(lines[7].doing == Doing::Wait);
}

TEST_CASE("the job card takes the rest of the line as it stands") {
  const auto got = read("write remarks: \"bolt 3's recess, cleaned\"\nwrite old thickness: 1,78");
  REQUIRE(got.script);
  CHECK(got.script->instructions.at(0).words == "\"bolt 3's recess, cleaned\"");
  CHECK(got.script->instructions.at(1).words == "1,78");
}

TEST_CASE("a faulty line is found by file, line and column, and says what to write") {
  CHECK(first_fault("wait 3 s\ncrak bolt 4 with the key").rfind("job.hand:2:1: ", 0) == 0);
  CHECK(first_fault("crak bolt 4").find("crack bolt <n>") != std::string::npos);
  CHECK(first_fault("crack bolt 9 with the key").find("job.hand:1:12: ") == 0);
  CHECK(first_fault("crack bolt 9 with the key").find("from 1 to 6") != std::string::npos);
  CHECK(first_fault("set the click driver to 5 mm").find("a torque, such as 5 N·m") != std::string::npos);
  CHECK(first_fault("crack bolt 4 with the lamp").find("not a key or a driver") != std::string::npos);
  CHECK(first_fault("crack bolt 4 with the spanner").find("a tool") != std::string::npos);
  CHECK(first_fault("put the new rotor on").find("printed side out") != std::string::npos);
  CHECK(first_fault("tighten bolt 2 with the key sideways").find("\"at <rate>\"") != std::string::npos);
  CHECK(first_fault("").find("no instruction") != std::string::npos);
  CHECK(first_fault("# nothing\n\n").find("no instruction") != std::string::npos);
  CHECK(first_fault("for each N of 1, , 2:\n  wait 1 s").find("missing between two commas") != std::string::npos);
  CHECK(first_fault("for each N of 1, 2:\nwait 1 s").find("repeats nothing") != std::string::npos);
  CHECK(first_fault("wait 1 s\n   wait 2 s").find("belongs to no block") != std::string::npos);
  CHECK(first_fault("\xff\xfe").find("UTF-8") != std::string::npos);
}

TEST_CASE("a faulty line in a block is told once") {
  CHECK(read("for each N of 1, 2, 3:\n    crack bolt N with the lamp").faults.list.size() == 1);
}

TEST_CASE("blocks that multiply are stopped before they fill the memory") {
  std::string text;
  std::string indent;
  for (const char* name : {"A", "B", "C", "D"}) {
    text += indent + "for each " + name + " of 1";
    for (int i = 0; i < 40; ++i) text += ", 1";
    text += ":\n";
    indent += " ";
  }
  CHECK(first_fault(text + indent + "wait 1 s").find("20000") != std::string::npos);
}

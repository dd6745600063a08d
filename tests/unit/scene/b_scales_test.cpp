#include <cmath>
#include <glm/gtc/constants.hpp>

#include "sim/scene/tools/scales.h"
#include "tests/support/catch.h"
#include "tests/support/six_bolt_setup.h"

namespace proofstand::testing {
namespace {

using namespace scene;

constexpr double kTurn_rad = 2.0 * glm::pi<double>();

bench::InstrumentPart vernier_of(double resolution_m) {
  bench::InstrumentPart part;
  part.resolution_m = resolution_m;
  part.range_m = 0.150;
  return part;
}

// angle folded to -half a turn .. half a turn
double folded_rad(double angle_rad) { return std::remainder(angle_rad, kTurn_rad); }

}  // namespace

// danger: a scale that is drawn prettily but read wrongly
// source: reading of ordinary outside micrometers (0.5 mm screw, 50 divisions), catalogue descriptions; its worked
// example 7.0 + 0.37 = 7.37 mm
TEST_CASE("a micrometer's thimble stands where its reading says") {
  struct Example {
    double shown_m;
    int sleeve_lines;  // halves that are uncovered, the one at the edge not counted
    int thimble_line;
  };
  for (const Example& e : {Example{0.00178, 3, 28}, Example{0.00737, 14, 37}, Example{0.0, 0, 0}}) {
    CHECK(thimble_edge_m(e.shown_m) >= sleeve_line_m(e.sleeve_lines) - 1e-9);
    CHECK(thimble_edge_m(e.shown_m) < sleeve_line_m(e.sleeve_lines + 1));
    // that line, turned as the thimble is, has come to the datum; its neighbours have not
    const double turned_rad = thimble_turn_rad(e.shown_m);
    CHECK(folded_rad(thimble_line_rad(e.thimble_line) + turned_rad) == Approx(0.0).margin(1e-9));
    CHECK(std::abs(folded_rad(thimble_line_rad(e.thimble_line + 1) + turned_rad)) > 0.1);
  }
  // 3.56 turns open 1.78 mm: own arithmetic
  CHECK(thimble_turn_rad(0.00178) / kTurn_rad == Approx(3.56));
}

// source: vernier of 0.02 mm, 50 divisions on 49 mm, catalogue descriptions; at 1.78 mm its line 39 meets a line at 40
// mm: own arithmetic
TEST_CASE("exactly one line of a vernier meets the beam, the one that the reading names") {
  const bench::InstrumentPart part = vernier_of(0.00002);
  REQUIRE(vernier_lines(part) == 51);
  CHECK(vernier_line_m(part, 0.0, 50) == Approx(0.049));
  CHECK(vernier_line_m(part, 0.00178, 39) == Approx(0.040).margin(1e-9));
  int meeting = 0;
  for (int k = 0; k < vernier_lines(part) - 1; ++k) {
    const double off_m = std::remainder(vernier_line_m(part, 0.00178, k), 0.001);
    if (std::abs(off_m) < 0.000005) ++meeting;
  }
  CHECK(meeting == 1);
}

// source: vernier of 0.05 mm with 20 divisions: one resolution short of a millimetre each
TEST_CASE("verniers of other resolutions follow their own spacing") {
  const bench::InstrumentPart part = vernier_of(0.00005);
  CHECK(vernier_lines(part) == 21);
  CHECK(vernier_line_m(part, 0.0, 20) == Approx(0.019));
  CHECK(std::remainder(vernier_line_m(part, 0.00175, 15), 0.001) == Approx(0.0).margin(1e-9));
}

// source: dial gauge of 0.01 mm, one turn a millimetre: JIS B 7503:2011 as tabled by a maker
TEST_CASE("a dial's pointer goes round once a millimetre") {
  CHECK(dial_pointer_rad(0.00013) / kTurn_rad * 360.0 == Approx(46.8));
  CHECK(dial_pointer_rad(0.001) == Approx(dial_line_rad(kDialLines)));
  CHECK(dial_small_hand_rad(0.010) == Approx(kTurn_rad));
}

// danger: a torque read off the drawn scale that is not the one the tool lets go at
TEST_CASE("the setting handle's edge meets the line of its figure, and its own line the datum") {
  const SixBolt job = six_bolt();
  const bench::ToolPart& tool = job.setup.tools[job.setup.things[event::index_of(job.click_driver)].part];
  REQUIRE(tool.scale_step_nm > 0.0);
  const int lines = setting_lines(tool);
  CHECK(lines == std::lround((tool.scale_hi_nm - tool.scale_lo_nm) / tool.scale_step_nm) + 1);
  for (int i = 0; i < lines; ++i) {
    const double setting_nm = tool.scale_lo_nm + i * tool.scale_step_nm;
    CHECK(setting_edge_m(tool, setting_nm) == Approx(setting_line_m(tool, i)).margin(1e-12));
    const double tenths = setting_nm - std::floor(setting_nm + 1e-9);
    const int k = static_cast<int>(std::lround(tenths / tool.scale_step_nm)) % handle_lines(tool);
    CHECK(folded_rad(handle_line_rad(tool, k) + setting_turn_rad(setting_nm)) == Approx(0.0).margin(1e-6));
  }
}

}  // namespace proofstand::testing

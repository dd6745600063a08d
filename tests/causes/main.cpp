// Causes: changing one datum of a workplace moves its named figure of the mark sheet the way physics says it must, and
// the same script, hand and seed show it. A simulator whose marks follow the gesture instead of the parts fails here.
#include <cstdio>
#include <fstream>
#include <sstream>
#include <string>
#include <vector>

#include "tests/causes/manners.h"
#include "tests/causes/sheet_of_run.h"
#include "tests/support/setup_edit.h"

namespace {

using namespace proofstand;
using testing::figure_of;
using testing::sheet_of_run;

const std::string kRoot = PROOFSTAND_ROOT;

enum class Way { Up, Down };

struct Cause {
  const char* edit;    ///< of the workplace, see setup_edit.h
  const char* figure;  ///< pointer into the mark sheet's JSON
  Way way;
  const char* because;
  const char* given = "";  ///< already so before the change
};

const std::vector<Cause>& causes() {
  static const std::vector<Cause> list = {
      {"boss 2: dirt = 0.05 mm", "/computed/joint/runout_mm", Way::Up, "grit under one boss tilts the rotor"},
      {"boss 2: dirt = 0.05 mm", "/computed/joint/clamp_spread", Way::Up, "and costs clamp at its neighbours"},
      {"bolt new bolt 3: patch = no", "/computed/bolts/2/preload_n", Way::Up, "no patch drags off part of the torque"},
      {"bolt new bolt 3: grease = 200 µg/cm²", "/computed/bolts/2/preload_n", Way::Up,
       "grease halves the friction, the same torque clamps harder"},
      {"bolt new bolt 4: length = 16 mm", "/computed/bolts/3/clamp_n", Way::Down,
       "too long a bolt stands on the bottom of its hole: torque without clamp"},
      {"bolt new bolt 5: friction = 2", "/computed/bolts/4/preload_n", Way::Down,
       "a rougher bolt loses torque to friction"},
      {"tool click driver: bias = 1.5", "/computed/bolts/0/last_torque_nm", Way::Up,
       "a tool that reads low pulls high"},
      {"tool click driver: bias = -1.5", "/computed/joint/capacity_nm", Way::Down,
       "a tool that reads high leaves less clamp"},
      {"seat: friction = 0.2", "/computed/joint/capacity_nm", Way::Up,
       "a rougher seat carries more under the same clamp"},
      {"rotor new rotor: stamp = 1.7 mm", "/computed/joint/above_stamp_mm", Way::Down,
       "the rotor's own stamp is what its thickness is held against"},
      {"rotor new rotor: bend = 0.4 mm", "/computed/joint/runout_mm", Way::Up, "a bent rotor runs out"},
      {"rotor new rotor: worn = 0.2 mm", "/computed/joint/thickness_mm", Way::Down, "worn is thinner"},
      {"bolt new bolt 1: recess dirt = 0.9 mm", "/computed/bolts/0/last_torque_nm", Way::Down,
       "a packed recess takes the tool only part of the way; it slips before the figure"},
      {"bolt new bolt 1: grade = 12.9", "/computed/bolts/0/last_torque_nm", Way::Up,
       "harder steel bears more at the same shallow depth", "bolt new bolt 1: recess dirt = 0.9 mm"},
      {"hands: strength = 90 %", "/computed/bolts/5/last_torque_nm", Way::Up,
       "a straight driver gives what the hand has, and no more"},
      {"hands: strength = 10 %", "/computed/bolts/5/last_torque_nm", Way::Down, "and a weaker hand gives less"},
  };
  return list;
}

std::string file_text(const std::string& path) {
  std::ifstream in(path);
  std::stringstream text;
  text << in.rdbuf();
  return text.str();
}

}  // namespace

int main() {
  const scenario::Loaded loaded = scenario::load_scenario(kRoot + "/scenarios/six-bolt/worn-front-rotor.toml");
  if (!loaded.usable) {
    std::printf("the shipped scenario does not load\n");
    return 1;
  }
  // a script that puts on what the workplace offers as it is: nothing cleaned or cured, so that each cause shows
  const std::string script = file_text(kRoot + "/tests/causes/plain.hand");
  const auto drawn = scenario::draw_variant(*loaded.file, 0, 1);
  if (!drawn.has_value()) return 1;
  const nlohmann::json before = sheet_of_run(drawn.value(), script);
  std::size_t moved = 0;
  for (const Cause& cause : causes()) {
    scenario::DrawnScenario changed = drawn.value();
    const auto done = testing::edit_setup(changed.setup, cause.edit);
    if (!done.has_value()) {
      std::printf("%s\n", done.error().sentence().c_str());
      continue;
    }
    scenario::DrawnScenario given = drawn.value();
    if (*cause.given != '\0') {
      (void)testing::edit_setup(given.setup, cause.given).has_value();
      (void)testing::edit_setup(changed.setup, cause.given).has_value();
    }
    const double was = figure_of(*cause.given != '\0' ? sheet_of_run(given, script) : before, cause.figure);
    const double is = figure_of(sheet_of_run(changed, script), cause.figure);
    const bool right = cause.way == Way::Up ? is > was : is < was;
    moved += right ? 1 : 0;
    std::printf("%-42s %-36s %12.5g -> %-12.5g %s: %s\n", cause.edit, cause.figure, was, is,
                right ? "as it should" : "WRONG WAY", cause.because);
  }
  const testing::MannerTally manners =
      testing::try_manners(*loaded.file, file_text(kRoot + "/tests/causes/manner.hand"));
  moved += manners.right;
  const std::size_t all = causes().size() + manners.all;
  std::printf("causes %zu/%zu move as they should\n", moved, all);
  return moved == all ? 0 : 1;
}

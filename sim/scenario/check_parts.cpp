#include "sim/scenario/check_parts.h"

#include <algorithm>

#include "sim/base/number_text.h"

namespace proofstand::scenario {
namespace {

using base::Dimension;
using base::quantity_words;
using bench::ThingKind;

constexpr double kPoint_m = 0.0008;
constexpr double kLeastThread_m = 0.005;
constexpr double kOffBottom_m = 0.0005;

double slack_m(const bench::HubPart& hub, const bench::RotorPart& rotor) {
  return rotor.hole_diameter_m - hub.thread_diameter_m;
}

bool rotor_suits(const bench::BenchSetup& setup, const bench::RotorPart& rotor) {
  return rotor_goes_on(setup.hub, rotor) && rotor.diameter_m <= setup.brake.frame_limit_m && !rotor.cracked &&
         rotor.thickness_new_m - rotor.worn_m >= rotor.stamp_m;
}

void check_rotors(const Reading& reading, const ReadScenario& read) {
  const bench::BenchSetup& setup = read.scenario.setup;
  bool any = false;
  Spot last = read.parts.hub_at;
  for (std::size_t i = 0; i < setup.things.size(); ++i) {
    if (setup.things[i].kind != ThingKind::Rotor) continue;
    last = read.parts.thing_spots[i];
    const bench::RotorPart& rotor = setup.rotors[setup.things[i].part];
    any = any || rotor_suits(setup, rotor);
    const bool fitted = static_cast<event::ThingId>(i) == setup.fitted_rotor;
    if (fitted && !rotor_goes_on(setup.hub, rotor)) {
      reading.error("S09", read.parts.thing_spots[i],
                    "the rotor \"" + setup.things[i].name + "\" is fitted but does not go on this hub",
                    "make holes, hole_circle and bore agree with the hub, or fit another one");
    }
    if (fitted && rotor.diameter_m > setup.brake.frame_limit_m) {
      reading.error("S09", read.parts.thing_spots[i], "the fitted rotor is larger than brake.largest_rotor allows",
                    "make one of them agree");
    }
  }
  if (!any) {
    reading.error("S09", last, "no rotor in this exercise is sound, goes on the hub and is within the largest size",
                  "add a [rotor.NAME] that does, or the job cannot be finished");
  }
}

void check_bolts(const Reading& reading, const ReadScenario& read) {
  const bench::BenchSetup& setup = read.scenario.setup;
  double grip_m = 0.0;
  for (const bench::RotorPart& rotor : setup.rotors) {
    if (rotor_suits(setup, rotor)) grip_m = std::max(grip_m, rotor.thickness_new_m);
  }
  std::size_t good = 0;
  Spot bad_at = read.parts.hub_at;
  for (std::size_t i = 0; i < setup.things.size(); ++i) {
    if (setup.things[i].kind != ThingKind::Bolt) continue;
    const bool holds = bolt_holds(setup.hub, setup.bolts[setup.things[i].part], grip_m);
    good += holds ? 1 : 0;
    if (!holds) bad_at = read.parts.thing_spots[i];
  }
  if (good < setup.bolt_count()) {
    reading.error(
        "S10", bad_at,
        "only " + base::text_from_int(static_cast<std::int64_t>(good)) + " bolts of this exercise fit its " +
            base::text_from_int(static_cast<std::int64_t>(setup.bolt_count())) + " holes",
        "give enough bolts a length that leaves 5 mm of thread in the hub and stays off the bottom of the hole");
  }
  for (const event::ThingId thing : setup.fitted_bolts) {
    if (thing == event::kNoThing || setup.fitted_rotor == event::kNoThing) continue;
    const bench::BoltPart& bolt = setup.bolts[setup.things[event::index_of(thing)].part];
    const bench::RotorPart& rotor = setup.rotors[setup.things[event::index_of(setup.fitted_rotor)].part];
    if (bolt_holds(setup.hub, bolt, rotor.thickness_new_m)) continue;
    reading.error("S10", read.parts.thing_spots[event::index_of(thing)],
                  "\"" + setup.things[event::index_of(thing)].name + "\" is fitted but " +
                      quantity_words(bolt.length_m, Dimension::Length) + " does not fit this hub and rotor",
                  "write a length from " +
                      quantity_words(rotor.thickness_new_m + kPoint_m + kLeastThread_m, Dimension::Length) + " to " +
                      quantity_words(rotor.thickness_new_m + setup.hub.hole_depth_m - kOffBottom_m, Dimension::Length));
    return;
  }
}

void check_torque_tool(const Reading& reading, const ReadScenario& read) {
  const bench::BenchSetup& setup = read.scenario.setup;
  const double torque_nm = setup.sheet_torque_nm;
  double tolerance_nm = 0.0;
  for (const SheetLine& line : read.scenario.sheet_lines) {
    if (line.name == "bolt_torque") tolerance_nm = line.tolerance_si;
  }
  bool any = false;
  bool in_range = false;
  double best_class_1 = 1.0;
  for (const bench::Thing& thing : setup.things) {
    if (thing.kind != ThingKind::ClickDriver) continue;
    const bench::ToolPart& tool = setup.tools[thing.part];
    any = true;
    if (torque_nm < tool.scale_lo_nm || torque_nm > tool.scale_hi_nm) continue;
    in_range = true;
    best_class_1 = std::min(best_class_1, tool.class_1);
  }
  const Spot& at = read.parts.sheet_torque_at;
  if (!any) {
    reading.error("S15", at, "there is no torque tool", "add a [tool.NAME] with kind = \"click driver\"");
  } else if (!in_range) {
    reading.error("S11", at,
                  "sheet.bolt_torque = " + quantity_words(torque_nm, Dimension::Torque) +
                      " is outside of every torque tool's range",
                  "change the figure, or give a tool a scale that contains it");
  } else if (tolerance_nm < torque_nm * (best_class_1 + kCleanOvershoot_1)) {
    reading.error("S12", read.parts.sheet_tolerance_at,
                  "the sheet's tolerance of " + quantity_words(tolerance_nm, Dimension::Torque) +
                      " is narrower than the torque tool's class and its overshoot",
                  "allow at least " +
                      quantity_words(torque_nm * (best_class_1 + kCleanOvershoot_1), Dimension::Torque) +
                      ", or bring a finer tool");
  }
}

void check_tools(const Reading& reading, const ReadScenario& read) {
  const bench::BenchSetup& setup = read.scenario.setup;
  const auto at = read.parts.hub_at;
  bool key = false;
  for (const bench::Thing& thing : setup.things) {
    const bool turns = thing.kind == ThingKind::LKey || thing.kind == ThingKind::Driver;
    if (turns && setup.tools[thing.part].drive == bench::DriveKind::Hexalobular25) key = true;
  }
  if (!key) {
    reading.error("S15", at, "nothing here turns the bolts out: there is no key or driver with drive hexalobular 25",
                  "add a [tool.NAME] with kind = \"key\"");
  }
  if (setup.rags.empty()) reading.error("S15", at, "there is no rag to clean with", "add a [rag.NAME]");
  const bool alcohol = std::any_of(setup.bottles.begin(), setup.bottles.end(),
                                   [](const bench::BottlePart& b) { return b.fluid == bench::FluidKind::Alcohol; });
  if (!alcohol)
    reading.error("S15", at, "there is no alcohol to clean with", "add a [fluid.NAME] with kind = \"alcohol\"");
}

}  // namespace

bool rotor_goes_on(const bench::HubPart& hub, const bench::RotorPart& rotor) {
  const double off_m = rotor.hole_circle_m > hub.hole_circle_m ? rotor.hole_circle_m - hub.hole_circle_m
                                                               : hub.hole_circle_m - rotor.hole_circle_m;
  return rotor.holes == static_cast<int>(hub.bosses.size()) && off_m <= slack_m(hub, rotor) &&
         slack_m(hub, rotor) >= 0.0 && rotor.bore_m >= hub.register_m;
}

bool bolt_holds(const bench::HubPart& hub, const bench::BoltPart& bolt, double grip_m) {
  const double in_m = bolt.length_m - grip_m;
  const double thread_m = std::min(in_m - kPoint_m, hub.thread_depth_m);
  return thread_m >= kLeastThread_m && in_m <= hub.hole_depth_m - kOffBottom_m;
}

void check_parts(const Reading& reading, const ReadScenario& read) {
  check_rotors(reading, read);
  check_bolts(reading, read);
  check_torque_tool(reading, read);
  check_tools(reading, read);
}

}  // namespace proofstand::scenario

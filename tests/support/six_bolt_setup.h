// The workplace that bench tests share: a worn front rotor on a six-bolt hub, the wheel in its stand, everything for
// the job in the tray. Each test takes a copy and changes the one datum it is about.
#pragma once

#include <array>

#include "sim/bench/setup.h"

namespace proofstand::testing {

using event::CardEntryId;
using event::ThingId;

/// The setup and the names of its things, so that no test counts indices.
struct SixBolt {
  bench::BenchSetup setup;
  ThingId wheel = event::kNoThing, stand = event::kNoThing, bike = event::kNoThing, bench_top = event::kNoThing,
          tray = event::kNoThing, card = event::kNoThing, sheet = event::kNoThing;
  ThingId old_rotor = event::kNoThing, new_rotor = event::kNoThing;
  std::array<ThingId, 6> old_bolts{}, new_bolts{};  ///< by position, and in the tray
  ThingId key = event::kNoThing, driver = event::kNoThing, click_driver = event::kNoThing;
  ThingId micrometer = event::kNoThing, vernier = event::kNoThing, dial = event::kNoThing;
  ThingId pick = event::kNoThing, lamp = event::kNoThing;
  ThingId alcohol = event::kNoThing, locker = event::kNoThing, grease = event::kNoThing, oil = event::kNoThing;
  ThingId clean_rag = event::kNoThing, dirty_rag = event::kNoThing, glove_box = event::kNoThing;
  CardEntryId old_thickness{}, old_stamp{}, old_runout{}, decision{}, new_thickness{}, locker_used{}, torque_used{},
      new_runout{}, remarks{};
};

/// Old rotor 160 mm, worn to 1.42 mm against a stamp of 1.50, on six old bolts at 5 N·m with old locker; new rotor
/// 1.80 mm and six patch bolts in the tray; click driver left at 8 N·m.
SixBolt six_bolt();

}  // namespace proofstand::testing

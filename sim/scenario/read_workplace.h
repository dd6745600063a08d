// Everything around the joint: tools, instruments, bottles, rags, the wheel, the brake, the rider, the trainee's hands.
#pragma once

#include "sim/scenario/field_reader.h"
#include "sim/scenario/named_parts.h"

namespace proofstand::scenario {

/// `[tool.NAME]`: key, driver, click driver, pick, lamp.
void read_tools(const Reading& reading, const Node& tools, NamedParts& parts);
/// `[instrument.NAME]`: micrometer, vernier, dial gauge.
void read_instruments(const Reading& reading, const Node& instruments, NamedParts& parts);
/// `[fluid.NAME]`: alcohol, locker, grease, oil, each in its bottle.
void read_fluids(const Reading& reading, const Node& fluids, NamedParts& parts);
/// `[rag.NAME]`.
void read_rags(const Reading& reading, const Node& rags, NamedParts& parts);
/// `[wheel]`, `[brake]`, `[rider]`, `[hands]`; radius of the wheel goes with the rider's figures.
void read_wheel(const Reading& reading, const Node& wheel, bench::BenchSetup& setup);
void read_brake(const Reading& reading, const Node& brake, bench::BrakePart& part);
void read_rider(const Reading& reading, const Node& rider, bench::RiderPart& part);
void read_hands(const Reading& reading, const Node& hands, bench::BenchSetup& setup);
/// `[fitted]`: which rotor and set of bolts are on the hub when work begins.
void read_fitted(const Reading& reading, const Node& fitted, NamedParts& parts);
/// Things that every workplace has, under their fixed names: wheel, wheel stand, bike, bench, tray, gloves, card,
/// sheet.
void add_furniture(const Reading& reading, NamedParts& parts);

}  // namespace proofstand::scenario

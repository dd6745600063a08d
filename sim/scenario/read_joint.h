// The joint's parts as a scenario file says them: hub, rotors and sets of bolts.
#pragma once

#include "sim/scenario/field_reader.h"
#include "sim/scenario/named_parts.h"

namespace proofstand::scenario {

/// The hub with its bosses.
bench::HubPart read_hub(const Reading& reading, const Node& hub);
/// `[rotor.NAME]` tables, appended to the setup with their things.
void read_rotors(const Reading& reading, const Node& rotors, NamedParts& parts);
/// `[bolts.NAME]` tables: a set of `count` equal bolts, called "NAME 1", "NAME 2" ..., with exceptions by number.
void read_bolt_sets(const Reading& reading, const Node& bolts, NamedParts& parts);

}  // namespace proofstand::scenario

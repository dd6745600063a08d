// A tool in a recess: brought, pressed home as deep as told or as skilled. Private to this floor.
#pragma once

#include "sim/hand/pulling.h"

namespace proofstand::hand {

/// The tool of a line: the one named, else the one the main hand holds. kNoThing when that is none for turning bolts.
ThingId turning_tool(Work& work, const Instruction& line);
/// Takes the tool by a grip, brings it to the bolt's recess and presses it in. Stays pressed.
Task seat(Work& work, HandId hand, ThingId tool, Grip grip, const Instruction& line);
/// How hard a line, or this hand's skill, presses [N].
double press_of(Work& work, const Instruction& line);

}  // namespace proofstand::hand

// A tool in a recess: brought, pressed home as deep as told or as skilled. Private to this floor.
#pragma once

#include "sim/hand/pulling.h"

namespace proofstand::hand {

/// The tool of a line: the one named, else the one the main hand holds. kNoThing when that is none for turning bolts.
ThingId turning_tool(Work& work, const Instruction& line);
/// Takes the tool by a grip, brings it to the bolt's recess and presses it in. Stays pressed. attempt: after a slip it
/// is set in anew, and straighter.
Task seat(Work& work, HandId hand, ThingId tool, Grip grip, const Instruction& line, std::uint64_t attempt = 0);
/// Does a line say how the tool is to be held? Then nothing is put right that it holds badly.
bool told_how(const Instruction& line);
/// How hard a line, or this hand's skill, presses [N].
double press_of(Work& work, const Instruction& line);

}  // namespace proofstand::hand

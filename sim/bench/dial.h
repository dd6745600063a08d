// A dial gauge: set up at the rotor, its tip pressed on, the wheel turned under it.
#pragma once

#include "sim/bench/world.h"

namespace proofstand::bench {

/// The dial held comes to stand where the hand is, its tip just touching the track; pressing on (cord along) gives it
/// preload.
/// refused: nothing to touch there
Refusal stand_dial(const World& world, HandId hand);
/// One tick while a hand is at the dial: its base follows the cord along the axis.
void press_dial(const World& world, HandId hand);
/// The dial is taken away: tells what was watched since it was last told.
void take_dial_away(const World& world, ThingId dial);
/// One tick of every standing dial: follows the track, keeps its extremes, tells each whole turn.
void step_dial(const World& world);
/// Does a dial stand at the rotor? Then a turning wheel is no quiet stretch.
bool dial_stands(const BenchState& state);

}  // namespace proofstand::bench

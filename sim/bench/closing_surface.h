// What is told at hand-over of surfaces, card and tools.
#pragma once

#include "sim/bench/world.h"

namespace proofstand::bench {

/// Emits left_face for both faces of the rotor on the hub, left_card for every entry, left_tool for every tool.
/// Visits, wipes and readings under way are ended first, so that nothing is lost.
void close_surfaces(const World& world);

}  // namespace proofstand::bench

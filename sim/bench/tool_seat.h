// A tool in a drive recess: how deep it sits under the press of the hand, and what torque the recess then bears.
#pragma once

#include "sim/bench/world.h"

namespace proofstand::bench {

/// Depth of a clean recess [m].
double full_depth_m();
/// Depth to which the tool held can go in at this bolt: its shape and packed dirt take some [m].
double free_depth_m(const World& world, HandId hand, BoltId bolt);
/// Tilt of the tool in its seat [rad]: as it was brought and tipped, and towards the offset.
double tool_tilt_rad(const HandState& hand);

/// One tick of pressing: the tool sinks with the press against a little friction, and rides up when a torque pushes it
/// out harder than the hand presses.
void step_depth(const World& world, HandId hand, double press_n);
/// Torque at which this tool slips round in this recess as it sits now [N·m].
/// source: sim/physics/drive_recess.h
double recess_capacity_nm(const World& world, HandId hand);
/// The tool slips by a lobe: wear, event. torque_nm: at which it slipped.
void slip_tool(const World& world, HandId hand, double torque_nm);
/// Does this tool go into a drive recess at all?
bool tip_enters(const ToolPart& tool);

/// Engaged less than this, a tool only touches the recess [m]. common practice, no source
inline constexpr double kTouchingDepth_m = 0.0002;

}  // namespace proofstand::bench

// A hand working a tool: pulling in a recess, letting a click mechanism go, turning its setting handle.
#pragma once

#include "sim/bench/hand_contact.h"
#include "sim/bench/world.h"

namespace proofstand::bench {

/// One tick of a tool in a drive recess.
void step_tool(const World& world, HandId hand, const HandHold& hold);
/// One tick of fingers on a torque tool's setting handle: the collar drawn, the handle twirled, the collar locked.
/// Emits "driver_set" when it locks.
void step_setting(const World& world, HandId hand, const HandHold& hold);

/// Torque tools as they are at the start: where the last job left them, their bias drawn within their class.
void start_tools(const World& world);
/// Torque at which a click driver lets go in this visit [N·m].
double trips_at_nm(const World& world, HandId hand);

/// Free travel after a click [rad]. common practice, no source (2° to 5°)
double free_travel_rad();
/// Bearing drag of a wheel in its stand: a tool whose torque nothing holds gets no more [N·m]. common practice, no
/// source
inline constexpr double kBearingDrag_nm = 0.3;
/// Change of a torque tool's figure for each turn of its handle [N·m]. common practice, no source
inline constexpr double kSettingPerTurn_nm = 1.0;

}  // namespace proofstand::bench

// Why the bench refused an action: a code from which a person's sentence is made elsewhere.
#pragma once

#include <cstdint>
#include <string_view>

#include "sim/event/ids.h"

namespace proofstand::bench {

/// In the order of the choices of the event "refused".
enum class Refusal : std::uint8_t {
  WheelInBike,
  BothHandsNeeded,
  HandFull,
  HandEmpty,
  DoesNotFit,
  Covered,
  OutOfReach,
  Locked,
  ToolInTheWay,
  NotANumber,
  BoltsHoldIt,
  NoSuchPlace,
  AlreadyThere,
  NothingToDo,
  Busy,
  RotorMissing,
  HoleTaken,
  HandedOver,
  WouldFall,
  NotPartOfThisJob,
  WheelTurning,
  None = 255,
};

/// The code as it stands in events: "wheel_in_bike".
std::string_view code_of(Refusal refusal);

}  // namespace proofstand::bench

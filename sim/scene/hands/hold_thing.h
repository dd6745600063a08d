// Where and how tools, instruments, bottles and rags are taken hold of, grip by grip.
#pragma once

#include "sim/scene/hands/hold.h"

namespace proofstand::scene {

Hold hold_of_thing(const bench::Bench& bench, event::ThingId thing, event::HandId hand, event::Grip grip,
                   const WorkFrame& work);
/// Fingers that spin something follow it for a while and then walk back: their small turning about the work's axis.
glm::mat4 walking_fingers(const WorkFrame& work);

}  // namespace proofstand::scene

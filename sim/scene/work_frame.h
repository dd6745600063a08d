// Where a hand works now: one frame for the hand, for the tool in it and for a rotor or bolt that it carries.
#pragma once

#include <glm/glm.hpp>
#include <vector>

#include "sim/scene/scene.h"

namespace proofstand::scene {

/// From state alone. Origin: the point worked on (a tool's tip, a finger's end, the middle of a part carried); z looks
/// out of the work, back along the tool; x is the work's own zero direction.
struct WorkFrame {
  glm::mat4 frame{1.0F};
  float off_m = 0.0F;     ///< how far the hand stays off the work: 0 at it, 0.02 near, 0.06 hovering
  float turn_rad = 0.0F;  ///< how far the hand has turned about z since it took hold, counter-clockwise seen at it
  bool at_work = false;   ///< rests at a place (not near, not hovering, not on the way)
  float share_1 = 1.0F;   ///< of the way of a motion under way: 1 when there is none
  const ScenePlace* place = nullptr;  ///< where it is; null when it is nowhere
};
/// A taking or putting back goes there in its first half and comes back in its second: from the middle on the thing is
/// drawn where it will be. places: those of everything but hands and held things. On the way the hand eases from its
/// home to where it goes and back.
WorkFrame work_frame(const bench::Bench& bench, const std::vector<ScenePlace>& places, const std::vector<Hover>& hovers,
                     event::HandId hand);

}  // namespace proofstand::scene

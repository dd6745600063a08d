// How a hand takes hold of what it works with: its shape, and where in the world the held spot is.
#pragma once

#include "sim/scene/hands/hand_shape.h"
#include "sim/scene/work_frame.h"

namespace proofstand::scene {

/// A spot to take hold of, in the world as it was before the hand turned. The hand may roll about z: it does so that
/// its forearm comes from where the mechanic stands.
struct Hold {
  HandShape shape = HandShape::Rest;
  glm::vec3 at{0.0F};
  glm::vec3 axis{0.0F, 0.0F, -1.0F};  ///< z of the held spot, see ShapedHand
  bool either_way = false;            ///< the axis may as well point the other way
  glm::vec3 back{0.0F};               ///< where the back of the hand should look; its length says how much that matters
  glm::vec3 forearm{0.0F};            ///< where the forearm should come from, besides
  glm::mat4 carry{1.0F};              ///< world: what the hand's own turning does to all of it
};

/// From state alone. For a hand that holds nothing and is nowhere: at rest.
Hold hold_of_hand(const bench::Bench& bench, event::HandId hand, const WorkFrame& work);
/// Pose of a right hand (or its mirror image) that takes this hold: the hand's own frame to world.
glm::mat4 hand_pose(const Hold& hold, event::HandId hand, const ShapedHand& shaped);

}  // namespace proofstand::scene

// Where loose things are: lying in their spots, standing at the rotor, or in a hand. From state alone.
#pragma once

#include "sim/scene/tools/pieces.h"
#include "sim/scene/work_frame.h"

namespace proofstand::scene {

/// A thing put away, in its spot: its own frame (see pieces.h) to world.
glm::mat4 lying_pose(const bench::Bench& bench, event::ThingId thing);
/// A thing in a hand. thing is what carried_thing() says.
glm::mat4 held_pose(const bench::Bench& bench, event::ThingId thing, event::HandId hand, const WorkFrame& work);
/// How far and round a moving piece stands in its thing's frame.
glm::mat4 move_of(const bench::Bench& bench, event::ThingId thing, Move move);

/// A dial gauge's parts: the dial by its pose, column and arm follow.
struct DialPoses {
  glm::mat4 dial{1.0F};
  glm::mat4 arm{1.0F};
  glm::mat4 stand{1.0F};
};
/// Standing at the rotor by itself; the dial's own state says where.
DialPoses dial_at_rotor(const bench::Bench& bench, event::ThingId dial, const std::vector<ScenePlace>& places);
/// Column upright beside a dial; foot_y: the table it stands on.
DialPoses dial_on_column(const glm::mat4& dial, float foot_y);

}  // namespace proofstand::scene

// Points in the frames of places: what the two numbers of a point in an action mean, as the table of places says.
#pragma once

#include <glm/glm.hpp>

#include "sim/scene/scene.h"

namespace proofstand::scene {

/// Frames of places: z looks out of the work, towards the hand.
/// Faces of a rotor, its edge and arms, the hub's seat: u radius [m], v angle [rad] from the frame's x axis,
/// counter-clockwise. Tyre, rim: u offset along z [m], v angle round. Everything else: u along x, v along y [m].
/// As in the actions, u counts micrometres and an angle is always v.
struct PlacePoint {
  double u_1 = 0.0;
  double v_1 = 0.0;
};
/// The point of the world for a place's (u, v).
glm::vec3 world_point(const ScenePlace& place, const PlacePoint& point);
/// The place's (u, v) for a point of the world; heights above the place are left out.
PlacePoint point_at(const ScenePlace& place, const glm::vec3& world);

/// First place that is this one; null when the scene has none now.
const ScenePlace* find_place(const std::vector<ScenePlace>& places, event::ThingId thing, event::PlaceKind place,
                             event::BoltId bolt = event::kNoBolt);

}  // namespace proofstand::scene

// From scene and view to what gestures need: the lens, where the hands rest, and picked points in a place's own steps.
#pragma once

#include <glm/glm.hpp>

#include "sim/hand/gesture_input.h"
#include "sim/scene/scene.h"

namespace proofstand::desk::route {

/// The picture's size in the window [pt]: the whole window, cards included.
struct Shape {
  double width_pt = 1280.0;
  double height_pt = 720.0;
};

hand::Lens lens_of(const scene::View& view, const Shape& shape);
/// Where the hands rest, and how the world is seen. Once a frame.
hand::Sight sight_of(const scene::Scene& scene, const bench::Bench& bench, const scene::View& view, const Shape& shape);
/// A place with the point of it that was picked [m, world].
hand::Pointed pointed_at(const scene::ScenePlace& place, const bench::Bench& bench, const glm::vec3& world);
/// A place with its middle: what the list chooses.
hand::Pointed pointed_middle(const scene::ScenePlace& place, const bench::Bench& bench);

}  // namespace proofstand::desk::route

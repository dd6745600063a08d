// Bars and cables along a path: spokes, keys, hoses, wire.
#pragma once

#include <vector>

#include "sim/scene/mesh.h"
#include "sim/scene/outline.h"

namespace proofstand::scene {

/// Path with rounded corners: straight runs through the corner points, bends of this radius between them.
std::vector<glm::vec3> bent_path(const std::vector<glm::vec3>& corners, float bend_m, int steps_a_bend = 6);
/// Smooth curve through points.
std::vector<glm::vec3> smooth_path(const std::vector<glm::vec3>& points, int steps_a_span = 8);
/// Section (counter-clockwise, about the origin) led along a path without twisting; its x axis starts as near to
/// start_x as the path allows. Ends are closed flat. At each path point the section may be scaled: scale is empty or as
/// long as the path.
Mesh sweep(const Loop& section, const std::vector<glm::vec3>& path, const glm::vec3& start_x = {1.0F, 0.0F, 0.0F},
           const std::vector<float>& scale = {});
/// Round cable with rounded ends.
Mesh tube(const std::vector<glm::vec3>& path, float radius_m, int sides = 10);

}  // namespace proofstand::scene

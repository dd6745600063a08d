// Simple rounded solids about the origin.
#pragma once

#include "sim/scene/mesh.h"

namespace proofstand::scene {

/// Box with all edges and corners rounded. steps: facets of a quarter round.
Mesh rounded_box(const glm::vec3& size_m, float radius_m, int steps = 2);
/// Ball; rings from pole to pole.
Mesh ball(float radius_m, int rings = 10);
/// Two balls and the cone between them: fingers, pegs. a, b: middles; may differ in radius.
Mesh capsule(const glm::vec3& a, float radius_a_m, const glm::vec3& b, float radius_b_m, int sides = 14);

}  // namespace proofstand::scene

// Flat shapes into triangles. The only file that knows the tessellator.
#pragma once

#include <cstdint>
#include <vector>

#include "sim/scene/outline.h"

namespace proofstand::scene {

/// Points and triangles, counter-clockwise. The outline's own points come first, in its order; points where loops cross
/// are added behind them.
struct Flat {
  std::vector<glm::dvec2> points;
  std::vector<std::uint32_t> indices;
};
/// Fills what the loops wind round positively: holes may overlap and cut an edge.
Flat tessellate(const Outline& outline);

}  // namespace proofstand::scene

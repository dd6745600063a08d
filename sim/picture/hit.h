// What lies under the pointer: found by drawing the places' numbers into a small window, exact to the texel.
#pragma once

#include <cstdint>
#include <glm/glm.hpp>

namespace proofstand::picture {

/// One place, and the point of its surface that was met.
struct Hit {
  std::int32_t place = -1;       ///< index into Scene::places
  glm::vec3 point{0.0F};         ///< [m] world, on the mesh's own surface
  glm::vec3 normal{0.0F};        ///< unit length, of the surface there, towards the eye's side
  float depth_m = 0.0F;          ///< from the eye to the point
  glm::vec2 texel{0.0F};         ///< [px] where it was met: middle of the texel, from the upper left corner
  float away_px = 0.0F;          ///< distance of that texel from the point that was asked for
  std::int32_t texels_seen = 0;  ///< how many texels of the window show this place
};

}  // namespace proofstand::picture

// Draws the numbers of places, and the points of their surfaces, into a small window.
#pragma once

#include <glm/glm.hpp>
#include <memory>
#include <vector>

#include "sim/base/result.h"
#include "sim/picture/hit.h"
#include "sim/picture/mesh_shelf.h"
#include "sim/picture/plate.h"
#include "sim/picture/program.h"
#include "sim/scene/scene.h"

namespace proofstand::picture {

/// One texel of the window: place (or -1), point and normal.
struct Glimpse {
  std::int32_t place = -1;
  glm::vec3 point{0.0F};   ///< [m] world
  glm::vec3 normal{0.0F};  ///< unit length
};

class PickGlass {
 public:
  static base::Result<std::unique_ptr<PickGlass>> make();

  /// What stands behind every texel of a window of this size; rows from the bottom. [height x width]
  /// world_to_window: like a picture's own matrix, narrowed to the window
  std::vector<Glimpse> look(const scene::Scene& scene, const MeshShelf& shelf, const glm::mat4& world_to_window,
                            const glm::vec3& eye, Size window);

 private:
  explicit PickGlass(Program program);
  Program program_;
  Plate plate_;
};

/// Narrows a picture's matrix to a window of texels round a point.
/// middle_px  [px] from the picture's upper left corner; becomes the middle of the window
glm::mat4 narrowed(const glm::mat4& world_to_clip, Size picture, glm::vec2 middle_px, Size window);

}  // namespace proofstand::picture

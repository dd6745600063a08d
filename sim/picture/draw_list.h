// Which items of a scene can be in a picture, and in which order they are drawn.
#pragma once

#include <glm/glm.hpp>
#include <vector>

#include "sim/picture/mesh_shelf.h"
#include "sim/scene/scene.h"

namespace proofstand::picture {

/// Indices of the items whose balls reach into the picture and are at least `least_1` of its height across; nearest
/// first, so that what is hidden is not shaded.
std::vector<std::size_t> seen_items(const std::vector<scene::Item>& items, const MeshShelf& shelf,
                                    const glm::mat4& world_to_clip, const glm::vec3& eye, float least_1);

}  // namespace proofstand::picture

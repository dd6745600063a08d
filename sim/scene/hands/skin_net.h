// A smooth closed surface laid round a solid that is given by its distance field.
#pragma once

#include <functional>
#include <glm/glm.hpp>

#include "sim/scene/mesh.h"

namespace proofstand::scene {

/// Distance to a solid's surface [m], negative inside; grows by about a metre a metre.
using DistanceField = std::function<float(const glm::vec3&)>;

/// Net of quads between the cells that the surface passes, each knot drawn onto the surface; normals are the field's
/// own. from, to: a box that holds the whole solid. cell_m: mesh width.
Mesh skin_over(const DistanceField& field, const glm::vec3& from, const glm::vec3& to, float cell_m);

}  // namespace proofstand::scene

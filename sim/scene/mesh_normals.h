// Shading normals from a solid's triangles.
#pragma once

#include "sim/scene/mesh.h"

namespace proofstand::scene {

/// Normals averaged across edges flatter than split_rad, split at sharper ones. Works on any triangle soup: points
/// within a micrometre count as one. Triangles without area are dropped.
Mesh with_normals(const Mesh& mesh, float split_rad = 0.7F);

}  // namespace proofstand::scene

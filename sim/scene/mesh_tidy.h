// Meshes made quick to draw. The only file that knows the mesh optimiser.
#pragma once

#include <cstddef>

#include "sim/scene/mesh.h"

namespace proofstand::scene {

/// Equal vertices welded, triangles in an order that suits a graphics processor. Looks the same.
Mesh tidied(const Mesh& mesh);
/// Fewer triangles, at most `triangles`, moving no point further than error_m; normals are made anew.
Mesh simplified(const Mesh& mesh, std::size_t triangles, float error_m);

}  // namespace proofstand::scene

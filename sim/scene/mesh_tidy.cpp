#include "sim/scene/mesh_tidy.h"

#include <meshoptimizer.h>

#include <algorithm>

#include "sim/scene/mesh_normals.h"

namespace proofstand::scene {

Mesh tidied(const Mesh& mesh) {
  if (mesh.indices.empty()) return mesh;
  std::vector<std::uint32_t> remap(mesh.vertices.size());
  const std::size_t count = meshopt_generateVertexRemap(remap.data(), mesh.indices.data(), mesh.indices.size(),
                                                        mesh.vertices.data(), mesh.vertices.size(), sizeof(Vertex));
  Mesh out;
  out.vertices.resize(count);
  out.indices.resize(mesh.indices.size());
  meshopt_remapVertexBuffer(out.vertices.data(), mesh.vertices.data(), mesh.vertices.size(), sizeof(Vertex),
                            remap.data());
  meshopt_remapIndexBuffer(out.indices.data(), mesh.indices.data(), mesh.indices.size(), remap.data());
  meshopt_optimizeVertexCache(out.indices.data(), out.indices.data(), out.indices.size(), count);
  return out;
}

Mesh simplified(const Mesh& mesh, std::size_t triangles, float error_m) {
  if (mesh.indices.size() <= 3 * triangles) return mesh;
  // by position alone: seams of the shading would hold every edge in place
  Mesh bare;
  for (const Vertex& vertex : mesh.vertices) bare.vertices.push_back({vertex.position, {}, {}});
  bare.indices = mesh.indices;
  bare = tidied(bare);
  const float* positions = &bare.vertices[0].position.x;
  const float scale_m = meshopt_simplifyScale(positions, bare.vertices.size(), sizeof(Vertex));
  std::vector<std::uint32_t> indices(bare.indices.size());
  indices.resize(meshopt_simplify(indices.data(), bare.indices.data(), bare.indices.size(), positions,
                                  bare.vertices.size(), sizeof(Vertex), 3 * triangles, error_m / scale_m));
  bare.indices = std::move(indices);
  return tidied(with_normals(bare));
}

}  // namespace proofstand::scene

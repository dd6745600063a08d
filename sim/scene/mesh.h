// A solid's surface as triangles, in metres, in the part's own frame. Floats: nothing here ever comes back to the
// bench.
#pragma once

#include <cstdint>
#include <glm/glm.hpp>
#include <vector>

namespace proofstand::scene {

/// Front faces are counter-clockwise seen from outside.
struct Vertex {
  glm::vec3 position{0.0F};            ///< [m]
  glm::vec3 normal{0.0F, 0.0F, 1.0F};  ///< unit length
  glm::vec2 coords{0.0F};              ///< of a film map: angle / full turn, radius share; else 0
};

struct Mesh {
  std::vector<Vertex> vertices;
  std::vector<std::uint32_t> indices;  ///< three a triangle
};

/// Adds another mesh, moved by a pose. The pose must keep angles (no scale but an even one).
void append(Mesh& mesh, const Mesh& other, const glm::mat4& pose = glm::mat4(1.0F));

/// Smallest ball round the box of all vertices: centre and radius [m].
struct Ball {
  glm::vec3 centre{0.0F};
  float radius = 0.0F;
};
Ball bounding_ball(const Mesh& mesh);

/// For tests: each edge twice, in opposite directions?
bool is_closed(const Mesh& mesh);
/// Signed volume [m³], positive when faces look outwards.
double volume_m3(const Mesh& mesh);

}  // namespace proofstand::scene

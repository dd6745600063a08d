#include "sim/scene/mesh.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <map>

namespace proofstand::scene {
namespace {

using Key = std::array<std::int64_t, 3>;

// points within a micrometre are one
Key key_of(const glm::vec3& p) {
  constexpr double grid_1_m = 1e6;
  return {std::llround(static_cast<double>(p.x) * grid_1_m), std::llround(static_cast<double>(p.y) * grid_1_m),
          std::llround(static_cast<double>(p.z) * grid_1_m)};
}

}  // namespace

void append(Mesh& mesh, const Mesh& other, const glm::mat4& pose) {
  const auto base = static_cast<std::uint32_t>(mesh.vertices.size());
  const glm::mat3 turn(pose);
  for (Vertex vertex : other.vertices) {
    vertex.position = glm::vec3(pose * glm::vec4(vertex.position, 1.0F));
    vertex.normal = glm::normalize(turn * vertex.normal);
    mesh.vertices.push_back(vertex);
  }
  for (const std::uint32_t index : other.indices) mesh.indices.push_back(base + index);
}

Ball bounding_ball(const Mesh& mesh) {
  if (mesh.vertices.empty()) return {};
  glm::vec3 least = mesh.vertices.front().position;
  glm::vec3 most = least;
  for (const Vertex& vertex : mesh.vertices) {
    least = glm::min(least, vertex.position);
    most = glm::max(most, vertex.position);
  }
  return {(least + most) * 0.5F, glm::length(most - least) * 0.5F};
}

bool is_closed(const Mesh& mesh) {
  std::map<Key, int> points;
  std::vector<int> point_of;
  for (const Vertex& vertex : mesh.vertices) {
    const auto [at, fresh] = points.emplace(key_of(vertex.position), static_cast<int>(points.size()));
    point_of.push_back(at->second);
  }
  std::map<std::array<int, 2>, int> edges;
  for (std::size_t i = 0; i + 2 < mesh.indices.size(); i += 3) {
    std::array<int, 3> corner{};
    for (std::size_t k = 0; k < 3; ++k) corner[k] = point_of[mesh.indices[i + k]];
    if (corner[0] == corner[1] || corner[1] == corner[2] || corner[2] == corner[0]) continue;
    for (std::size_t k = 0; k < 3; ++k) {
      const int a = corner[k];
      const int b = corner[(k + 1) % 3];
      edges[{std::min(a, b), std::max(a, b)}] += a < b ? 1 : -1;
    }
  }
  return !edges.empty() && std::all_of(edges.begin(), edges.end(), [](const auto& edge) { return edge.second == 0; });
}

double volume_m3(const Mesh& mesh) {
  double six = 0.0;
  const auto at = [&](std::size_t i) { return glm::dvec3(mesh.vertices[mesh.indices[i]].position); };
  for (std::size_t i = 0; i + 2 < mesh.indices.size(); i += 3) {
    six += glm::dot(at(i), glm::cross(at(i + 1), at(i + 2)));
  }
  return six / 6.0;
}

}  // namespace proofstand::scene

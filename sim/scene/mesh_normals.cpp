#include "sim/scene/mesh_normals.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace proofstand::scene {
namespace {

struct Corner {
  std::array<std::int64_t, 3> key{};
  std::uint32_t at = 0;  ///< index into the triangle list
  [[nodiscard]] bool operator<(const Corner& other) const { return key != other.key ? key < other.key : at < other.at; }
};

std::array<std::int64_t, 3> key_of(const glm::vec3& p) {
  constexpr double grid_1_m = 1e6;
  return {std::llround(static_cast<double>(p.x) * grid_1_m), std::llround(static_cast<double>(p.y) * grid_1_m),
          std::llround(static_cast<double>(p.z) * grid_1_m)};
}

float angle_at(const glm::vec3& at, const glm::vec3& a, const glm::vec3& b) {
  const glm::vec3 u = a - at;
  const glm::vec3 v = b - at;
  const float scale = glm::length(u) * glm::length(v);
  return scale > 0.0F ? std::acos(glm::clamp(glm::dot(u, v) / scale, -1.0F, 1.0F)) : 0.0F;
}

}  // namespace

Mesh with_normals(const Mesh& mesh, float split_rad) {
  Mesh out;
  std::vector<glm::vec3> face_normals;
  std::vector<float> weights;
  std::vector<Corner> corners;
  for (std::size_t i = 0; i + 2 < mesh.indices.size(); i += 3) {
    std::array<Vertex, 3> v;
    for (std::size_t k = 0; k < 3; ++k) v[k] = mesh.vertices[mesh.indices[i + k]];
    // in double: the triangles of small chamfers have areas near a float's end
    const glm::dvec3 across = glm::cross(glm::dvec3(v[1].position) - glm::dvec3(v[0].position),
                                         glm::dvec3(v[2].position) - glm::dvec3(v[0].position));
    const std::array<Corner, 3> keys = {Corner{key_of(v[0].position)}, Corner{key_of(v[1].position)},
                                        Corner{key_of(v[2].position)}};
    if (glm::length(across) < 1e-18 || keys[0].key == keys[1].key || keys[1].key == keys[2].key ||
        keys[2].key == keys[0].key) {
      continue;
    }
    face_normals.emplace_back(glm::normalize(across));
    for (std::size_t k = 0; k < 3; ++k) {
      const auto at = static_cast<std::uint32_t>(out.vertices.size());
      corners.push_back({keys[k].key, at});
      weights.push_back(angle_at(v[k].position, v[(k + 1) % 3].position, v[(k + 2) % 3].position));
      out.indices.push_back(at);
      out.vertices.push_back(v[k]);
    }
  }
  std::sort(corners.begin(), corners.end());
  const float least = std::cos(split_rad);
  for (std::size_t first = 0; first < corners.size();) {
    std::size_t last = first;
    while (last < corners.size() && corners[last].key == corners[first].key) ++last;
    for (std::size_t i = first; i < last; ++i) {
      const glm::vec3& own = face_normals[corners[i].at / 3];
      glm::vec3 sum(0.0F);
      for (std::size_t k = first; k < last; ++k) {
        const glm::vec3& other = face_normals[corners[k].at / 3];
        if (glm::dot(own, other) >= least) sum += other * weights[corners[k].at];
      }
      out.vertices[corners[i].at].normal = glm::length(sum) > 0.0F ? glm::normalize(sum) : own;
    }
    first = last;
  }
  return out;
}

}  // namespace proofstand::scene

#include "sim/scene/solids.h"

#include <cmath>
#include <glm/gtc/constants.hpp>

namespace proofstand::scene {
namespace {

// rows of equally many points, each row closed on itself, from bottom to top; flat lids over first and last row
struct Rows {
  Mesh mesh;
  std::uint32_t across = 0;
  void join() {
    const auto rows = static_cast<std::uint32_t>(mesh.vertices.size()) / across;
    for (std::uint32_t row = 0; row + 1 < rows; ++row) {
      for (std::uint32_t i = 0; i < across; ++i) {
        const std::uint32_t a = row * across + i;
        const std::uint32_t b = row * across + (i + 1) % across;
        add(a, b, b + across);
        add(a, b + across, a + across);
      }
    }
    const std::uint32_t top = (rows - 1) * across;
    for (std::uint32_t i = 1; i + 1 < across; ++i) {
      add(0, i + 1, i);
      add(top, top + i, top + i + 1);
    }
  }

 private:
  // lids and rows shrunk to a point leave triangles without area
  void add(std::uint32_t a, std::uint32_t b, std::uint32_t c) {
    const auto at = [&](std::uint32_t i) { return glm::dvec3(mesh.vertices[i].position); };
    if (glm::length(glm::cross(at(b) - at(a), at(c) - at(a))) < 1e-12) return;
    mesh.indices.insert(mesh.indices.end(), {a, b, c});
  }
};

glm::vec3 towards(float round_rad, float up_rad) {
  return {std::cos(up_rad) * std::cos(round_rad), std::cos(up_rad) * std::sin(round_rad), std::sin(up_rad)};
}

}  // namespace

Mesh rounded_box(const glm::vec3& size_m, float radius_m, int steps) {
  const float quarter = glm::half_pi<float>();
  const glm::vec3 half = size_m * 0.5F - radius_m;
  Rows rows;
  rows.across = static_cast<std::uint32_t>(4 * (steps + 1));
  for (int side = -1; side <= 1; side += 2) {
    for (int up = 0; up <= steps; ++up) {
      const float share = static_cast<float>(up) / static_cast<float>(steps);
      const float up_rad = side < 0 ? quarter * (share - 1.0F) : quarter * share;
      for (int corner = 0; corner < 4; ++corner) {
        const glm::vec3 middle{corner == 1 || corner == 2 ? -half.x : half.x, corner >= 2 ? -half.y : half.y,
                               half.z * static_cast<float>(side)};
        for (int s = 0; s <= steps; ++s) {
          const float round_rad =
              quarter * (static_cast<float>(corner) + static_cast<float>(s) / static_cast<float>(steps));
          const glm::vec3 normal = towards(round_rad, up_rad);
          rows.mesh.vertices.push_back({middle + normal * radius_m, normal, {}});
        }
      }
    }
  }
  rows.join();
  return rows.mesh;
}

Mesh ball(float radius_m, int rings) {
  return capsule({0.0F, 0.0F, 0.0F}, radius_m, {0.0F, 0.0F, 0.0F}, radius_m, 2 * rings);
}

Mesh capsule(const glm::vec3& a, float radius_a_m, const glm::vec3& b, float radius_b_m, int sides) {
  const float apart = glm::length(b - a);
  const glm::vec3 z = apart > 0.0F ? (b - a) / apart : glm::vec3(0.0F, 0.0F, 1.0F);
  const glm::vec3 spare = std::abs(z.x) < 0.7F ? glm::vec3(1.0F, 0.0F, 0.0F) : glm::vec3(0.0F, 1.0F, 0.0F);
  const glm::vec3 x = glm::normalize(glm::cross(spare, z));
  const glm::vec3 y = glm::cross(z, x);
  const glm::mat3 turn(x, y, z);
  // where the cone touches both balls
  const float touch = apart > 0.0F ? std::asin(glm::clamp((radius_a_m - radius_b_m) / apart, -1.0F, 1.0F)) : 0.0F;
  const float quarter = glm::half_pi<float>();
  const int steps = std::max(3, sides / 3);
  Rows rows;
  rows.across = static_cast<std::uint32_t>(sides);
  for (int end = 0; end < 2; ++end) {
    for (int up = 0; up <= steps; ++up) {
      const float share = static_cast<float>(up) / static_cast<float>(steps);
      const float up_rad = end == 0 ? -quarter + (touch + quarter) * share : touch + (quarter - touch) * share;
      if (apart == 0.0F && end == 1 && up == 0) continue;
      for (int s = 0; s < sides; ++s) {
        const glm::vec3 normal =
            turn * towards(glm::two_pi<float>() * static_cast<float>(s) / static_cast<float>(sides), up_rad);
        const glm::vec3 middle = end == 0 ? a : b;
        rows.mesh.vertices.push_back({middle + normal * (end == 0 ? radius_a_m : radius_b_m), normal, {}});
      }
    }
  }
  rows.join();
  return rows.mesh;
}

}  // namespace proofstand::scene

#include "sim/scene/sweep.h"

#include <algorithm>
#include <cmath>

#include "sim/scene/mesh_normals.h"
#include "sim/scene/tessellate.h"

namespace proofstand::scene {
namespace {

glm::vec3 along(const std::vector<glm::vec3>& path, std::size_t i) {
  const glm::vec3& before = path[i == 0 ? 0 : i - 1];
  const glm::vec3& after = path[std::min(i + 1, path.size() - 1)];
  return glm::normalize(after - before);
}

glm::vec3 square_to(const glm::vec3& wish, const glm::vec3& axis) {
  const glm::vec3 x = wish - axis * glm::dot(wish, axis);
  if (glm::length(x) > 1e-3F) return glm::normalize(x);
  const glm::vec3 spare = std::abs(axis.y) < 0.9F ? glm::vec3(0.0F, 1.0F, 0.0F) : glm::vec3(0.0F, 0.0F, 1.0F);
  return glm::normalize(glm::cross(spare, axis));
}

}  // namespace

std::vector<glm::vec3> bent_path(const std::vector<glm::vec3>& corners, float bend_m, int steps_a_bend) {
  std::vector<glm::vec3> path{corners.front()};
  for (std::size_t i = 1; i + 1 < corners.size(); ++i) {
    const glm::vec3 in = glm::normalize(corners[i - 1] - corners[i]);
    const glm::vec3 out = glm::normalize(corners[i + 1] - corners[i]);
    const float half = std::acos(glm::clamp(glm::dot(in, out), -1.0F, 1.0F)) / 2.0F;
    const float room =
        0.5F * std::min(glm::length(corners[i - 1] - corners[i]), glm::length(corners[i + 1] - corners[i]));
    const float back = std::min(room, bend_m / std::tan(half));
    const float radius = back * std::tan(half);
    const glm::vec3 middle = corners[i] + glm::normalize(in + out) * (radius / std::sin(half));
    const glm::vec3 from = corners[i] + in * back - middle;
    const glm::vec3 to = corners[i] + out * back - middle;
    for (int s = 0; s <= steps_a_bend; ++s) {
      const float share = static_cast<float>(s) / static_cast<float>(steps_a_bend);
      path.push_back(middle + glm::normalize(glm::mix(from, to, share)) * radius);
    }
  }
  path.push_back(corners.back());
  return path;
}

std::vector<glm::vec3> smooth_path(const std::vector<glm::vec3>& points, int steps_a_span) {
  std::vector<glm::vec3> path;
  const std::size_t last = points.size() - 1;
  for (std::size_t i = 0; i < last; ++i) {
    const glm::vec3& a = points[i];
    const glm::vec3& b = points[i + 1];
    const glm::vec3 slope_a = (b - points[i == 0 ? 0 : i - 1]) * 0.5F;
    const glm::vec3 slope_b = (points[std::min(i + 2, last)] - a) * 0.5F;
    for (int s = 0; s < steps_a_span; ++s) {
      const float t = static_cast<float>(s) / static_cast<float>(steps_a_span);
      const float t2 = t * t;
      const float t3 = t2 * t;
      path.push_back((2.0F * t3 - 3.0F * t2 + 1.0F) * a + (t3 - 2.0F * t2 + t) * slope_a + (3.0F * t2 - 2.0F * t3) * b +
                     (t3 - t2) * slope_b);
    }
  }
  path.push_back(points.back());
  return path;
}

Mesh sweep(const Loop& section, const std::vector<glm::vec3>& path, const glm::vec3& start_x,
           const std::vector<float>& scale) {
  Mesh mesh;
  const auto count = static_cast<std::uint32_t>(section.size());
  glm::vec3 x = square_to(start_x, along(path, 0));
  for (std::size_t i = 0; i < path.size(); ++i) {
    const glm::vec3 axis = along(path, i);
    x = square_to(x, axis);
    const glm::vec3 y = glm::cross(axis, x);
    const float size = scale.empty() ? 1.0F : scale[i];
    for (const glm::dvec2& p : section) {
      const glm::vec2 q = glm::vec2(p) * size;
      mesh.vertices.push_back({path[i] + x * q.x + y * q.y, {}, {}});
    }
  }
  for (std::uint32_t i = 0; i + 1 < static_cast<std::uint32_t>(path.size()); ++i) {
    for (std::uint32_t k = 0; k < count; ++k) {
      const std::uint32_t a = i * count + k;
      const std::uint32_t b = i * count + (k + 1) % count;
      for (const std::uint32_t index : {a, b, b + count, a, b + count, a + count}) mesh.indices.push_back(index);
    }
  }
  const Flat flat = tessellate({section});
  const auto end = static_cast<std::uint32_t>((path.size() - 1) * section.size());
  for (std::size_t i = 0; i + 2 < flat.indices.size(); i += 3) {
    mesh.indices.insert(mesh.indices.end(), {flat.indices[i], flat.indices[i + 2], flat.indices[i + 1]});
    mesh.indices.insert(mesh.indices.end(),
                        {end + flat.indices[i], end + flat.indices[i + 1], end + flat.indices[i + 2]});
  }
  return with_normals(mesh, 0.8F);
}

Mesh tube(const std::vector<glm::vec3>& path, float radius_m, int sides) {
  // two smaller sections before either end make it round
  std::vector<glm::vec3> longer;
  std::vector<float> scale;
  const glm::vec3 first = along(path, 0);
  const glm::vec3 last = along(path, path.size() - 1);
  for (const auto& [out, size] : {std::pair{0.92F, 0.4F}, std::pair{0.6F, 0.8F}}) {
    longer.push_back(path.front() - first * (out * radius_m));
    scale.push_back(size);
  }
  for (const glm::vec3& p : path) {
    longer.push_back(p);
    scale.push_back(1.0F);
  }
  for (const auto& [out, size] : {std::pair{0.6F, 0.8F}, std::pair{0.92F, 0.4F}}) {
    longer.push_back(path.back() + last * (out * radius_m));
    scale.push_back(size);
  }
  Loop section;
  for (int i = 0; i < sides; ++i) {
    const double at = 6.283185307179586 * i / sides;
    section.emplace_back(static_cast<double>(radius_m) * std::cos(at), static_cast<double>(radius_m) * std::sin(at));
  }
  return sweep(section, longer, {1.0F, 0.0F, 0.0F}, scale);
}

}  // namespace proofstand::scene

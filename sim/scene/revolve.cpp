#include "sim/scene/revolve.h"

#include <algorithm>
#include <cmath>
#include <glm/gtc/constants.hpp>

#include "sim/scene/mesh_normals.h"

namespace proofstand::scene {
namespace {

Mesh led_round(const Loop& profile, bool ring, double sag_m) {
  double largest_m = 0.0;
  for (const glm::dvec2& p : profile) largest_m = std::max(largest_m, p.x);
  const int segments = circle_segments(largest_m, sag_m);
  const auto count = static_cast<std::uint32_t>(profile.size());
  Mesh mesh;
  for (int s = 0; s < segments; ++s) {
    const double at = glm::two_pi<double>() * s / segments;
    for (const glm::dvec2& p : profile) {
      mesh.vertices.push_back({glm::vec3(p.x * std::cos(at), p.x * std::sin(at), p.y), {}, {}});
    }
  }
  const std::uint32_t last = ring ? count : count - 1;
  for (std::uint32_t s = 0; s < static_cast<std::uint32_t>(segments); ++s) {
    const std::uint32_t a = s * count;
    const std::uint32_t b = (s + 1) % static_cast<std::uint32_t>(segments) * count;
    for (std::uint32_t i = 0; i < last; ++i) {
      const std::uint32_t k = (i + 1) % count;
      for (const std::uint32_t index : {a + i, b + i, b + k, a + i, b + k, a + k}) mesh.indices.push_back(index);
    }
  }
  return with_normals(mesh);
}

}  // namespace

Mesh revolve(const Loop& profile, double sag_m) { return led_round(profile, false, sag_m); }
Mesh revolve_ring(const Loop& profile, double sag_m) { return led_round(profile, true, sag_m); }

Mesh bar(double radius_m, double from_m, double to_m, double chamfer_m, double sag_m) {
  return revolve({{0.0, from_m},
                  {radius_m - chamfer_m, from_m},
                  {radius_m, from_m + chamfer_m},
                  {radius_m, to_m - chamfer_m},
                  {radius_m - chamfer_m, to_m},
                  {0.0, to_m}},
                 sag_m);
}

Mesh pipe(double inner_m, double outer_m, double from_m, double to_m, double chamfer_m, double sag_m) {
  return revolve_ring({{inner_m + chamfer_m, from_m},
                       {outer_m - chamfer_m, from_m},
                       {outer_m, from_m + chamfer_m},
                       {outer_m, to_m - chamfer_m},
                       {outer_m - chamfer_m, to_m},
                       {inner_m + chamfer_m, to_m},
                       {inner_m, to_m - chamfer_m},
                       {inner_m, from_m + chamfer_m}},
                      sag_m);
}

}  // namespace proofstand::scene

#include "sim/scene/tools/marks.h"

#include <cmath>

namespace proofstand::scene {
namespace {

constexpr float kFacet_rad = 0.12F;

Vertex on_cone(const Cone& cone, float angle_rad, float z_m) {
  const glm::vec3 out(std::cos(angle_rad), std::sin(angle_rad), 0.0F);
  const float radius = cone.at(z_m) + kMarkLift_m;
  const glm::vec3 normal = glm::normalize(glm::vec3(out.x, out.y, -cone.slope_1));
  return {out * radius + glm::vec3(0.0F, 0.0F, z_m), normal, glm::vec2(0.0F)};
}

void add_quad(Mesh& mesh, const Vertex& a, const Vertex& b, const Vertex& c, const Vertex& d) {
  const auto first = static_cast<std::uint32_t>(mesh.vertices.size());
  mesh.vertices.insert(mesh.vertices.end(), {a, b, c, d});
  mesh.indices.insert(mesh.indices.end(), {first, first + 1, first + 2, first, first + 2, first + 3});
}

}  // namespace

void add_bar(Mesh& mesh, const glm::vec2& from, const glm::vec2& to, float z_m) {
  const glm::vec2 lo = glm::min(from, to);
  const glm::vec2 hi = glm::max(from, to);
  const glm::vec3 up(0.0F, 0.0F, 1.0F);
  add_quad(mesh, {{lo.x, lo.y, z_m}, up, {}}, {{hi.x, lo.y, z_m}, up, {}}, {{hi.x, hi.y, z_m}, up, {}},
           {{lo.x, hi.y, z_m}, up, {}});
}

void add_line_along(Mesh& mesh, float radius_m, float angle_rad, float from_z_m, float to_z_m, float width_m) {
  add_line_along(mesh, Cone{radius_m, 0.0F}, angle_rad, from_z_m, to_z_m, width_m);
}

void add_line_along(Mesh& mesh, const Cone& cone, float angle_rad, float from_z_m, float to_z_m, float width_m) {
  const float half_rad = 0.5F * width_m / cone.at(from_z_m);
  add_quad(mesh, on_cone(cone, angle_rad - half_rad, from_z_m), on_cone(cone, angle_rad + half_rad, from_z_m),
           on_cone(cone, angle_rad + half_rad, to_z_m), on_cone(cone, angle_rad - half_rad, to_z_m));
}

void add_line_round(Mesh& mesh, float radius_m, float z_m, float from_rad, float to_rad, float width_m) {
  const Cone cone{radius_m, 0.0F};
  const int facets = std::max(1, static_cast<int>(std::ceil((to_rad - from_rad) / kFacet_rad)));
  const float step = (to_rad - from_rad) / static_cast<float>(facets);
  for (int i = 0; i < facets; ++i) {
    const float a = from_rad + step * static_cast<float>(i);
    add_quad(mesh, on_cone(cone, a, z_m - 0.5F * width_m), on_cone(cone, a + step, z_m - 0.5F * width_m),
             on_cone(cone, a + step, z_m + 0.5F * width_m), on_cone(cone, a, z_m + 0.5F * width_m));
  }
}

void add_words_along(Mesh& mesh, const Typeface& face, std::string_view words, float cap_m, const Cone& cone,
                     float angle_rad, float z_m, Align align, float tops_towards_1) {
  Mesh flat = face.flat(words, static_cast<double>(cap_m), align);
  for (Vertex& v : flat.vertices) {
    const float up = v.position.y - 0.5F * cap_m;
    const float along = tops_towards_1 < 0.0F ? v.position.x : -v.position.x;
    const float z = z_m + along;
    v = on_cone(cone, angle_rad + tops_towards_1 * up / cone.at(z), z);
  }
  append(mesh, flat);
}

void add_words_round(Mesh& mesh, const Typeface& face, std::string_view words, float cap_m, float radius_m,
                     float angle_rad, float z_m) {
  Mesh flat = face.flat(words, static_cast<double>(cap_m), Align::Middle);
  for (Vertex& v : flat.vertices) {
    v = on_cone(Cone{radius_m, 0.0F}, angle_rad + v.position.x / radius_m, z_m + v.position.y - 0.5F * cap_m);
  }
  append(mesh, flat);
}

}  // namespace proofstand::scene

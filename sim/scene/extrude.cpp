#include "sim/scene/extrude.h"

#include "sim/scene/mesh_normals.h"
#include "sim/scene/outline_offset.h"
#include "sim/scene/tessellate.h"

namespace proofstand::scene {
namespace {

std::uint32_t count_of(const Mesh& mesh) { return static_cast<std::uint32_t>(mesh.vertices.size()); }

void add_point(Mesh& mesh, const glm::dvec2& p, double z_m, bool up = true) {
  mesh.vertices.push_back({glm::vec3(p.x, p.y, z_m), {0.0F, 0.0F, up ? 1.0F : -1.0F}, {0.0F, 0.0F}});
}

// triangles of a flat with a height for each point; upside down when it looks to -z
template <class Height>
void add_flat(Mesh& mesh, const Flat& flat, bool up, Height height_m) {
  const std::uint32_t base = count_of(mesh);
  for (std::size_t i = 0; i < flat.points.size(); ++i) add_point(mesh, flat.points[i], height_m(i), up);
  for (std::size_t i = 0; i + 2 < flat.indices.size(); i += 3) {
    mesh.indices.push_back(base + flat.indices[i]);
    mesh.indices.push_back(base + flat.indices[up ? i + 1 : i + 2]);
    mesh.indices.push_back(base + flat.indices[up ? i + 2 : i + 1]);
  }
}

void add_sides(Mesh& mesh, const Outline& outline, double low_m, double high_m) {
  for (const Loop& loop : outline) {
    for (std::size_t i = 0; i < loop.size(); ++i) {
      const glm::dvec2& a = loop[i];
      const glm::dvec2& b = loop[(i + 1) % loop.size()];
      const std::uint32_t base = count_of(mesh);
      add_point(mesh, a, low_m);
      add_point(mesh, b, low_m);
      add_point(mesh, b, high_m);
      add_point(mesh, a, high_m);
      for (const std::uint32_t k : {0U, 1U, 2U, 0U, 2U, 3U}) mesh.indices.push_back(base + k);
    }
  }
}

// one end: the face, and the slope round it when there is a chamfer; gives back where the straight side ends
double add_end(Mesh& faces, Mesh& sides, const Outline& outline, double z_m, double chamfer_m, bool up) {
  const Outline inset = chamfer_m > 0.0 ? offset(outline, -chamfer_m) : Outline{};
  add_flat(faces, tessellate(inset.empty() ? outline : inset), up, [&](std::size_t) { return z_m; });
  if (inset.empty()) return z_m;
  const double side_m = up ? z_m - chamfer_m : z_m + chamfer_m;
  std::size_t outer = 0;
  for (const Loop& loop : outline) outer += loop.size();
  Outline band = outline;
  for (const Loop& loop : inset) band.push_back(reversed(loop));
  add_flat(sides, tessellate(band), up, [&](std::size_t i) { return i < outer ? side_m : z_m; });
  return side_m;
}

}  // namespace

Mesh extrude(const Outline& outline, const Heights& heights) {
  Mesh faces;
  Mesh sides;
  const double low_m = add_end(faces, sides, outline, heights.from_m, heights.chamfer_from_m, false);
  const double high_m = add_end(faces, sides, outline, heights.to_m, heights.chamfer_to_m, true);
  add_sides(sides, outline, low_m, high_m);
  // level faces keep their normals up to their very edge
  Mesh mesh = with_normals(sides);
  append(mesh, faces);
  return mesh;
}

Mesh flat_face(const Outline& outline, double z_m) {
  Mesh mesh;
  add_flat(mesh, tessellate(outline), true, [&](std::size_t) { return z_m; });
  return mesh;
}

}  // namespace proofstand::scene

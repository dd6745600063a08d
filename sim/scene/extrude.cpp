#include "sim/scene/extrude.h"

#include "sim/scene/mesh_normals.h"
#include "sim/scene/outline_offset.h"
#include "sim/scene/tessellate.h"

namespace proofstand::scene {
namespace {

std::uint32_t count_of(const Mesh& mesh) { return static_cast<std::uint32_t>(mesh.vertices.size()); }

void add_point(Mesh& mesh, const glm::dvec2& p, double z_m) {
  mesh.vertices.push_back({glm::vec3(p.x, p.y, z_m), {0.0F, 0.0F, 1.0F}, {0.0F, 0.0F}});
}

// triangles of a flat with a height for each point; upside down when it looks to -z
template <class Height>
void add_flat(Mesh& mesh, const Flat& flat, bool up, Height height_m) {
  const std::uint32_t base = count_of(mesh);
  for (std::size_t i = 0; i < flat.points.size(); ++i) add_point(mesh, flat.points[i], height_m(i));
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
double add_end(Mesh& mesh, const Outline& outline, double z_m, double chamfer_m, bool up) {
  const Outline inset = chamfer_m > 0.0 ? offset(outline, -chamfer_m) : Outline{};
  if (inset.empty()) {
    add_flat(mesh, tessellate(outline), up, [&](std::size_t) { return z_m; });
    return z_m;
  }
  const double side_m = up ? z_m - chamfer_m : z_m + chamfer_m;
  add_flat(mesh, tessellate(inset), up, [&](std::size_t) { return z_m; });
  std::size_t outer = 0;
  for (const Loop& loop : outline) outer += loop.size();
  Outline band = outline;
  for (const Loop& loop : inset) band.push_back(reversed(loop));
  add_flat(mesh, tessellate(band), up, [&](std::size_t i) { return i < outer ? side_m : z_m; });
  return side_m;
}

}  // namespace

Mesh extrude(const Outline& outline, const Heights& heights) {
  Mesh mesh;
  const double low_m = add_end(mesh, outline, heights.from_m, heights.chamfer_from_m, false);
  const double high_m = add_end(mesh, outline, heights.to_m, heights.chamfer_to_m, true);
  add_sides(mesh, outline, low_m, high_m);
  return with_normals(mesh);
}

Mesh flat_face(const Outline& outline, double z_m) {
  Mesh mesh;
  add_flat(mesh, tessellate(outline), true, [&](std::size_t) { return z_m; });
  return mesh;
}

}  // namespace proofstand::scene

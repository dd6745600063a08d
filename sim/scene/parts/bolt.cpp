#include "sim/scene/parts/bolt.h"

#include <algorithm>
#include <cmath>
#include <glm/gtc/constants.hpp>
#include <glm/gtc/matrix_transform.hpp>

#include "sim/scene/mesh_normals.h"
#include "sim/scene/outline_offset.h"
#include "sim/scene/revolve.h"
#include "sim/scene/solids.h"
#include "sim/scene/tessellate.h"

namespace proofstand::scene {
namespace {

constexpr double kTurn = glm::two_pi<double>();
constexpr double kClearance_m = 0.00002;  // of a recess over the base contour
constexpr double kMouth_m = 0.00015;      // bell mouth
constexpr double kMouthDeep_m = 0.00025;
constexpr double kThread_m = 0.0025;       // radius
constexpr double kThreadDepth_1 = 0.6134;  // of the pitch. source: ISO 68-1, external thread 17/24 H less rounding
constexpr double kHeadSag_m = 0.00004;
constexpr double kContourSag_m = 0.00002;

void add_quad(Mesh& mesh, const glm::vec3& a, const glm::vec3& b, const glm::vec3& c, const glm::vec3& d) {
  const auto base = static_cast<std::uint32_t>(mesh.vertices.size());
  for (const glm::vec3& p : {a, b, c, d}) mesh.vertices.push_back({p, {}, {}});
  for (const std::uint32_t k : {0U, 1U, 2U, 0U, 2U, 3U}) mesh.indices.push_back(base + k);
}

void add_triangle(Mesh& mesh, const glm::vec3& a, const glm::vec3& b, const glm::vec3& c) {
  for (const glm::vec3& p : {a, b, c}) {
    mesh.indices.push_back(static_cast<std::uint32_t>(mesh.vertices.size()));
    mesh.vertices.push_back({p, {}, {}});
  }
}

// between two loops of equally many points at two heights; inwards: seen from inside the loops
void add_wall(Mesh& mesh, const Loop& low, double low_m, const Loop& high, double high_m, bool inwards) {
  for (std::size_t i = 0; i < low.size(); ++i) {
    const std::size_t k = (i + 1) % low.size();
    const glm::vec3 a(low[i].x, low[i].y, low_m), b(low[k].x, low[k].y, low_m);
    const glm::vec3 c(high[k].x, high[k].y, high_m), d(high[i].x, high[i].y, high_m);
    if (inwards) {
      add_quad(mesh, b, a, d, c);
    } else {
      add_quad(mesh, a, b, c, d);
    }
  }
}

void add_flat(Mesh& mesh, const Outline& outline, double z_m) {
  const Flat flat = tessellate(outline);
  const auto base = static_cast<std::uint32_t>(mesh.vertices.size());
  for (const glm::dvec2& p : flat.points) mesh.vertices.push_back({glm::vec3(p.x, p.y, z_m), {}, {}});
  for (const std::uint32_t index : flat.indices) mesh.indices.push_back(base + index);
}

Loop grown(const Loop& loop, double scale_1) {
  Loop out = loop;
  for (glm::dvec2& p : out) p *= scale_1;
  return out;
}

Mesh pocket(const Loop& shape, double top_m) {
  Mesh mesh;
  const Loop mouth = grown(shape, 1.0 + kMouth_m / 0.0022);
  const double edge_m = top_m - kMouthDeep_m;
  const double floor_m = top_m - kRecessDepth_m;
  add_wall(mesh, shape, edge_m, mouth, top_m, true);
  add_wall(mesh, shape, floor_m, shape, edge_m, true);
  // the drill's cone below
  const Loop inner = grown(shape, 0.55);
  add_wall(mesh, inner, floor_m - 0.0003, shape, floor_m, true);
  add_flat(mesh, {inner}, floor_m - 0.0003);
  return with_normals(mesh);
}

Mesh head(const bench::BoltPart& part, const Loop& shape) {
  const double radius_m = part.head_diameter_m / 2.0;
  const double tall_m = part.head_height_m;
  const double flat_m = 0.0029;  // radius of the level top round the recess
  Loop profile = {{0.0, 0.0}, {radius_m - 0.0003, 0.0}, {radius_m, 0.0003}, {radius_m, 0.24 * tall_m}};
  // an elliptic dome from the rim to the level top
  for (int i = 1; i <= 6; ++i) {
    const double at = kTurn / 4.0 * i / 6.0;
    profile.emplace_back(flat_m + (radius_m - flat_m) * std::cos(at), tall_m * (0.24 + 0.76 * std::sin(at)));
  }
  profile.back() = {flat_m, tall_m};
  Mesh mesh = revolve(profile, kHeadSag_m);
  const int segments = circle_segments(radius_m, kHeadSag_m);
  Loop rim;
  for (int i = 0; i < segments; ++i) {
    rim.push_back(flat_m * glm::dvec2(std::cos(kTurn * i / segments), std::sin(kTurn * i / segments)));
  }
  add_flat(mesh, {rim, reversed(grown(shape, 1.0 + kMouth_m / 0.0022))}, tall_m);
  return with_normals(mesh);
}

// rows of points along the helix, a crest and a root a turn; the ends run out into plain rings
Mesh thread(double length_m, double pitch_m) {
  constexpr int around = 18;
  const double point_m = 0.8 * pitch_m;
  const double root_m = kThread_m - kThreadDepth_1 * pitch_m;
  const int rows = static_cast<int>(std::ceil(length_m / (pitch_m / 4.0))) + 4;
  const auto radius = [&](double turns) {
    // flat crests and roots, straight flanks between
    const double phase = turns - std::floor(turns);
    const double up = std::clamp((std::abs(phase - 0.5) - 0.0625) / 0.3125, 0.0, 1.0);
    return kThread_m - (1.0 - up) * (kThread_m - root_m);
  };
  Mesh mesh;
  const auto at = [&](int row, int k) {
    const double angle = kTurn * k / around;
    const double along_m = std::clamp(pitch_m * (0.25 * row - static_cast<double>(k) / around), 0.0, length_m);
    double r = radius(along_m / pitch_m + static_cast<double>(k) / around);
    r = std::min(r, root_m + std::max(0.0, (length_m - along_m) / point_m) * (kThread_m - root_m));
    return glm::vec3(r * std::cos(angle), r * std::sin(angle), -along_m);
  };
  // the helix comes back to its start one pitch, four rows, further on
  for (int row = 0; row < rows; ++row) {
    for (int k = 0; k < around; ++k) {
      const bool seam = k + 1 == around;
      const glm::vec3 a = at(row, k);
      const glm::vec3 b = seam ? at(row - 4, 0) : at(row, k + 1);
      const glm::vec3 c = seam ? at(row - 3, 0) : at(row + 1, k + 1);
      const glm::vec3 d = at(row + 1, k);
      add_quad(mesh, a, d, c, b);
    }
  }
  // both ends closed by fans
  for (int k = 0; k < around; ++k) {
    const int next = (k + 1) % around;
    const glm::vec3 foot(0.0F, 0.0F, static_cast<float>(-length_m));
    add_triangle(mesh, {0.0F, 0.0F, 0.0F}, at(0, k), at(0, next));
    add_triangle(mesh, foot, at(rows, next), at(rows, k));
  }
  return with_normals(mesh, 0.5F);
}

}  // namespace

Loop recess_contour() { return contour(hexalobular_25().grown(kClearance_m), kContourSag_m); }

BoltMeshes build_bolt(const bench::BoltPart& part, double pitch_m) {
  BoltMeshes meshes;
  const Loop shape = recess_contour();
  meshes.head = head(part, shape);
  meshes.recess = pocket(shape, part.head_height_m);
  // shaved: the hollows between its lobes cut back until it is nearly round
  Loop ruined = shape;
  for (glm::dvec2& p : ruined) p = glm::normalize(p) * std::max(glm::length(p), 0.00205);
  meshes.recess_ruined = pocket(ruined, part.head_height_m);
  meshes.shank = thread(part.length_m, pitch_m);
  const double from_m = -0.75 * part.length_m;
  const double to_m = -0.30 * part.length_m;
  const double thick_m = kThread_m + 0.00003;
  meshes.patch = revolve(
      {{thick_m - 0.0004, from_m - 0.0004}, {thick_m, from_m}, {thick_m, to_m}, {thick_m - 0.0004, to_m + 0.0004}},
      0.00008);
  return meshes;
}

Mesh build_drop(double size_m) {
  Loop profile;
  for (int i = 0; i <= 6; ++i) {
    const double at = kTurn / 4.0 * i / 6.0;
    profile.emplace_back(size_m * std::cos(at), 0.55 * size_m * std::sin(at));
  }
  profile.back().x = 0.0;
  return revolve(profile, size_m / 40.0);
}

Mesh build_crumbs(double radius_m, int count) {
  Mesh mesh;
  for (int i = 0; i < count; ++i) {
    // sunflower spacing: even, and never in rows
    const double at = 2.399963 * i;
    const double r = radius_m * std::sqrt((i + 0.5) / count);
    const auto size = static_cast<float>(0.00018 + 0.00010 * ((i * 7) % 5));
    const glm::mat4 pose = glm::translate(glm::mat4(1.0F), glm::vec3(r * std::cos(at), r * std::sin(at), 0.3F * size));
    append(mesh, rounded_box(glm::vec3(2.0F * size, 1.4F * size, 1.2F * size), 0.3F * size, 1),
           glm::rotate(pose, static_cast<float>(at), glm::vec3(0.3F, 0.2F, 1.0F)));
  }
  return mesh;
}

}  // namespace proofstand::scene

#include "sim/scene/parts/rotor_track.h"

#include <algorithm>
#include <cmath>
#include <glm/gtc/constants.hpp>

#include "sim/bench/state_surface.h"
#include "sim/bench/surface.h"
#include "sim/scene/dimensions.h"
#include "sim/scene/mesh_normals.h"
#include "sim/scene/outline_offset.h"
#include "sim/scene/parts/rotor.h"
#include "sim/scene/tessellate.h"

namespace proofstand::scene {
namespace {

constexpr double kTurn = glm::two_pi<double>();
constexpr double kRunOut_m = 0.0005;  // over which the wear runs out
constexpr double kVent_sag_m = 0.00006;

glm::dvec2 polar(double radius_m, double angle_rad) {
  return {radius_m * std::cos(angle_rad), radius_m * std::sin(angle_rad)};
}

double smooth_1(double x) {
  const double u = std::clamp(x, 0.0, 1.0);
  return u * u * (3.0 - 2.0 * u);
}

// height of the printed face above the middle plane
double half_thick_m(const bench::RotorPart& part, double radius_m) {
  const bench::TrackWear wear = bench::track_wear(part);
  const double in = smooth_1((radius_m - wear.inner_m) / kRunOut_m);
  const double out = smooth_1((wear.outer_m - radius_m) / kRunOut_m);
  return 0.5 * (part.thickness_new_m - part.worn_m * in * out);
}

std::vector<double> ring_radii_m(const bench::RotorPart& part) {
  const double inner_m = track_inner_m(part);
  const double outer_m = part.diameter_m / 2.0 - size::kEdgeChamfer;
  if (part.worn_m <= 0.0) return {inner_m, 0.5 * (inner_m + outer_m), outer_m};
  const bench::TrackWear wear = bench::track_wear(part);
  return {inner_m, wear.inner_m, wear.inner_m + kRunOut_m, wear.outer_m - kRunOut_m, wear.outer_m, outer_m};
}

// as seen at the face: the other one's angles run the other way
struct Face {
  const bench::RotorPart& part;
  bool printed;
  double inner_m;

  [[nodiscard]] Vertex vertex(const glm::dvec2& p, double middle_rad) const {
    const double radius_m = glm::length(p);
    const double half_m = half_thick_m(part, radius_m);
    const double z_m = part.thickness_new_m / 2.0 + (printed ? half_m : -half_m);
    // near the cell's own middle, so that the last cell ends at 1 and not at 0
    double turn = (middle_rad + std::remainder(std::atan2(p.y, p.x) - middle_rad, kTurn)) / kTurn;
    if (!printed) turn = 1.0 - turn;
    const double share = (radius_m - inner_m) / (part.diameter_m / 2.0 - inner_m);
    return {glm::vec3(p.x, p.y, z_m), {0.0F, 0.0F, printed ? 1.0F : -1.0F}, glm::vec2(turn, share)};
  }
};

void add_cell(Mesh& mesh, const Face& face, const Outline& cell, double middle_rad) {
  const Flat flat = tessellate(cell);
  const auto base = static_cast<std::uint32_t>(mesh.vertices.size());
  for (const glm::dvec2& p : flat.points) mesh.vertices.push_back(face.vertex(p, middle_rad));
  for (std::size_t i = 0; i + 2 < flat.indices.size(); i += 3) {
    for (std::size_t k = 0; k < 3; ++k) mesh.indices.push_back(base + flat.indices[i + (face.printed ? k : 2 - k)]);
  }
}

// from the face down to the middle plane, looking into the hole
void add_vent_walls(Mesh& mesh, const Face& face, const Outline& vents) {
  for (const Loop& loop : vents) {
    for (std::size_t i = 0; i < loop.size(); ++i) {
      const glm::dvec2& p = loop[i];
      const glm::dvec2& q = loop[(i + 1) % loop.size()];
      const double middle_rad = std::atan2(p.y, p.x) < 0.0 ? std::atan2(p.y, p.x) + kTurn : std::atan2(p.y, p.x);
      Vertex a = face.vertex(p, middle_rad);
      Vertex b = face.vertex(q, middle_rad);
      Vertex c = b;
      Vertex d = a;
      c.position.z = static_cast<float>(face.part.thickness_new_m / 2.0);
      d.position.z = c.position.z;
      const auto base = static_cast<std::uint32_t>(mesh.vertices.size());
      mesh.vertices.insert(mesh.vertices.end(), {a, b, c, d});
      const bool up = face.printed;
      for (const std::uint32_t k : {0U, up ? 1U : 2U, up ? 2U : 1U, 0U, up ? 2U : 3U, up ? 3U : 2U}) {
        mesh.indices.push_back(base + k);
      }
    }
  }
}

}  // namespace

double track_inner_m(const bench::RotorPart& part) { return bench::track_grid(part).inner_m; }

Outline rotor_vents(const bench::RotorPart& part) {
  const double inner_m = track_inner_m(part);
  const double width_m = part.diameter_m / 2.0 - inner_m;
  Outline vents;
  for (int cell = 0; cell < size::kVentCells; ++cell) {
    for (int k = 0; k < 3; ++k) {
      // half a step on, so that no hole lies on the seam of the film's map
      const double at = kTurn * (cell + (k + 0.5) / 3.0) / size::kVentCells;
      const double radius_m = inner_m + width_m * (0.287 + 0.213 * k);
      vents.push_back(circle(size::kVentHole / 2.0, polar(radius_m, at), kVent_sag_m));
    }
  }
  return vents;
}

Mesh build_track(const bench::RotorPart& part, bool printed_side) {
  Mesh mesh;
  const Face face{part, printed_side, track_inner_m(part)};
  const Outline vents = rotor_vents(part);
  const std::vector<double> radii_m = ring_radii_m(part);
  constexpr auto sectors = static_cast<int>(bench::kSectors);
  for (int s = 0; s < sectors; ++s) {
    const double from = kTurn * s / sectors;
    const double to = kTurn * (s + 1) / sectors;
    const double middle = 0.5 * (from + to);
    Outline near;  // only the vents that can reach into this sector
    for (const Loop& vent : vents) {
      const double off = std::remainder(std::atan2(vent[0].y, vent[0].x) - middle, kTurn);
      if (std::abs(off) < 0.5 * (to - from) + 0.1) near.push_back(vent);
    }
    for (std::size_t r = 0; r + 1 < radii_m.size(); ++r) {
      const Loop cell = {polar(radii_m[r], from), polar(radii_m[r + 1], from), polar(radii_m[r + 1], to),
                         polar(radii_m[r], to)};
      add_cell(mesh, face, cut({cell}, near), middle);
    }
  }
  add_vent_walls(mesh, face, vents);
  return with_normals(mesh);
}

}  // namespace proofstand::scene

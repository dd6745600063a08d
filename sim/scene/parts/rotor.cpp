#include "sim/scene/parts/rotor.h"

#include <algorithm>
#include <cmath>
#include <glm/gtc/constants.hpp>

#include "sim/scene/dimensions.h"
#include "sim/scene/mesh_normals.h"
#include "sim/scene/outline_offset.h"
#include "sim/scene/parts/rotor_print.h"
#include "sim/scene/parts/rotor_track.h"
#include "sim/scene/tessellate.h"

namespace proofstand::scene {
namespace {

constexpr double kTurn = glm::two_pi<double>();
constexpr double kCarrier_m = 0.0275;  // radius
constexpr double kFillet_m = 0.0025;
constexpr double kRim_sag_m = 0.00004;

// one arm: its middle runs from the carrier to the track, leaning as it goes
Loop arm(const bench::RotorPart& part, double at_rad) {
  constexpr int steps = 8;
  const double from_m = kCarrier_m - 0.002;
  const double to_m = track_inner_m(part) + 0.001;
  Loop right;
  Loop left;
  for (int i = 0; i <= steps; ++i) {
    const double t = static_cast<double>(i) / steps;
    const double radius_m = from_m + (to_m - from_m) * t;
    const double lean = at_rad + size::kArmSweep * t;
    const double half_m = 0.5 * (size::kArmRoot + (size::kArmTip - size::kArmRoot) * t);
    // the arm's own direction leans against the radius
    const double slope = std::atan2(radius_m * size::kArmSweep, to_m - from_m);
    const glm::dvec2 at = radius_m * glm::dvec2(std::cos(lean), std::sin(lean));
    const glm::dvec2 side(-std::sin(lean + slope), std::cos(lean + slope));
    right.push_back(at - side * half_m);
    left.push_back(at + side * half_m);
  }
  right.insert(right.end(), left.rbegin(), left.rend());
  return right;
}

Outline disc(double radius_m, double sag_m = kRim_sag_m) { return {circle(radius_m, {0.0, 0.0}, sag_m)}; }

// what of a shape lies between two radii
Outline ring_of(const Outline& shape, double inner_m, double outer_m) {
  Outline ring = cut(shape, disc(inner_m));
  return cut(ring, {circle(1.0), reversed(circle(outer_m, {0.0, 0.0}, kRim_sag_m))});
}

void add_face(Mesh& mesh, const Outline& outline, double z_m, bool up) {
  const Flat flat = tessellate(outline);
  const auto base = static_cast<std::uint32_t>(mesh.vertices.size());
  for (const glm::dvec2& p : flat.points) {
    mesh.vertices.push_back({glm::vec3(p.x, p.y, z_m), {0.0F, 0.0F, up ? 1.0F : -1.0F}, {}});
  }
  for (std::size_t i = 0; i + 2 < flat.indices.size(); i += 3) {
    for (const std::size_t k :
         {std::size_t{0}, up ? std::size_t{1} : std::size_t{2}, up ? std::size_t{2} : std::size_t{1}}) {
      mesh.indices.push_back(base + flat.indices[i + k]);
    }
  }
}

// a wall with its two chamfers, from a loop and its inset: three quads a side where both have equally many points,
// else the band between them is tessellated
struct Walls {
  RotorMeshes& parts;
  double inner_m, outer_m;

  Mesh& part_at(double radius_m) const {
    if (radius_m > outer_m - 0.001) return parts.edge;
    if (radius_m > inner_m - 0.0012) return parts.inner_edge;
    return radius_m < kCarrier_m + 0.0006 ? parts.carrier_outer : parts.arms;
  }
  void add(const glm::vec3& a, const glm::vec3& b, const glm::vec3& c) const {
    const glm::vec2 middle = glm::vec2(a + b + c) / 3.0F;
    Mesh& mesh = part_at(static_cast<double>(glm::length(middle)));
    for (const glm::vec3& p : {a, b, c}) {
      mesh.indices.push_back(static_cast<std::uint32_t>(mesh.vertices.size()));
      mesh.vertices.push_back({p, {}, {}});
    }
  }
};

void add_walls(const Walls& walls, const Outline& outline, const Outline& inset, double thick_m) {
  const double c = size::kEdgeChamfer;
  for (const Loop& loop : outline) {
    for (std::size_t i = 0; i < loop.size(); ++i) {
      const glm::dvec2& p = loop[i];
      const glm::dvec2& q = loop[(i + 1) % loop.size()];
      const glm::vec3 a(p.x, p.y, c), b(q.x, q.y, c), d(q.x, q.y, thick_m - c), e(p.x, p.y, thick_m - c);
      walls.add(a, b, d);
      walls.add(a, d, e);
    }
  }
  std::size_t outer = 0;
  for (const Loop& loop : outline) outer += loop.size();
  Outline band = outline;
  for (const Loop& loop : inset) band.push_back(reversed(loop));
  const Flat flat = tessellate(band);
  for (std::size_t i = 0; i + 2 < flat.indices.size(); i += 3) {
    const auto at = [&](std::size_t k, bool top) {
      const std::uint32_t index = flat.indices[i + k];
      const double in = index < outer ? c : 0.0;
      return glm::vec3(flat.points[index].x, flat.points[index].y, top ? thick_m - in : in);
    };
    walls.add(at(0, true), at(1, true), at(2, true));
    walls.add(at(0, false), at(2, false), at(1, false));
  }
}

}  // namespace

Outline rotor_outline(const bench::RotorPart& part) {
  const double inner_m = track_inner_m(part);
  Outline shape = {circle(part.diameter_m / 2.0, {0.0, 0.0}, kRim_sag_m),
                   reversed(circle(inner_m, {0.0, 0.0}, kRim_sag_m))};
  shape = joined(shape, disc(kCarrier_m));
  for (int k = 0; k < part.arms; ++k) shape = joined(shape, {arm(part, kTurn * k / std::max(1, part.arms))});
  // corners inside the windows become round
  shape = offset_round(offset(shape, kFillet_m), -kFillet_m);
  Outline holes = {circle(part.bore_m / 2.0)};
  for (int k = 0; k < part.holes; ++k) {
    const double at = kTurn * k / part.holes;
    holes.push_back(
        circle(part.hole_diameter_m / 2.0, part.hole_circle_m / 2.0 * glm::dvec2(std::cos(at), std::sin(at))));
  }
  return cut(shape, holes);
}

double rotor_volume_m3(const bench::RotorPart& part) {
  return (area_m2(rotor_outline(part)) - area_m2(rotor_vents(part))) * part.thickness_new_m;
}

RotorMeshes build_rotor(const bench::RotorPart& part, const Typeface& face) {
  RotorMeshes parts;
  const double thick_m = part.thickness_new_m;
  const double inner_m = track_inner_m(part);
  const double outer_m = part.diameter_m / 2.0;
  const Outline shape = rotor_outline(part);
  const Outline inset = offset(shape, -size::kEdgeChamfer);
  add_walls({parts, inner_m, outer_m}, shape, inset, thick_m);
  // before the faces are added: level faces keep their normals up to their very edge
  for (Mesh* mesh : {&parts.edge, &parts.inner_edge, &parts.arms, &parts.carrier_outer}) *mesh = with_normals(*mesh);
  const Outline carrier = ring_of(inset, 0.005, kCarrier_m);
  const Outline arms = ring_of(inset, kCarrier_m, inner_m);
  add_face(parts.carrier_outer, carrier, thick_m, true);
  add_face(parts.carrier_inner, carrier, 0.0, false);
  add_face(parts.arms, arms, thick_m, true);
  add_face(parts.arms, arms, 0.0, false);
  parts.track_outer = build_track(part, true);
  parts.track_inner = build_track(part, false);
  parts.print = build_rotor_print(part, face);
  return parts;
}

}  // namespace proofstand::scene

#include "sim/scene/solids.h"

#include <cmath>
#include <glm/gtc/constants.hpp>

#include "sim/scene/extrude.h"
#include "sim/scene/glyphs.h"
#include "sim/scene/mesh_tidy.h"
#include "sim/scene/revolve.h"
#include "sim/scene/sweep.h"
#include "tests/support/catch.h"

namespace proofstand::testing {
namespace {

using scene::Mesh;

constexpr double kPi = glm::pi<double>();

// closed, faces outwards, normals of unit length that look the way their triangle does
void check_solid(const Mesh& mesh, double volume_m3, double tolerance_1) {
  CHECK(scene::is_closed(mesh));
  CHECK(scene::volume_m3(mesh) == Approx(volume_m3).epsilon(tolerance_1));
  for (std::size_t i = 0; i + 2 < mesh.indices.size(); i += 3) {
    const scene::Vertex& a = mesh.vertices[mesh.indices[i]];
    const scene::Vertex& b = mesh.vertices[mesh.indices[i + 1]];
    const scene::Vertex& c = mesh.vertices[mesh.indices[i + 2]];
    const glm::dvec3 across = glm::cross(glm::dvec3(b.position - a.position), glm::dvec3(c.position - a.position));
    if (glm::length(across) < 1e-12) continue;
    for (const scene::Vertex* v : {&a, &b, &c}) {
      REQUIRE(glm::length(v->normal) == Approx(1.0F).margin(1e-3));
      REQUIRE(glm::dot(glm::normalize(across), glm::dvec3(v->normal)) > 0.2);
    }
  }
}

}  // namespace

// danger: open or inside-out solids: holes in pictures, faces that vanish when back faces are left out
TEST_CASE("turned parts are closed and as large as they should be") {
  check_solid(scene::bar(0.010, 0.0, 0.050, 0.0, 0.00001), kPi * 0.0001 * 0.050, 0.002);
  check_solid(scene::pipe(0.006, 0.010, -0.010, 0.010, 0.0, 0.00001), kPi * (0.0001 - 0.000036) * 0.020, 0.002);
  // a chamfer of 45° takes off a ring of triangular section
  const double whole = scene::volume_m3(scene::bar(0.010, 0.0, 0.050, 0.0));
  const double less = scene::volume_m3(scene::bar(0.010, 0.0, 0.050, 0.001));
  CHECK(whole - less == Approx(2.0 * kPi * 2.0 * 0.5e-6 * (0.010 - 0.001 / 3.0)).epsilon(0.02));
}

TEST_CASE("extrusions with holes and chamfers are closed") {
  const scene::Outline plate = {scene::rounded_rectangle(0.060, 0.040, 0.006), scene::reversed(scene::circle(0.008))};
  const double area = scene::area_m2(plate);
  check_solid(scene::extrude(plate, {0.0, 0.005, 0.0, 0.0}), area * 0.005, 1e-4);
  const Mesh bevelled = scene::extrude(plate, {0.0, 0.005, 0.0005, 0.0005});
  CHECK(scene::is_closed(bevelled));
  CHECK(scene::volume_m3(bevelled) < area * 0.005);
  CHECK(scene::volume_m3(bevelled) > area * 0.005 * 0.97);
}

TEST_CASE("balls, capsules and rounded boxes are closed") {
  check_solid(scene::ball(0.010F, 24), 4.0 / 3.0 * kPi * 1e-6, 0.02);
  check_solid(scene::capsule({0.0F, 0.0F, 0.0F}, 0.008F, {0.0F, 0.03F, 0.01F}, 0.008F, 48),
              kPi * 6.4e-5 * std::sqrt(0.001) + 4.0 / 3.0 * kPi * 5.12e-7, 0.02);
  const double r = 0.002;
  const double x = 0.030 - 2 * r, y = 0.020 - 2 * r, z = 0.010 - 2 * r;
  const double box =
      x * y * z + 2 * r * (x * y + y * z + z * x) + kPi * r * r * (x + y + z) + 4.0 / 3.0 * kPi * r * r * r;
  check_solid(scene::rounded_box({0.030F, 0.020F, 0.010F}, 0.002F, 8), box, 0.005);
}

TEST_CASE("a swept bar is closed and keeps its section round bends") {
  const auto path = scene::bent_path({{0.0F, 0.0F, 0.0F}, {0.0F, 0.0F, 0.1F}, {0.024F, 0.0F, 0.1F}}, 0.006F, 12);
  const Mesh key = scene::sweep(scene::circle(0.00225, {0.0, 0.0}, 0.000005), path);
  CHECK(scene::is_closed(key));
  // along the middle of the bend: two straight runs and a quarter of a circle (Pappus)
  const double length = 0.094 + 0.018 + kPi / 2.0 * 0.006;
  CHECK(scene::volume_m3(key) == Approx(kPi * 0.00225 * 0.00225 * length).epsilon(0.01));
  CHECK(scene::is_closed(
      scene::tube(scene::smooth_path({{0.0F, 0.0F, 0.0F}, {0.1F, 0.05F, 0.0F}, {0.2F, 0.0F, 0.1F}}), 0.003F)));
}

// danger: tidying loses triangles, or simplifying tears a solid open
TEST_CASE("tidied meshes are the same solid, simplified ones nearly") {
  const Mesh ball = scene::ball(0.010F, 32);
  const Mesh tidy = scene::tidied(ball);
  CHECK(tidy.vertices.size() <= ball.vertices.size());
  CHECK(scene::volume_m3(tidy) == Approx(scene::volume_m3(ball)).epsilon(1e-6));
  CHECK(scene::is_closed(tidy));
  const Mesh few = scene::simplified(ball, 400, 0.0005F);
  CHECK(few.indices.size() <= 3 * 400);
  CHECK(scene::is_closed(few));
  CHECK(scene::volume_m3(few) == Approx(scene::volume_m3(ball)).epsilon(0.1));
}

// danger: mirrored or upside-down figures on a scale; a crash where no font is installed
TEST_CASE("print reads from left to right at the height asked for, and is absent without a font") {
  const scene::Typeface none;
  CHECK_FALSE(none.found());
  CHECK(none.flat("1.50", 0.002).indices.empty());
  CHECK(none.round_words("1.50", 0.002, 0.02, 0.0).indices.empty());
  CHECK(none.width_m("1.50", 0.002) == 0.0);
  const scene::Typeface face = scene::Typeface::find();
  if (!face.found()) return;
  const Mesh capital = face.flat("H", 0.010);
  float low = 1.0F, high = -1.0F;
  for (const scene::Vertex& v : capital.vertices) {
    low = std::min(low, v.position.y);
    high = std::max(high, v.position.y);
    CHECK(v.normal.z == 1.0F);
  }
  CHECK(low == Approx(0.0F).margin(1e-6));
  CHECK(high == Approx(0.010F).margin(1e-6));
  // an L has its foot to the right of its stem
  const scene::Outline letter = face.outline("L", 0.010);
  REQUIRE(letter.size() == 1);
  double foot = 0.0, top = 0.0;
  for (const glm::dvec2& p : letter[0]) (p.y < 0.005 ? foot : top) = std::max(p.y < 0.005 ? foot : top, p.x);
  CHECK(foot > 1.5 * top);
  // the hole in an o is a hole
  const scene::Outline round = face.outline("o", 0.010);
  REQUIRE(round.size() == 2);
  CHECK(scene::area_m2(round[0]) * scene::area_m2(round[1]) < 0.0);
  CHECK(face.width_m("11", 0.010) > face.width_m("1", 0.010));
}

}  // namespace proofstand::testing

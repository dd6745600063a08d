#include <glm/gtc/constants.hpp>
#include <set>

#include "sim/scene/dimensions.h"
#include "sim/scene/parts/bolt.h"
#include "sim/scene/parts/caliper.h"
#include "sim/scene/parts/fork.h"
#include "sim/scene/parts/rim.h"
#include "sim/scene/parts/rotor.h"
#include "sim/scene/parts/rotor_track.h"
#include "sim/scene/parts/spokes.h"
#include "sim/scene/wheel_pose.h"
#include "tests/support/catch.h"
#include "tests/support/six_bolt_setup.h"

namespace proofstand::testing {
namespace {

using scene::Mesh;

Mesh together(const std::vector<const Mesh*>& parts) {
  Mesh mesh;
  for (const Mesh* part : parts) scene::append(mesh, *part);
  return mesh;
}

constexpr double kSteel_kg_m3 = 7750.0;

}  // namespace

// danger: spokes that end in the air or inside the rim
// source: a spoke-length note prints 273.246980 mm, a script's example 265.8 mm; the third pair by the same formula
TEST_CASE("spokes are as long as published examples") {
  CHECK(scene::spoke_length_m(0.566, 0.0569, 0.0218, 32, 3, 0.0020) * 1e3 == Approx(273.246980).margin(0.001));
  CHECK(scene::spoke_length_m(0.555, 0.058, 0.039, 36, 3, 0.0026) * 1e3 == Approx(265.76).margin(0.05));
  CHECK(scene::spoke_length_m(0.600, 0.0555, 0.027, 32, 3, 0.0029) * 1e3 == Approx(290.32).margin(0.01));
  CHECK(scene::spoke_length_m(0.600, 0.0555, 0.0354, 32, 3, 0.0029) * 1e3 == Approx(291.21).margin(0.01));
}

// source: own construction, from memory
TEST_CASE("lacing uses every hole of the rim once, at the angle that the length assumes") {
  const std::vector<std::pair<int, int>> wheels = {{32, 3}, {28, 2}, {24, 2}, {36, 3}, {36, 4}};
  for (const auto& [spokes, crossings] : wheels) {
    std::set<int> used;
    for (int j = 0; j < spokes / 2; ++j) {
      for (const bool disc : {true, false}) {
        const int i = scene::rim_hole(disc, j, spokes, crossings);
        used.insert(i);
        const double off = std::remainder(scene::rim_hole_rad(i, spokes) - scene::flange_hole_rad(disc, j, spokes),
                                          glm::two_pi<double>());
        CHECK(std::abs(off) == Approx(glm::two_pi<double>() * crossings / (spokes / 2.0)).margin(1e-9));
      }
    }
    CHECK(used.size() == static_cast<std::size_t>(spokes));
  }
}

// source: two published circumference tables quote 678 mm for 28-622, as bead seat and twice the width
TEST_CASE("a tyre of 28-622 is 678 mm across, drawn so too") {
  CHECK(scene::tyre_diameter_m(0.622, 0.028) == Approx(0.678));
  const scene::RimMeshes rim = scene::build_rim(scene::Typeface());
  float most = 0.0F;
  for (const scene::Vertex& v : rim.tyre.vertices) most = std::max(most, glm::length(glm::vec2(v.position)));
  CHECK(most == Approx(0.339F).margin(0.0006));
  CHECK(scene::is_closed(rim.rim));
  CHECK(scene::volume_m3(rim.rim) > 0.0);
}

// source: formula of the rings and arms of a 160 mm rotor, 108 g, real ones 90 to 130 g: from memory
TEST_CASE("a rotor of 160 mm weighs what such rotors weigh") {
  const bench::RotorPart part;
  CHECK(scene::rotor_volume_m3(part) * kSteel_kg_m3 == Approx(0.108).margin(0.012));
  const double open = scene::area_m2(scene::rotor_vents(part)) / (glm::pi<double>() * (0.0064 - 0.004225));
  CHECK(open > 0.20);
  CHECK(open < 0.35);
  for (const scene::Loop& vent : scene::rotor_vents(part)) {
    for (const glm::dvec2& p : vent) {
      CHECK(glm::length(p) < 0.080 - 0.0014);
      CHECK(glm::length(p) > 0.065 + 0.0);
    }
  }
}

// danger: a film painted on the wrong spot: what was touched is not what looks greasy
TEST_CASE("every point of the track carries its own angle and radius") {
  bench::RotorPart part;
  for (const bool printed : {true, false}) {
    const Mesh track = scene::build_track(part, printed);
    float most = 0.0F;
    for (const scene::Vertex& v : track.vertices) {
      const glm::dvec2 at(v.position);
      const double radius = glm::length(at);
      double angle = std::atan2(at.y, at.x) / glm::two_pi<double>();
      if (!printed) angle = -angle;  // seen at the other face angles run the other way
      CHECK(std::abs(std::remainder(static_cast<double>(v.coords.x) - angle, 1.0)) < 1e-4);
      CHECK(static_cast<double>(v.coords.y) == Approx((radius - 0.065) / 0.015).margin(1e-3));
      most = std::max(most, v.coords.x);
    }
    CHECK(most == Approx(1.0F).margin(1e-4));
    // no triangle spans the seam
    for (std::size_t i = 0; i + 2 < track.indices.size(); i += 3) {
      const float a = track.vertices[track.indices[i]].coords.x;
      CHECK(std::abs(a - track.vertices[track.indices[i + 1]].coords.x) < 0.1F);
      CHECK(std::abs(a - track.vertices[track.indices[i + 2]].coords.x) < 0.1F);
    }
  }
}

TEST_CASE("a worn track lies lower than its lips, by half the wear on either face") {
  bench::RotorPart part;
  part.worn_m = 0.00038;
  const Mesh track = scene::build_track(part, true);
  float rim = 0.0F, middle = 1.0F;
  for (const scene::Vertex& v : track.vertices) {
    const float radius = glm::length(glm::vec2(v.position));
    if (v.normal.z < 0.9F) continue;
    if (radius > 0.0792F) rim = std::max(rim, v.position.z);
    if (radius > 0.070F && radius < 0.074F) middle = std::min(middle, v.position.z);
  }
  CHECK(rim == Approx(0.0018F).margin(1e-6));
  CHECK(middle == Approx(0.0018F - 0.00019F).margin(1e-6));
}

// danger: a bolt's head that one can look through, a recess that is no pocket
TEST_CASE("bolt heads and shanks are closed solids with a recess of the drive's depth") {
  const scene::BoltMeshes bolt = scene::build_bolt(bench::BoltPart(), 0.0008);
  for (const Mesh* recess : {&bolt.recess, &bolt.recess_ruined}) {
    if (recess == &bolt.recess) CHECK(scene::is_closed(together({&bolt.head, recess})));
    float floor = 1.0F, top = 0.0F;
    for (const scene::Vertex& v : recess->vertices) {
      floor = std::min(floor, v.position.z);
      top = std::max(top, v.position.z);
    }
    CHECK(top == Approx(0.0025F).margin(1e-6));
    CHECK(top - floor >= 0.00152F);  // source: ISO 14580, least depth of the recess for M5
  }
  CHECK(scene::is_closed(bolt.shank));
  // between a rod of the root's and one of the nominal diameter. source: ISO 261, M5 x 0.8
  const double volume = scene::volume_m3(bolt.shank);
  CHECK(volume > glm::pi<double>() * 0.00201 * 0.00201 * 0.0092);
  CHECK(volume < glm::pi<double>() * 0.0025 * 0.0025 * 0.010);
}

// source: frame builder's published equations for a post mount; GC-numbers of its table from memory
TEST_CASE("the caliper's mount stands where published equations put it") {
  const auto check = [](double rotor_m, double face_mm, double first_mm) {
    const scene::PostMount mount = scene::post_mount(rotor_m);
    CHECK(mount.face_m * 1e3 == Approx(face_mm).margin(0.01));
    CHECK(mount.first_m * 1e3 == Approx(first_mm).margin(0.01));
    // whatever the rotor, the pads lie the same way from the first bolt
    CHECK((mount.pads_m.x - mount.first_m) * 1e3 == Approx(29.45).margin(0.01));
    CHECK((mount.pads_m.y - mount.face_m) * 1e3 == Approx(6.89).margin(0.01));
  };
  check(0.160, 55.90, 6.80);
  check(0.180, 64.56, 11.80);
  check(0.203, 74.52, 17.55);
}

// danger: a rotor that runs through its pads or the fork
TEST_CASE("pads stand off the rotor by their gap and the leg clears it") {
  const scene::CaliperMeshes caliper = scene::build_caliper(0.160, 0.0018, 0.0003, 0.0003);
  float nearest_out = -1.0F, nearest_in = 1.0F;
  const auto middle = static_cast<float>(-(scene::size::kSeat + 0.0009));
  for (const scene::Vertex& v : caliper.lining.vertices) {
    if (v.position.z < middle) nearest_out = std::max(nearest_out, v.position.z - middle);
    if (v.position.z > middle) nearest_in = std::min(nearest_in, v.position.z - middle);
    const float radius = glm::length(glm::vec2(v.position));
    CHECK(radius < 0.0805F);
    CHECK(radius > 0.0640F);
  }
  CHECK(nearest_out == Approx(-0.0012F).margin(1e-6));
  CHECK(nearest_in == Approx(0.0012F).margin(1e-6));
  for (const Mesh* part : {&caliper.body, &caliper.posts}) {
    for (const scene::Vertex& v : part->vertices) {
      const bool beside = std::abs(v.position.z - middle) < 0.002F;
      if (beside) CHECK(glm::length(glm::vec2(v.position)) > 0.080F);
    }
  }
  const scene::ForkMeshes fork = scene::build_fork();
  for (const scene::Vertex& v : fork.legs.vertices) {
    if (glm::length(glm::vec2(v.position)) < 0.083F && v.position.z < 0.0F) CHECK(v.position.z < middle - 0.0029F);
  }
}

// source: six on a circle of 44 mm, computed; the pattern itself is common practice
TEST_CASE("six bolts stand on their circle, counted counter-clockwise seen from outside") {
  const bench::BenchSetup setup = six_bolt().setup;
  std::vector<glm::dvec2> at;
  for (std::size_t k = 0; k < 6; ++k) {
    const glm::vec3 p = glm::vec3((glm::inverse(scene::disc_frame()) * scene::hole_frame(setup, k))[3]);
    CHECK(p.z == Approx(0.0F).margin(1e-6));
    at.push_back(glm::dvec2(p) * 1e3);
  }
  CHECK(at[1].x == Approx(11.000).margin(0.001));
  CHECK(at[1].y == Approx(19.053).margin(0.001));
  CHECK(at[2].x == Approx(-11.000).margin(0.001));
  CHECK(glm::length(at[0] - at[2]) == Approx(38.105).margin(0.001));
  CHECK(glm::length(at[0] - at[3]) == Approx(44.000).margin(0.001));
}

}  // namespace proofstand::testing

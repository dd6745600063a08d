#include "sim/scene/outline.h"

#include <algorithm>
#include <cmath>
#include <glm/gtc/constants.hpp>

#include "sim/scene/outline_offset.h"
#include "sim/scene/tessellate.h"
#include "tests/support/catch.h"

namespace proofstand::testing {
namespace {

using scene::Hexalobular;
using scene::Loop;
using scene::Outline;

constexpr double kFine_m = 0.0000002;

double filled_m2(const scene::Flat& flat) {
  double twice = 0.0;
  for (std::size_t i = 0; i + 2 < flat.indices.size(); i += 3) {
    const glm::dvec2 a = flat.points[flat.indices[i]];
    const glm::dvec2 b = flat.points[flat.indices[i + 1]] - a;
    const glm::dvec2 c = flat.points[flat.indices[i + 2]] - a;
    const double area = b.x * c.y - b.y * c.x;
    CHECK(area >= -1e-18);
    twice += area;
  }
  return twice / 2.0;
}

}  // namespace

// danger: a recess drawn as a star or a gear is not the drive that the tools fit
// source: widths of ISO 10664 size 25 (nominal 4.50 and 3.25 mm); radii listed for its gauge, 0.375 and 0.920 mm, in an
// open CAD library's table; area and largest and least radius: own derivation, from memory
TEST_CASE("the hexalobular contour of size 25 has its published widths and closes tangentially") {
  const Hexalobular drive = scene::hexalobular_25();
  CHECK(drive.hollow_radius_m() == Approx(0.000917).margin(0.0000005));
  CHECK(std::abs(drive.hollow_radius_m() - 0.000920) < 0.000005);
  const Loop loop = scene::contour(drive, kFine_m);
  double least = 1.0;
  double most = 0.0;
  for (const glm::dvec2& p : loop) {
    least = std::min(least, glm::length(p));
    most = std::max(most, glm::length(p));
  }
  CHECK(least == Approx(0.001589).margin(0.000001));
  CHECK(most == Approx(0.002229).margin(0.000001));
  CHECK(scene::area_m2(loop) * 1e6 == Approx(11.017).margin(0.005));
  // no corner: the direction of the edges turns by little at every point
  for (std::size_t i = 0; i < loop.size(); ++i) {
    const glm::dvec2 in = glm::normalize(loop[(i + 1) % loop.size()] - loop[i]);
    const glm::dvec2 out = glm::normalize(loop[(i + 2) % loop.size()] - loop[(i + 1) % loop.size()]);
    CHECK(glm::dot(in, out) > 0.98);
  }
}

// danger: a tip drawn as large as its recess would never go in
TEST_CASE("a driver's tip lies inside the recess by the same hair everywhere") {
  const Loop recess = scene::contour(scene::hexalobular_25().grown(0.00002));
  const Loop tip = scene::contour(scene::hexalobular_25().grown(-0.00002));
  // source: published width of a size-25 bit 4.43 mm; from memory
  double most = 0.0;
  for (const glm::dvec2& p : tip) most = std::max(most, p.x);
  CHECK(2.0 * most == Approx(0.00443).margin(0.00003));
  CHECK(scene::area_m2(scene::cut({tip}, {recess})) == Approx(0.0).margin(1e-12));
}

TEST_CASE("arcs, circles and rounded corners keep to their sag and area") {
  const double pi = glm::pi<double>();
  CHECK(scene::area_m2(scene::circle(0.080)) == Approx(pi * 0.0064).epsilon(0.002));
  CHECK(scene::area_m2(scene::rounded_rectangle(0.030, 0.020, 0.004, kFine_m)) ==
        Approx(0.0006 - (4.0 - pi) * 0.000016).epsilon(1e-3));
  CHECK(scene::area_m2(scene::slot(0.020, 0.006, kFine_m)) == Approx(0.014 * 0.006 + pi * 0.000009).epsilon(1e-3));
  const Loop hexagon = scene::regular_polygon(6, 0.010);
  CHECK(scene::area_m2(hexagon) == Approx(std::sqrt(3.0) / 2.0 * 0.0001));
  const int segments = scene::circle_segments(0.080, 0.00005);
  CHECK(0.080 * (1.0 - std::cos(pi / segments)) <= 0.00005);
}

// danger: chamfers that cut too deep or holes that grow the wrong way
TEST_CASE("an inset takes off the outside and widens holes") {
  const Outline ring = {scene::regular_polygon(4, 0.020), scene::reversed(scene::regular_polygon(4, 0.010))};
  CHECK(scene::area_m2(scene::offset(ring, -0.001)) == Approx(0.018 * 0.018 - 0.012 * 0.012).epsilon(1e-4));
  CHECK(scene::area_m2(scene::offset(ring, 0.001)) == Approx(0.022 * 0.022 - 0.008 * 0.008).epsilon(1e-4));
  CHECK(scene::offset(ring, -0.004).empty());
}

TEST_CASE("a filled outline has the outline's area, holes that overlap and cut the rim included") {
  const Outline plate = {scene::circle(0.040)};
  const Outline holes = {scene::circle(0.010, {0.010, 0.0}), scene::circle(0.010, {0.020, 0.0}),
                         scene::circle(0.010, {0.0, 0.038})};
  Outline raw = plate;
  for (const Loop& hole : holes) raw.push_back(scene::reversed(hole));
  const double clean_m2 = scene::area_m2(scene::cut(plate, holes));
  CHECK(filled_m2(scene::tessellate(raw)) == Approx(clean_m2).epsilon(1e-4));
  CHECK(filled_m2(scene::tessellate(scene::cut(plate, holes))) == Approx(clean_m2).epsilon(1e-9));
}

}  // namespace proofstand::testing

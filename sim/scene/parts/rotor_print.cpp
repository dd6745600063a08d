#include "sim/scene/parts/rotor_print.h"

#include <algorithm>
#include <cmath>
#include <glm/gtc/constants.hpp>
#include <glm/gtc/matrix_transform.hpp>
#include <string>

#include "sim/scene/dimensions.h"
#include "sim/scene/extrude.h"
#include "sim/scene/parts/rotor_track.h"

namespace proofstand::scene {
namespace {

constexpr double kTurn = glm::two_pi<double>();
constexpr double kRaised_m = 0.00004;
constexpr double kWords_m = 0.0023;  // height of capitals

// metres as millimetres with so many decimals, for a part that no locale ever reads
std::string millimetres(double length_m, int decimals) {
  const int scale = decimals == 0 ? 1 : decimals == 1 ? 10 : 100;
  const auto whole = static_cast<int>(std::lround(length_m * 1000.0 * scale));
  std::string text = std::to_string(whole / scale);
  if (decimals == 0) return text;
  const std::string rest = std::to_string(whole % scale);
  return text + "." + std::string(static_cast<std::size_t>(decimals) - rest.size(), '0') + rest;
}

// an arrow along a circle, pointing counter-clockwise: the way a wheel rolls forward, seen from outside
Loop arrow(double radius_m, double middle_rad, double length_m) {
  constexpr int steps = 8;
  const double half_rad = 0.5 * length_m / radius_m;
  const double neck_rad = middle_rad + 0.15 * half_rad;
  const double shaft_m = 0.0009;
  const double barb_m = 0.0021;
  const auto at = [&](double r, double a) { return r * glm::dvec2(std::cos(a), std::sin(a)); };
  Loop loop;
  const double from = middle_rad - half_rad;
  for (int i = 0; i <= steps; ++i) loop.push_back(at(radius_m + shaft_m, from + (neck_rad - from) * i / steps));
  Loop back;
  for (int i = 0; i <= steps; ++i) back.push_back(at(radius_m - shaft_m, neck_rad + (from - neck_rad) * i / steps));
  loop.push_back(at(radius_m + barb_m, neck_rad));
  loop.push_back(at(radius_m, middle_rad + half_rad));
  loop.push_back(at(radius_m - barb_m, neck_rad));
  loop.insert(loop.end(), back.begin(), back.end());
  return loop;
}

// words that run along an arm, read from the hub outwards
void add_along_arm(Mesh& mesh, const bench::RotorPart& part, const Typeface& face, int number, std::string_view words,
                   double z_m) {
  const double from_m = 0.0290;
  const double to_m = track_inner_m(part);
  const double at_rad = kTurn * number / std::max(1, part.arms);
  const auto point = [&](double t) {
    const double r = from_m + (to_m - from_m) * t;
    const double a = at_rad + size::kArmSweep * (0.06 + 0.94 * t);
    return r * glm::dvec2(std::cos(a), std::sin(a));
  };
  const glm::dvec2 middle = point(0.5);
  const glm::dvec2 along = point(0.7) - point(0.3);
  const glm::mat4 to_middle = glm::translate(glm::mat4(1.0F), glm::vec3(middle.x, middle.y, z_m));
  const glm::mat4 turned =
      glm::rotate(to_middle, static_cast<float>(std::atan2(along.y, along.x)), glm::vec3(0.0F, 0.0F, 1.0F));
  append(mesh, face.flat(words, 0.0030, Align::Middle), glm::translate(turned, glm::vec3(0.0F, -0.0015F, 0.0F)));
}

}  // namespace

Mesh build_rotor_print(const bench::RotorPart& part, const Typeface& face) {
  Mesh mesh;
  const double z_m = part.thickness_new_m + kRaised_m;
  const double circle_m = part.hole_circle_m / 2.0;
  const double gap_rad = kTurn / std::max(1, part.holes);
  if (part.has_arrow) {
    for (int k = 0; k < part.holes; k += 2) {
      append(mesh, flat_face({arrow(circle_m, gap_rad * (k + 0.5), 0.0115)}, z_m));
    }
  }
  if (!part.printed) return mesh;
  // between the other holes, where heads leave it uncovered
  append(mesh,
         face.round_words(millimetres(part.diameter_m, 0), kWords_m, circle_m - kWords_m / 2.0, gap_rad * 1.5, z_m));
  if (part.has_arrow) add_along_arm(mesh, part, face, 0, "rotation", z_m);
  if (part.stamp_m > 0.0) {
    const std::string least = millimetres(part.stamp_m, 2);
    append(mesh, face.round_words("min " + least, kWords_m, circle_m - kWords_m / 2.0, gap_rad * 3.5, z_m));
    add_along_arm(mesh, part, face, 2, "min. " + least + " mm", z_m);
  }
  if (part.resin_only) add_along_arm(mesh, part, face, 4, "resin pads only", z_m);
  return mesh;
}

}  // namespace proofstand::scene

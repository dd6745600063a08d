#include "sim/scene/outline.h"

#include <algorithm>
#include <cmath>
#include <glm/gtc/constants.hpp>

namespace proofstand::scene {
namespace {

constexpr double kTurn = glm::two_pi<double>();

glm::dvec2 towards(double angle_rad) { return {std::cos(angle_rad), std::sin(angle_rad)}; }

double cross(const glm::dvec2& a, const glm::dvec2& b) { return a.x * b.y - a.y * b.x; }

void add(Loop& loop, const Loop& more) { loop.insert(loop.end(), more.begin(), more.end()); }

// one corner of a polygon: replaced by the arc that touches both its sides
Loop corner(const glm::dvec2& before, const glm::dvec2& at, const glm::dvec2& after, double radius_m, double sag_m) {
  const glm::dvec2 in = glm::normalize(before - at);
  const glm::dvec2 out = glm::normalize(after - at);
  const double between = std::acos(std::clamp(glm::dot(in, out), -1.0, 1.0));
  const double room_m = 0.5 * std::min(glm::length(before - at), glm::length(after - at));
  const double back_m = std::min(room_m, radius_m / std::tan(between / 2.0));
  const double fits_m = back_m * std::tan(between / 2.0);
  if (fits_m < 1e-9 || glm::pi<double>() - between < 1e-6) return {at};
  const glm::dvec2 middle = at + glm::normalize(in + out) * (fits_m / std::sin(between / 2.0));
  const glm::dvec2 from = at + in * back_m - middle;
  const double start = std::atan2(from.y, from.x);
  const double sweep = glm::pi<double>() - between;
  const double end = cross(-in, out) > 0.0 ? start + sweep : start - sweep;
  return arc(fits_m, start, end, middle, sag_m);
}

}  // namespace

int circle_segments(double radius_m, double sag_m) {
  if (radius_m <= sag_m) return 8;
  const double half = std::acos(1.0 - sag_m / radius_m);
  const int segments = static_cast<int>(std::ceil(glm::pi<double>() / half));
  return std::clamp((segments + 3) / 4 * 4, 12, 256);
}

Loop circle(double radius_m, glm::dvec2 centre_m, double sag_m) {
  const int count = circle_segments(radius_m, sag_m);
  Loop loop;
  for (int i = 0; i < count; ++i) loop.push_back(centre_m + radius_m * towards(kTurn * i / count));
  return loop;
}

Loop arc(double radius_m, double from_rad, double to_rad, glm::dvec2 centre_m, double sag_m) {
  const double share = std::abs(to_rad - from_rad) / kTurn;
  const int count = std::max(1, static_cast<int>(std::ceil(share * circle_segments(radius_m, sag_m))));
  Loop points;
  for (int i = 0; i <= count; ++i) {
    points.push_back(centre_m + radius_m * towards(from_rad + (to_rad - from_rad) * i / count));
  }
  return points;
}

Loop rounded(const Loop& corners, double radius_m, double sag_m) {
  Loop loop;
  const std::size_t count = corners.size();
  for (std::size_t i = 0; i < count; ++i) {
    add(loop, corner(corners[(i + count - 1) % count], corners[i], corners[(i + 1) % count], radius_m, sag_m));
  }
  return loop;
}

Loop rounded_rectangle(double width_m, double height_m, double radius_m, double sag_m) {
  const double x = width_m / 2.0;
  const double y = height_m / 2.0;
  return rounded({{-x, -y}, {x, -y}, {x, y}, {-x, y}}, radius_m, sag_m);
}

Loop regular_polygon(int corners, double across_flats_m) {
  const double half = kTurn / (2.0 * corners);
  Loop loop;
  for (int i = 0; i < corners; ++i) {
    loop.push_back(across_flats_m / 2.0 / std::cos(half) * towards(half + kTurn * i / corners));
  }
  return loop;
}

Loop slot(double length_m, double width_m, double sag_m) {
  const double x = (length_m - width_m) / 2.0;
  Loop loop = arc(width_m / 2.0, -kTurn / 4.0, kTurn / 4.0, {x, 0.0}, sag_m);
  add(loop, arc(width_m / 2.0, kTurn / 4.0, kTurn * 0.75, {-x, 0.0}, sag_m));
  return loop;
}

double Hexalobular::hollow_radius_m() const {
  const double a = points_m / 2.0 - lobe_radius_m;
  const double b = hollows_m / 2.0;
  const double c30 = std::cos(kTurn / 12.0);
  return (lobe_radius_m * lobe_radius_m - a * a - b * b + 2.0 * a * b * c30) / (2.0 * (b - a * c30 - lobe_radius_m));
}

Hexalobular Hexalobular::grown(double offset_m) const {
  return {points_m + 2.0 * offset_m, hollows_m + 2.0 * offset_m, lobe_radius_m + offset_m};
}

Hexalobular hexalobular_25() { return {}; }

// smaller by the ratio of the nominal widths, which keeps its arcs tangent
Hexalobular hexalobular_20() { return {0.00391, 0.002786, 0.000316}; }

Loop contour(const Hexalobular& drive, double sag_m) {
  const double a = drive.points_m / 2.0 - drive.lobe_radius_m;
  const double hollow_m = drive.hollow_radius_m();
  const double reach = drive.hollows_m / 2.0 + hollow_m;
  const double sixth = kTurn / 6.0;
  const double lobe_rad = std::atan2(reach * std::sin(sixth / 2.0), reach * std::cos(sixth / 2.0) - a);
  const double hollow_rad = lobe_rad - sixth / 2.0;
  Loop loop;
  for (int k = 0; k < 6; ++k) {
    const double at = sixth * k;
    add(loop, arc(drive.lobe_radius_m, at - lobe_rad, at + lobe_rad, a * towards(at), sag_m));
    const double between = at + sixth / 2.0;
    const double in = between + kTurn / 2.0;
    Loop hollow = arc(hollow_m, in + hollow_rad, in - hollow_rad, reach * towards(between), sag_m);
    // its ends are the lobes' ends
    loop.insert(loop.end(), hollow.begin() + 1, hollow.end() - 1);
  }
  return loop;
}

Loop reversed(Loop loop) {
  std::reverse(loop.begin(), loop.end());
  return loop;
}

Loop placed(Loop loop, double angle_rad, glm::dvec2 by_m) {
  const double c = std::cos(angle_rad);
  const double s = std::sin(angle_rad);
  for (glm::dvec2& p : loop) p = by_m + glm::dvec2(c * p.x - s * p.y, s * p.x + c * p.y);
  return loop;
}

Loop mirrored(Loop loop) {
  for (glm::dvec2& p : loop) p.x = -p.x;
  return reversed(std::move(loop));
}

double area_m2(const Loop& loop) {
  double twice = 0.0;
  for (std::size_t i = 0; i < loop.size(); ++i) twice += cross(loop[i], loop[(i + 1) % loop.size()]);
  return twice / 2.0;
}

double area_m2(const Outline& outline) {
  double sum = 0.0;
  for (const Loop& loop : outline) sum += area_m2(loop);
  return sum;
}

}  // namespace proofstand::scene

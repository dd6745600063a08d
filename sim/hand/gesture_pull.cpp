#include "sim/hand/gesture_pull.h"

#include <cmath>

#include "sim/base/math.h"
#include "sim/hand/gesture_laws.h"

namespace proofstand::hand {
namespace {

constexpr double kPress_m_per_pt = kFullAlong_m / kPressDraw_pt;
constexpr double kAlongShare_1 = 0.82;  // cosine of 35°: a move within that of the axis' picture goes along it

Spot towards(const Spot& from, const Spot& to, double share_1) {
  return {from.x_pt + (to.x_pt - from.x_pt) * share_1, from.y_pt + (to.y_pt - from.y_pt) * share_1};
}

double run_pt(const Spot& from, const Spot& to, const Spot& direction) {
  return (to.x_pt - from.x_pt) * direction.x_pt + (to.y_pt - from.y_pt) * direction.y_pt;
}

// one piece, met with the plane through the grip
PullStep plane_piece(const Lens& lens, const Grasp& grasp, const Spot& from, const Spot& to) {
  const auto here = meet_plane(ray_through(lens, from), grasp.grip, grasp.axis);
  const auto there = meet_plane(ray_through(lens, to), grasp.grip, grasp.axis);
  if (!here || !there) return {};
  const Vec3 a = *here - grasp.grip;
  const Vec3 b = *there - grasp.grip;
  PullStep step;
  step.press_m = (length_m(a) - length_m(b)) * scale_pt_per_m(lens, grasp.grip) * kPress_m_per_pt;
  const auto middle = project(lens, grasp.grip);
  if (middle && (distance_pt(*middle, from) < kDeadMiddle_pt || distance_pt(*middle, to) < kDeadMiddle_pt)) return step;
  const double most_rad = base::radians(kMostTurn_deg_per_pt) * distance_pt(from, to);
  step.turn_rad = base::clamp_1(base::atan2_rad(dot(grasp.axis, cross(a, b)), dot(a, b)), -most_rad, most_rad);
  return step;
}

// metres along the axis for a point of its picture's length, where the axis is seen at some length
double along_m_per_pt(const Lens& lens, const Grasp& grasp, double seen_1) {
  const double side_1 = base::sqrt_1(base::clamp_1(1.0 - seen_1 * seen_1, 0.01, 1.0));
  return 1.0 / (scale_pt_per_m(lens, grasp.grip) * side_1);
}

}  // namespace

double towards_eye_1(const Lens& lens, const Grasp& grasp) {
  const double g = dot(grasp.axis, unit(lens.eye - grasp.grip));
  return g < 0.0 ? -g : g;
}

PullStep turn_step(const Lens& lens, const Grasp& grasp, double seen_1, const Spot& from, const Spot& to) {
  PullStep sum;
  const double way_pt = distance_pt(from, to);
  if (way_pt <= 0.0) return sum;
  if (seen_1 < kOblique_1) {
    const Vec3 near_side = cross(grasp.axis, unit(lens.eye - grasp.grip));
    const auto across = project_direction(lens, grasp.grip, near_side);
    const auto inwards = project_direction(lens, grasp.grip, grasp.axis);
    if (across) sum.turn_rad = base::radians(kSideways_deg_per_pt) * run_pt(from, to, *across);
    if (inwards) sum.press_m = along_m_per_pt(lens, grasp, seen_1) * run_pt(from, to, *inwards);
    return sum;
  }
  const double pieces = std::floor((way_pt - 1e-9) / kPiece_pt) + 1.0;
  for (double i = 0.0; i < pieces; i += 1.0) {
    const PullStep step =
        plane_piece(lens, grasp, towards(from, to, i / pieces), towards(from, to, (i + 1.0) / pieces));
    sum.turn_rad += step.turn_rad;
    sum.press_m += step.press_m;
  }
  return sum;
}

double along_step_m(const Lens& lens, const Grasp& grasp, double seen_1, const Spot& from, const Spot& to) {
  if (seen_1 > kEndOn_1) return kEndOn_m_per_pt * (from.y_pt - to.y_pt);
  const auto inwards = project_direction(lens, grasp.grip, grasp.axis);
  return inwards ? along_m_per_pt(lens, grasp, seen_1) * run_pt(from, to, *inwards) : 0.0;
}

bool goes_along(const Lens& lens, const Grasp& grasp, const Spot& from, const Spot& to) {
  const double way_pt = distance_pt(from, to);
  if (way_pt <= 0.0) return false;
  const bool end_on = towards_eye_1(lens, grasp) > kEndOn_1;
  const auto inwards = end_on ? std::optional<Spot>(Spot{0.0, -1.0}) : project_direction(lens, grasp.grip, grasp.axis);
  if (!inwards) return false;
  const double run = run_pt(from, to, *inwards);
  return (run < 0.0 ? -run : run) > kAlongShare_1 * way_pt;
}

std::optional<FacePoint> face_point(const Lens& lens, const Grasp& grasp, const Spot& spot) {
  const auto met = meet_plane(ray_through(lens, spot), grasp.frame.origin, grasp.frame.z);
  if (!met) return std::nullopt;
  const Vec3 local = into_frame(grasp.frame, *met);
  const double radius_m = base::sqrt_1(local.x_m * local.x_m + local.y_m * local.y_m);
  const double kept_m = base::clamp_1(radius_m, grasp.inner_m, grasp.outer_m > 0.0 ? grasp.outer_m : radius_m);
  const double share_1 = radius_m > 0.0 ? kept_m / radius_m : 0.0;
  FacePoint point{local.x_m * share_1, local.y_m * share_1, false};
  if (radius_m <= 0.0) point.x_m = kept_m;
  const auto seen = project(lens, out_of_frame(grasp.frame, {point.x_m, point.y_m, 0.0}));
  point.lifted = seen && distance_pt(*seen, spot) > kLift_pt;
  return point;
}

}  // namespace proofstand::hand

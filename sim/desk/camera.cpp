#include "sim/desk/camera.h"

#include <algorithm>
#include <cmath>

namespace proofstand::desk {
namespace {

constexpr float kPi = 3.14159265F;
constexpr float kDegree = kPi / 180.0F;
constexpr float kLowest = -60.0F * kDegree;
constexpr float kHighest = 80.0F * kDegree;
constexpr float kFill = 0.55F;        // of the free part's shorter side
constexpr float kStillLarge = 0.60F;  // of the framed size
constexpr float kLeastOff = 15.0F * kDegree;
constexpr float kMostOff = 40.0F * kDegree;

float wrapped(float angle) {
  const float turn = 2.0F * kPi;
  angle = std::fmod(angle, turn);
  if (angle > kPi) angle -= turn;
  if (angle < -kPi) angle += turn;
  return angle;
}

// direction from the target to the eye
glm::vec3 towards_eye(float round, float above) {
  const scene::View unit{glm::vec3(0.0F), 1.0F, round, above, 0.6F, glm::vec2(0.0F)};
  return glm::normalize(scene::eye_of(unit));
}

// angles that look along a direction; the inverse of towards_eye, whichever way the view counts round
glm::vec2 angles_of(const glm::vec3& direction) {
  const float above = std::asin(std::clamp(direction.y, -1.0F, 1.0F));
  const glm::vec3 zero = towards_eye(0.0F, 0.0F), quarter = towards_eye(kPi / 2.0F, 0.0F);
  return {std::atan2(glm::dot(direction, quarter), glm::dot(direction, zero)), above};
}

float framed_distance(const scene::View& view, float radius, const Frame& frame) {
  const float shorter = std::max(1.0F, std::min(frame.free.w, frame.free.h));
  const float share = kFill * shorter / frame.window_px.y;
  return std::clamp(radius / (std::tan(view.field_rad / 2.0F) * share), kNearest_m, kFarthest_m);
}

glm::vec2 shift_for(const Frame& frame) {
  const glm::vec2 middle{frame.free.x + frame.free.w / 2.0F, frame.free.y + frame.free.h / 2.0F};
  const glm::vec2 half = frame.window_px / 2.0F;
  return {(middle.x - half.x) / half.x, (half.y - middle.y) / half.y};
}

scene::View between(const scene::View& a, const scene::View& b, float t) {
  scene::View out = b;
  out.target = a.target + (b.target - a.target) * t;
  // distances feel even when their ratio is
  out.distance_m = a.distance_m * std::pow(b.distance_m / a.distance_m, t);
  out.round_rad = a.round_rad + wrapped(b.round_rad - a.round_rad) * t;
  out.above_rad = a.above_rad + (b.above_rad - a.above_rad) * t;
  out.field_rad = a.field_rad + (b.field_rad - a.field_rad) * t;
  return out;
}

}  // namespace

scene::View framing_view(const scene::View& now, const WorkingSet& set, const Frame& frame) {
  scene::View out = now;
  out.target = set.ball.centre;
  const glm::vec3 eye = towards_eye(now.round_rad, now.above_rad);
  const glm::vec3 normal = glm::normalize(set.normal);
  const float off = std::acos(std::clamp(glm::dot(eye, normal), -1.0F, 1.0F));
  const float wanted = std::clamp(off, kLeastOff, kMostOff);
  if (std::abs(off - wanted) > 1e-4F) {
    // turn within the plane of eye and normal; where they coincide, lean upwards
    glm::vec3 aside = eye - normal * glm::dot(eye, normal);
    if (glm::length(aside) < 1e-3F) aside = glm::vec3(0.0F, 1.0F, 0.0F) - normal * normal.y;
    if (glm::length(aside) < 1e-3F) aside = glm::vec3(0.0F, 0.0F, -1.0F);
    const glm::vec3 direction = normal * std::cos(wanted) + glm::normalize(aside) * std::sin(wanted);
    const glm::vec2 angles = angles_of(direction);
    out.round_rad = angles.x;
    out.above_rad = std::clamp(angles.y, kLowest, kHighest);
  }
  out.distance_m = framed_distance(now, set.ball.radius, frame);
  out.shift = shift_for(frame);
  return out;
}

bool shows_well(const scene::View& view, const WorkingSet& set, const Frame& frame) {
  const float aspect = frame.window_px.x / frame.window_px.y;
  const std::optional<glm::vec2> at = scene::project(view, aspect, set.ball.centre);
  if (!at) return false;
  const glm::vec2 half = frame.window_px / 2.0F;
  const glm::vec2 px{half.x + at->x * half.x, half.y - at->y * half.y};
  const float distance = glm::length(scene::eye_of(view) - set.ball.centre);
  const float radius_px = set.ball.radius / (distance * std::tan(view.field_rad / 2.0F)) * half.y;
  const Rect box{px.x - radius_px, px.y - radius_px, 2.0F * radius_px, 2.0F * radius_px};
  if (!holds(frame.free, box)) return false;
  const float framed = framed_distance(view, set.ball.radius, frame);
  return framed / distance >= kStillLarge;
}

Camera::Camera(const scene::View& first) : view_(first), first_(first), from_(first), to_(first) {}

void Camera::go_to(const scene::View& view, double now_s, bool reduced_motion) {
  by_hand_ = false;
  from_ = view_;
  to_ = view;
  const glm::vec3 a = towards_eye(from_.round_rad, from_.above_rad), b = towards_eye(to_.round_rad, to_.above_rad);
  const float angle = std::acos(std::clamp(glm::dot(a, b), -1.0F, 1.0F));
  began_s_ = now_s;
  lasts_s_ = 0.150 + 0.100 * static_cast<double>(std::min(1.0F, angle / (60.0F * kDegree)));
  easing_ = true;
  if (reduced_motion) {
    view_ = to_;
    easing_ = false;
  }
}

void Camera::go_home(double now_s, bool reduced_motion) {
  scene::View home = first_;
  home.shift = view_.shift;
  go_to(home, now_s, reduced_motion);
}

void Camera::shift_into(const Frame& frame) {
  const glm::vec2 shift = shift_for(frame);
  view_.shift = from_.shift = to_.shift = shift;
}

void Camera::look_round(const glm::vec2& moved_pt, const std::optional<glm::vec3>& about) {
  easing_ = false;
  by_hand_ = true;
  const float step = 0.3F * kDegree;
  const glm::vec3 pivot = about.value_or(view_.target);
  const float old_round = view_.round_rad, old_above = view_.above_rad;
  view_.round_rad = wrapped(old_round - moved_pt.x * step);
  view_.above_rad = std::clamp(old_above + moved_pt.y * step, kLowest, kHighest);
  // the pivot keeps its place in the eye's own frame, so it stays under the pointer
  const scene::View before{glm::vec3(0.0F), 1.0F, old_round, old_above, view_.field_rad, glm::vec2(0.0F)};
  scene::View after = before;
  after.round_rad = view_.round_rad;
  after.above_rad = view_.above_rad;
  const glm::mat3 turn = glm::transpose(glm::mat3(scene::view_matrix(after))) * glm::mat3(scene::view_matrix(before));
  view_.target = pivot + turn * (view_.target - pivot);
}

void Camera::look_aside(const glm::vec2& moved_pt, float height_pt) {
  easing_ = false;
  by_hand_ = true;
  const float metres = 2.0F * view_.distance_m * std::tan(view_.field_rad / 2.0F) / height_pt;
  const glm::mat3 axes = glm::transpose(glm::mat3(scene::view_matrix(view_)));
  view_.target += (axes[1] * moved_pt.y - axes[0] * moved_pt.x) * metres;
  view_.target = glm::clamp(view_.target, glm::vec3(-1.5F), glm::vec3(1.5F));
}

void Camera::come_nearer(float notches) {
  easing_ = false;
  by_hand_ = true;
  view_.distance_m = std::clamp(view_.distance_m * std::pow(0.88F, notches), kNearest_m, kFarthest_m);
}

void Camera::ease_to(double now_s) {
  if (!easing_) return;
  const double t = lasts_s_ > 0.0 ? (now_s - began_s_) / lasts_s_ : 1.0;
  if (t >= 1.0) {
    view_ = to_;
    easing_ = false;
    return;
  }
  const float x = static_cast<float>(std::max(0.0, t));
  view_ = between(from_, to_, x * x * (3.0F - 2.0F * x));
}

}  // namespace proofstand::desk

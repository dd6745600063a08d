#include "sim/scene/view.h"

#include <cmath>
#include <glm/gtc/matrix_transform.hpp>

namespace proofstand::scene {
namespace {

// nothing is looked at from nearer than a hand's breadth, so this cuts nothing
constexpr float kNear_m = 0.02F;
constexpr float kFar_m = 12.0F;

}  // namespace

glm::vec3 eye_of(const View& view) {
  const float flat = std::cos(view.above_rad);
  return view.target + view.distance_m * glm::vec3(-std::sin(view.round_rad) * flat, std::sin(view.above_rad),
                                                   -std::cos(view.round_rad) * flat);
}

glm::mat4 view_matrix(const View& view) { return glm::lookAt(eye_of(view), view.target, glm::vec3(0.0F, 1.0F, 0.0F)); }

glm::mat4 projection_matrix(const View& view, float aspect) {
  const glm::mat4 straight = glm::perspective(view.field_rad, aspect, kNear_m, kFar_m);
  return glm::translate(glm::mat4(1.0F), glm::vec3(view.shift, 0.0F)) * straight;
}

Ray ray_through(const View& view, float aspect, const glm::vec2& point) {
  const glm::mat4 back = glm::inverse(projection_matrix(view, aspect) * view_matrix(view));
  const glm::vec4 far = back * glm::vec4(point, 1.0F, 1.0F);
  const glm::vec3 eye = eye_of(view);
  return {eye, glm::normalize(glm::vec3(far) / far.w - eye)};
}

std::optional<glm::vec2> project(const View& view, float aspect, const glm::vec3& point) {
  const glm::vec4 clip = projection_matrix(view, aspect) * view_matrix(view) * glm::vec4(point, 1.0F);
  if (clip.w <= 0.0F) return std::nullopt;
  return glm::vec2(clip) / clip.w;
}

}  // namespace proofstand::scene

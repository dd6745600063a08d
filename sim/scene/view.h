// From where one looks. The eye is a mechanic's: a point looked at, a distance, two angles.
#pragma once

#include <glm/glm.hpp>
#include <optional>
#include <string_view>
#include <vector>

namespace proofstand::scene {

struct View {
  glm::vec3 target{0.0F};   ///< [m] looked at
  float distance_m = 0.8F;  ///< 0.12 .. 3
  float round_rad =
      0.0F;  ///< about the upright axis; 0 looks square at the disc side, positive goes to the viewer's right
  float above_rad = 0.3F;     ///< -60° .. 80°
  float field_rad = 0.6109F;  ///< upright angle of view: 35°
  glm::vec2 shift{0.0F};      ///< moves the picture, not the eye: share of half the window, right and up
};

glm::vec3 eye_of(const View& view);
glm::mat4 view_matrix(const View& view);
/// aspect: width / height
glm::mat4 projection_matrix(const View& view, float aspect);

struct Ray {
  glm::vec3 origin{0.0F};
  glm::vec3 direction{0.0F, 0.0F, 1.0F};  ///< unit length
};
/// Ray under a point of the picture. x, y: -1..1, y up.
Ray ray_through(const View& view, float aspect, const glm::vec2& point);
/// Where a point of the world lies in the picture (-1..1, y up); nothing when it is behind the eye.
std::optional<glm::vec2> project(const View& view, float aspect, const glm::vec3& point);

}  // namespace proofstand::scene

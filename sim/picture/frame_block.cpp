#include "sim/picture/frame_block.h"

#include <glm/gtc/matrix_transform.hpp>

#include "sim/picture/program.h"

namespace proofstand::picture {

FrameBlock frame_block(const scene::View& view, float aspect, const scene::HandLamp& lamp, glm::vec2 jitter) {
  FrameBlock block;
  const glm::mat4 nudge = glm::translate(glm::mat4(1.0F), glm::vec3(jitter, 0.0F));
  block.world_to_clip = nudge * scene::projection_matrix(view, aspect) * scene::view_matrix(view);
  block.eye = glm::vec4(scene::eye_of(view), 0.5F);
  block.lamp_at = glm::vec4(lamp.at, lamp.strength_1);
  block.lamp_towards = glm::vec4(lamp.towards, 0.0F);
  const auto ray = [&](float x, float y) { return scene::ray_through(view, aspect, {x, y}).direction; };
  // rays of unit length do not lie in one plane; brought to the depth of the middle one they do
  const glm::vec3 middle = ray(0.0F, 0.0F);
  const auto in_plane = [&](const glm::vec3& d) { return d / glm::dot(d, middle); };
  block.backdrop_ray_z = glm::vec4(middle, 0.0F);
  block.backdrop_ray_x = glm::vec4(in_plane(ray(1.0F, 0.0F)) - middle, 0.0F);
  block.backdrop_ray_y = glm::vec4(in_plane(ray(0.0F, 1.0F)) - middle, 0.0F);
  return block;
}

glm::mat4 to_texture(const glm::mat4& world_to_map) {
  const glm::mat4 half =
      glm::translate(glm::mat4(1.0F), glm::vec3(0.5F)) * glm::scale(glm::mat4(1.0F), glm::vec3(0.5F));
  return half * world_to_map;
}

FrameUniforms::~FrameUniforms() {
  if (name_ != 0) glDeleteBuffers(1, &name_);
}

void FrameUniforms::send(const FrameBlock& block) {
  if (name_ == 0) glGenBuffers(1, &name_);
  glBindBuffer(GL_UNIFORM_BUFFER, name_);
  glBufferData(GL_UNIFORM_BUFFER, static_cast<GLsizeiptr>(sizeof(FrameBlock)), &block, GL_DYNAMIC_DRAW);
  glBindBufferBase(GL_UNIFORM_BUFFER, kFrameBinding, name_);
}

}  // namespace proofstand::picture

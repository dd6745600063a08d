// What every shader of a picture shares: the uniform block of assets/shaders/frame.glsl.
#pragma once

#include <glad/gl.h>

#include <glm/glm.hpp>

#include "sim/scene/scene.h"
#include "sim/scene/view.h"

namespace proofstand::picture {

/// Laid out as std140 has it: matrices and fours only.
struct FrameBlock {
  glm::mat4 world_to_clip{1.0F};
  glm::mat4 world_to_key{1.0F};
  glm::mat4 world_to_sky{1.0F};
  glm::vec4 eye{0.0F};
  glm::vec4 key_towards{0.0F};
  glm::vec4 sky_towards{0.0F};
  glm::vec4 lamp_at{0.0F};
  glm::vec4 lamp_towards{0.0F};
  glm::vec4 backdrop_ray_x{0.0F};
  glm::vec4 backdrop_ray_y{0.0F};
  glm::vec4 backdrop_ray_z{0.0F};
};

/// Eye, lamp and backdrop of a picture; lights and shadow maps are filled in by who draws them.
/// jitter: moves the picture, in shares of half its width and height
FrameBlock frame_block(const scene::View& view, float aspect, const scene::HandLamp& lamp, glm::vec2 jitter = {});

/// From a shadow map's cube (-1..1) to texture coordinates and depths (0..1).
glm::mat4 to_texture(const glm::mat4& world_to_map);

/// The block's buffer.
class FrameUniforms {
 public:
  FrameUniforms() = default;
  ~FrameUniforms();
  FrameUniforms(const FrameUniforms&) = delete;
  FrameUniforms& operator=(const FrameUniforms&) = delete;
  /// Sends the block and binds it for all programs.
  void send(const FrameBlock& block);

 private:
  GLuint name_ = 0;
};

}  // namespace proofstand::picture

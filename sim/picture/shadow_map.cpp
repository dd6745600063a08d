#include "sim/picture/shadow_map.h"

#include <cmath>
#include <glm/gtc/type_ptr.hpp>

namespace proofstand::picture {

ShadowMap::~ShadowMap() {
  if (frame_ == 0) return;
  glDeleteFramebuffers(1, &frame_);
  glDeleteTextures(1, &texture_);
}

void ShadowMap::make() {
  glGenTextures(1, &texture_);
  glBindTexture(GL_TEXTURE_2D, texture_);
  glTexImage2D(GL_TEXTURE_2D, 0, GL_DEPTH_COMPONENT24, texels_, texels_, 0, GL_DEPTH_COMPONENT, GL_UNSIGNED_INT,
               nullptr);
  glTexParameteri(GL_TEXTURE_2D, GL_TEXTURE_MIN_FILTER, GL_LINEAR);
  glTexParameteri(GL_TEXTURE_2D, GL_TEXTURE_MAG_FILTER, GL_LINEAR);
  glTexParameteri(GL_TEXTURE_2D, GL_TEXTURE_WRAP_S, GL_CLAMP_TO_EDGE);
  glTexParameteri(GL_TEXTURE_2D, GL_TEXTURE_WRAP_T, GL_CLAMP_TO_EDGE);
  glTexParameteri(GL_TEXTURE_2D, GL_TEXTURE_COMPARE_MODE, GL_COMPARE_REF_TO_TEXTURE);
  glTexParameteri(GL_TEXTURE_2D, GL_TEXTURE_COMPARE_FUNC, GL_LEQUAL);
  glGenFramebuffers(1, &frame_);
  glBindFramebuffer(GL_FRAMEBUFFER, frame_);
  glFramebufferTexture2D(GL_FRAMEBUFFER, GL_DEPTH_ATTACHMENT, GL_TEXTURE_2D, texture_, 0);
  glDrawBuffer(GL_NONE);
  glReadBuffer(GL_NONE);
}

void ShadowMap::draw(const Program& program, const MeshShelf& shelf, const std::vector<scene::Item>& items,
                     const glm::mat4& world_to_map) {
  if (frame_ == 0) make();
  glBindFramebuffer(GL_FRAMEBUFFER, frame_);
  glViewport(0, 0, texels_, texels_);
  glEnable(GL_DEPTH_TEST);
  glDepthMask(GL_TRUE);
  glDepthFunc(GL_LESS);
  glEnable(GL_DEPTH_CLAMP);
  glEnable(GL_POLYGON_OFFSET_FILL);
  glPolygonOffset(1.5F, 3.0F);
  glClear(GL_DEPTH_BUFFER_BIT);
  program.use();
  shelf.bind();
  const GLint place = program.place_of("part_to_map");
  // the map is square, so one row's length is its scale
  const float scale = glm::length(glm::vec3(world_to_map[0][0], world_to_map[1][0], world_to_map[2][0]));
  for (const scene::Item& item : items) {
    if (!item.shadow) continue;
    const scene::Ball ball = shelf.ball(item.mesh);
    const glm::vec4 middle = world_to_map * (item.pose * glm::vec4(ball.centre, 1.0F));
    if (ball.radius * scale * static_cast<float>(texels_) < 1.0F) continue;  // half a texel across
    const float reach = 1.0F + ball.radius * scale;
    if (std::abs(middle.x) > reach || std::abs(middle.y) > reach) continue;
    const glm::mat4 part_to_map = world_to_map * item.pose;
    glUniformMatrix4fv(place, 1, GL_FALSE, glm::value_ptr(part_to_map));
    shelf.draw(item.mesh);
  }
  glDisable(GL_POLYGON_OFFSET_FILL);
  glDisable(GL_DEPTH_CLAMP);
}

std::vector<Caster> casters_of(const std::vector<scene::Item>& items) {
  std::vector<Caster> casters;
  for (const scene::Item& item : items) {
    if (item.shadow) casters.push_back({item.mesh, item.pose});
  }
  return casters;
}

}  // namespace proofstand::picture

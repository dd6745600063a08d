#include "sim/picture/pick_glass.h"

#include <cmath>
#include <glm/gtc/matrix_transform.hpp>
#include <glm/gtc/type_ptr.hpp>
#include <utility>

#include "sim/picture/draw_list.h"

namespace proofstand::picture {

PickGlass::PickGlass(Program program) : program_(std::move(program)), plate_({GL_RGBA32F, GL_RGBA32F}, true) {}

base::Result<std::unique_ptr<PickGlass>> PickGlass::make() {
  auto program = Program::make("pick.vert", "pick.frag");
  if (!program) return program.error();
  return std::unique_ptr<PickGlass>(new PickGlass(std::move(*program)));
}

glm::mat4 narrowed(const glm::mat4& world_to_clip, Size picture, glm::vec2 middle_px, Size window) {
  const glm::vec2 whole(picture.width, picture.height);
  const glm::vec2 part(window.width, window.height);
  const glm::vec2 middle = glm::vec2(2.0F, -2.0F) * middle_px / whole + glm::vec2(-1.0F, 1.0F);
  const glm::mat4 grown = glm::scale(glm::mat4(1.0F), glm::vec3(whole / part, 1.0F));
  return grown * glm::translate(glm::mat4(1.0F), glm::vec3(-middle, 0.0F)) * world_to_clip;
}

std::vector<Glimpse> PickGlass::look(const scene::Scene& scene, const MeshShelf& shelf,
                                     const glm::mat4& world_to_window, const glm::vec3& eye, Size window) {
  plate_.begin(window);
  glDisable(GL_BLEND);
  glDisable(GL_SCISSOR_TEST);
  glDisable(GL_DITHER);
  glEnable(GL_DEPTH_TEST);
  glDepthFunc(GL_LESS);
  glDepthMask(GL_TRUE);
  glEnable(GL_CULL_FACE);
  glColorMask(GL_TRUE, GL_TRUE, GL_TRUE, GL_TRUE);
  glClearColor(0.0F, 0.0F, 0.0F, 0.0F);
  glClear(GL_COLOR_BUFFER_BIT | GL_DEPTH_BUFFER_BIT);
  program_.use();
  program_.set("world_to_window", world_to_window);
  const GLint pose = program_.place_of("part_to_world");
  const GLint number = program_.place_of("number");
  shelf.bind();
  for (const std::size_t i : seen_items(scene.items, shelf, world_to_window, eye, 0.0F)) {
    const scene::Item& item = scene.items[i];
    if (item.place < 0) continue;
    glUniformMatrix4fv(pose, 1, GL_FALSE, glm::value_ptr(item.pose));
    glUniform1f(number, static_cast<float>(item.place + 1));
    shelf.draw(item.mesh);
  }
  const std::size_t count = static_cast<std::size_t>(window.width) * static_cast<std::size_t>(window.height);
  std::vector<glm::vec4> points(count);
  std::vector<glm::vec4> ways(count);
  glPixelStorei(GL_PACK_ALIGNMENT, 1);
  glReadBuffer(GL_COLOR_ATTACHMENT0);
  glReadPixels(0, 0, window.width, window.height, GL_RGBA, GL_FLOAT, points.data());
  glReadBuffer(GL_COLOR_ATTACHMENT1);
  glReadPixels(0, 0, window.width, window.height, GL_RGBA, GL_FLOAT, ways.data());
  std::vector<Glimpse> glimpses(count);
  for (std::size_t i = 0; i < count; ++i)
    glimpses[i] = {static_cast<std::int32_t>(std::lround(points[i].w)) - 1, glm::vec3(points[i]), glm::vec3(ways[i])};
  return glimpses;
}

}  // namespace proofstand::picture

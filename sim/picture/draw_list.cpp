#include "sim/picture/draw_list.h"

#include <algorithm>
#include <utility>

namespace proofstand::picture {
namespace {

glm::vec4 row(const glm::mat4& m, int i) { return {m[0][i], m[1][i], m[2][i], m[3][i]}; }

bool is_outside(const glm::vec4& plane, const glm::vec3& middle, float radius) {
  return glm::dot(glm::vec3(plane), middle) + plane.w < -radius * glm::length(glm::vec3(plane));
}

}  // namespace

std::vector<std::size_t> seen_items(const std::vector<scene::Item>& items, const MeshShelf& shelf,
                                    const glm::mat4& world_to_clip, const glm::vec3& eye, float least_1) {
  const glm::vec4 w = row(world_to_clip, 3);
  const glm::vec4 y = row(world_to_clip, 1);
  const float magnified = glm::length(glm::vec3(y));  // of the picture's half height, at 1 m
  std::vector<std::pair<float, std::size_t>> seen;
  for (std::size_t i = 0; i < items.size(); ++i) {
    if (!shelf.holds(items[i].mesh)) continue;
    const scene::Ball ball = shelf.ball(items[i].mesh);
    const glm::vec3 middle = glm::vec3(items[i].pose * glm::vec4(ball.centre, 1.0F));
    bool outside = false;
    for (int side = 0; side < 3; ++side) {
      const glm::vec4 plane = row(world_to_clip, side);
      outside = outside || is_outside(w + plane, middle, ball.radius) || is_outside(w - plane, middle, ball.radius);
    }
    const float away = glm::length(middle - eye);
    if (outside || ball.radius * magnified < least_1 * away) continue;
    seen.emplace_back(std::max(0.0F, away - ball.radius), i);
  }
  std::sort(seen.begin(), seen.end());
  std::vector<std::size_t> order;
  order.reserve(seen.size());
  for (const auto& [away, i] : seen) order.push_back(i);
  return order;
}

}  // namespace proofstand::picture

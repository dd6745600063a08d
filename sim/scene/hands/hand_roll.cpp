#include <cmath>
#include <glm/gtc/matrix_transform.hpp>

#include "sim/scene/hands/hold.h"

namespace proofstand::scene {
namespace {

glm::mat4 mirrored(const glm::mat4& frame) {
  const glm::vec3 flip(1.0F, 1.0F, -1.0F);
  const glm::vec3 z = flip * glm::vec3(frame[2]);
  const glm::vec3 x = flip * glm::vec3(frame[0]);
  return {glm::vec4(x, 0.0F), glm::vec4(glm::cross(z, x), 0.0F), glm::vec4(z, 0.0F),
          glm::vec4(flip * glm::vec3(frame[3]), 1.0F)};
}

glm::mat4 any_frame(const glm::vec3& at, const glm::vec3& axis) {
  const glm::vec3 z = glm::normalize(axis);
  const glm::vec3 near = std::abs(z.x) < 0.8F ? glm::vec3(1.0F, 0.0F, 0.0F) : glm::vec3(0.0F, 1.0F, 0.0F);
  const glm::vec3 x = glm::normalize(near - glm::dot(near, z) * z);
  return {glm::vec4(x, 0.0F), glm::vec4(glm::cross(z, x), 0.0F), glm::vec4(z, 0.0F), glm::vec4(at, 1.0F)};
}

struct Rolled {
  glm::mat4 pose{1.0F};
  float fit = -1.0e9F;
};

// All wishes are directions, so the best roll follows in closed form; it moves smoothly with the hold.
Rolled roll(const Hold& hold, const glm::vec3& axis, const glm::mat4& spot_in_hand, const glm::vec3& forearm) {
  const glm::mat4 start = any_frame(hold.at, axis) * glm::inverse(spot_in_hand);
  const glm::vec3 z = glm::normalize(axis);
  float along_cos = 0.0F;
  float along_sin = 0.0F;
  float fixed = 0.0F;
  const auto wish = [&](const glm::vec3& direction, const glm::vec3& wanted) {
    const float still = glm::dot(direction, z) * glm::dot(z, wanted);
    along_cos += glm::dot(direction, wanted) - still;
    along_sin += glm::dot(glm::cross(z, direction), wanted);
    fixed += still;
  };
  wish(-glm::vec3(start[0]), forearm);
  wish(glm::vec3(start[1]), hold.back);
  const float angle = std::atan2(along_sin, along_cos);
  Rolled rolled;
  rolled.pose = any_frame(hold.at, axis) * glm::rotate(glm::mat4(1.0F), angle, glm::vec3(0.0F, 0.0F, 1.0F)) *
                glm::inverse(spot_in_hand);
  rolled.fit = fixed + std::sqrt(along_cos * along_cos + along_sin * along_sin);
  return rolled;
}

}  // namespace

glm::mat4 hand_pose(const Hold& hold, event::HandId hand, const ShapedHand& shaped) {
  const bool left = hand == event::HandId::Left;
  const glm::mat4 spot = left ? mirrored(shaped.hold) : shaped.hold;
  // from below on the hand's own side, out of the way of the eye
  const glm::vec3 forearm = glm::normalize(glm::vec3(left ? 0.62F : -0.62F, -0.62F, -0.48F)) + hold.forearm;
  Rolled best = roll(hold, hold.axis, spot, forearm);
  if (hold.either_way) {
    const Rolled other = roll(hold, -hold.axis, spot, forearm);
    if (other.fit > best.fit) best = other;
  }
  return hold.carry * best.pose;
}

}  // namespace proofstand::scene

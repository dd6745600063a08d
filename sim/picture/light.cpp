#include "sim/picture/light.h"

#include <algorithm>
#include <cmath>
#include <glm/gtc/matrix_transform.hpp>

namespace proofstand::picture {
namespace {

constexpr float kFullTurn = 6.2831853F;
constexpr float kKeyHalfAngle_tan = 0.07F;  // 4°: a diffuser of 0.3 m at 2 m; wider, and bolts lose their shadows

// two directions square to a third
void square_to(const glm::vec3& n, glm::vec3& a, glm::vec3& b) {
  a = glm::normalize(glm::cross(std::abs(n.y) < 0.9F ? glm::vec3(0, 1, 0) : glm::vec3(1, 0, 0), n));
  b = glm::cross(n, a);
}

}  // namespace

glm::vec3 key_middle() { return glm::normalize(glm::vec3(0.50F, 0.78F, -0.62F)); }

glm::vec3 key_sample(float u, float v) {
  const glm::vec3 middle = key_middle();
  glm::vec3 a;
  glm::vec3 b;
  square_to(middle, a, b);
  const float r = kKeyHalfAngle_tan * std::sqrt(u);
  return glm::normalize(middle + a * (r * std::cos(kFullTurn * v)) + b * (r * std::sin(kFullTurn * v)));
}

glm::vec3 sky_sample(float u, float v) {
  const glm::vec3 pole = glm::normalize(glm::vec3(0.12F, 0.86F, -0.495F));  // kSkyPole of studio.glsl
  glm::vec3 a;
  glm::vec3 b;
  square_to(pole, a, b);
  const float across = std::sqrt(std::max(0.0F, 1.0F - u * u));
  return glm::normalize(pole * u + a * (across * std::cos(kFullTurn * v)) + b * (across * std::sin(kFullTurn * v)));
}

ShadowBall ball_for(const scene::View& view, const ShadowBall& kept) {
  const float wanted = std::clamp(view.distance_m * 1.05F, 0.14F, 1.9F);
  const float off = glm::length(view.target - kept.centre);
  if (kept.radius > 0.8F * wanted && kept.radius < 1.4F * wanted && off < 0.3F * kept.radius) return kept;
  return {view.target, wanted * 1.1F};
}

glm::mat4 light_matrix(const ShadowBall& ball, const glm::vec3& towards, int texels, glm::vec2 nudge) {
  glm::vec3 a;
  glm::vec3 b;
  square_to(towards, a, b);
  const glm::mat4 turn = glm::lookAt(ball.centre + towards, ball.centre, b);
  // far enough behind the ball for what a slanting light reaches; what lies before it is pressed to the near side
  const float r = ball.radius;
  glm::mat4 box = glm::ortho(-r, r, -r, r, 1.0F - 2.0F * r, 1.0F + 2.0F * r);
  const float texel = 2.0F / static_cast<float>(texels);
  box[3][0] += nudge.x * texel;
  box[3][1] += nudge.y * texel;
  return box * turn;
}

glm::vec2 strewn(int number) {
  // in double: the whole part grows and would eat the digits that count
  const double x = 0.5 + 0.7548776662466927 * number;
  const double y = 0.5 + 0.5698402909980532 * number;
  return {static_cast<float>(x - std::floor(x)), static_cast<float>(y - std::floor(y))};
}

}  // namespace proofstand::picture

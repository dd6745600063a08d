// Where light comes from, and the boxes that shadow maps cover.
#pragma once

#include <glm/glm.hpp>

#include "sim/scene/view.h"

namespace proofstand::picture {

/// A ball of the world inside which shadows fall.
struct ShadowBall {
  glm::vec3 centre{0.0F};
  float radius = 0.0F;  ///< [m]
};

/// Unit direction to the key light's middle: over the mechanic's left shoulder.
glm::vec3 key_middle();
/// A point of the key light's disc, 4° about its middle, as a direction. u, v: 0..1 each
glm::vec3 key_sample(float u, float v);
/// A direction of the soft light's half of the room, all equally likely. u, v: 0..1 each
glm::vec3 sky_sample(float u, float v);

/// The ball to cover for a view. `kept` stays as long as it serves, so that looking round redraws no shadow.
ShadowBall ball_for(const scene::View& view, const ShadowBall& kept);

/// World to a shadow map's cube (-1..1) for light from a direction. nudge: share of a texel, -0.5..0.5.
/// texels: side of the map
glm::mat4 light_matrix(const ShadowBall& ball, const glm::vec3& towards, int texels, glm::vec2 nudge = {});

/// Points strewn evenly over a square, 0..1 each, however many are taken. source: M. Roberts 2018, R2 sequence
glm::vec2 strewn(int number);

}  // namespace proofstand::picture

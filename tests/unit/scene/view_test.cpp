#include "sim/scene/view.h"

#include "tests/support/catch.h"

namespace proofstand::testing {

// danger: the ray under the pointer misses what is drawn there
TEST_CASE("a ray through a point of the picture meets what is drawn at that point") {
  scene::View view;
  view.target = {0.02F, -0.01F, -0.04F};
  view.distance_m = 0.5F;
  view.round_rad = 0.6F;
  view.above_rad = 0.3F;
  view.shift = {0.2F, -0.1F};
  const float aspect = 16.0F / 9.0F;
  for (const glm::vec3 point : {glm::vec3(0.0F), glm::vec3(0.05F, 0.03F, -0.02F), glm::vec3(-0.08F, 0.0F, 0.1F)}) {
    const auto seen = scene::project(view, aspect, point);
    REQUIRE(seen.has_value());
    const scene::Ray ray = scene::ray_through(view, aspect, *seen);
    const float along = glm::dot(point - ray.origin, ray.direction);
    CHECK(along > 0.0F);
    CHECK(glm::length(ray.origin + ray.direction * along - point) < 2e-4F);
  }
  CHECK_FALSE(scene::project(view, aspect, scene::eye_of(view) * 2.0F - view.target).has_value());
}

TEST_CASE("the target lies in the middle, moved only by the shift; right is the mechanic's right") {
  scene::View view;
  const float aspect = 1.5F;
  const auto middle = scene::project(view, aspect, view.target);
  REQUIRE(middle.has_value());
  CHECK(middle->x == Approx(0.0F).margin(1e-5));
  CHECK(middle->y == Approx(0.0F).margin(1e-5));
  // square at the disc side forward (+x) is to the left
  const auto forward = scene::project(view, aspect, {0.1F, 0.0F, 0.0F});
  CHECK(forward->x < -0.1F);
  view.shift = {0.25F, 0.0F};
  CHECK(scene::project(view, aspect, view.target)->x == Approx(0.25F).margin(1e-5));
  view.round_rad = 1.0F;  // to the viewer's right
  CHECK(scene::eye_of(view).x < 0.0F);
}

}  // namespace proofstand::testing

// Danger: a pick that is off by a texel, or meets what hides behind, puts a thumb on the track where none was.
#include "sim/picture/pick_glass.h"
#include "tests/unit/picture/small_world.h"

namespace proofstand::testing {
namespace {

constexpr picture::Size kSize{800, 600};

// where a point of the world lies in the picture, from its upper left corner [px]
glm::vec2 texel_under(const scene::View& view, const glm::vec3& point) {
  const auto where = scene::project(view, 800.0F / 600.0F, point);
  REQUIRE(where);
  return {(0.5F + 0.5F * where->x) * 800.0F, (0.5F - 0.5F * where->y) * 600.0F};
}

// two squares side by side, the second farther away, and one without a place before both
scene::Scene three_squares() {
  scene::Scene scene;
  scene.items.push_back(item_of(0, scene::paper(), 0, {0.1F, 0.0F, 0.0F}));
  scene.items.push_back(item_of(0, scene::paper(), 1, {-0.1F, 0.0F, 0.05F}));
  scene.items.push_back(item_of(0, scene::skin(), -1, {0.0F, 0.0F, -0.2F}));
  scene.places.resize(2);
  return scene;
}

}  // namespace

TEST_CASE("the place and the point under the pointer are those of the mesh, from every side") {
  Easel easel = open_easel();
  easel.painter->keep({square(0.08F)});
  const scene::Scene scene = three_squares();
  for (const float round_rad : {-0.7F, 0.0F, 0.5F}) {
    scene::View view = straight_view();
    view.round_rad = round_rad;
    view.above_rad = 0.3F;
    for (const glm::vec3 point : {glm::vec3(0.05F, 0.03F, 0.0F), glm::vec3(0.17F, -0.07F, 0.0F)}) {
      const auto hit = easel.painter->pick(scene, view, kSize, texel_under(view, point));
      REQUIRE(hit);
      CHECK(hit->place == 0);
      CHECK(glm::length(hit->point - point) < 2e-6F);
      CHECK(glm::length(hit->normal - glm::vec3(0.0F, 0.0F, -1.0F)) < 1e-5F);
      CHECK(hit->depth_m == Approx(glm::length(point - scene::eye_of(view))).epsilon(1e-5));
      CHECK(hit->away_px == 0.0F);
    }
  }
}

TEST_CASE("the nearer place wins, what has no place hides nothing, beside everything there is nothing") {
  Easel easel = open_easel();
  easel.painter->keep({square(0.08F)});
  scene::Scene scene = three_squares();
  const scene::View view = straight_view();
  CHECK(easel.painter->pick(scene, view, kSize, texel_under(view, {-0.1F, 0.0F, 0.05F}))->place == 1);
  CHECK(easel.painter->pick(scene, view, kSize, texel_under(view, {0.05F, 0.0F, 0.0F}))->place == 0);
  CHECK_FALSE(easel.painter->pick(scene, view, kSize, {5.0F, 5.0F}));
  scene.items[2].place = 1;  // now it is a thing like others, and in front
  CHECK(easel.painter->pick(scene, view, kSize, texel_under(view, {0.05F, 0.0F, 0.0F}))->place == 1);
}

TEST_CASE("within reach every place is met once, at its nearest texel; out of reach none") {
  Easel easel = open_easel();
  easel.painter->keep({square(0.08F)});
  const scene::Scene scene = three_squares();
  const scene::View view = straight_view();
  // between the two, nearer to the second, whose edge lies farther off in the world
  const glm::vec2 gap = texel_under(view, {0.0F, 0.0F, 0.0F});
  const glm::vec2 edge = texel_under(view, {-0.02F, 0.0F, 0.05F});
  const float away = glm::length(edge - gap);
  CHECK(easel.painter->pick_around(scene, view, kSize, gap, away - 2.0F).empty());
  const auto hits = easel.painter->pick_around(scene, view, kSize, gap, away + 6.0F);
  REQUIRE(hits.size() == 2);
  CHECK(hits[0].place == 1);
  CHECK(std::abs(hits[0].away_px - away) < 1.5F);
  CHECK(hits[0].away_px <= hits[1].away_px);
  CHECK(hits[0].texels_seen > 1);
  CHECK(std::abs(hits[0].point.x + 0.02F) < 0.002F);
}

TEST_CASE("looking over the whole picture meets every place that is seen, and none that is hidden") {
  Easel easel = open_easel();
  easel.painter->keep({square(0.08F)});
  scene::Scene scene = three_squares();
  scene.items.push_back(
      item_of(0, scene::paper(), 2, {0.15F, 0.0F, 0.3F}));  // behind the first, and smaller by distance
  scene.places.resize(3);
  const scene::View view = straight_view(0.6F);
  const auto hits = easel.painter->look_over(scene, view, kSize);
  REQUIRE(hits.size() == 2);
  CHECK(hits[0].place == 0);
  CHECK(hits[1].place == 1);
  CHECK(glm::length(hits[0].point - glm::vec3(0.1F, 0.0F, 0.0F)) < 0.002F);
  // 0.16 m in a picture 600 texels high that shows 2 tan(17.5°) 0.6 m
  const float side_px = 0.16F / (2.0F * 0.6F * std::tan(view.field_rad / 2.0F)) * 600.0F;
  CHECK(static_cast<float>(hits[0].texels_seen) == Approx(side_px * side_px).epsilon(0.02));
}

TEST_CASE("a window's matrix puts the point asked for into its middle") {
  const scene::View view = straight_view();
  const glm::mat4 clip = scene::projection_matrix(view, 800.0F / 600.0F) * scene::view_matrix(view);
  const glm::vec3 point(0.11F, -0.07F, 0.02F);
  const glm::mat4 window = picture::narrowed(clip, kSize, texel_under(view, point), {25, 25});
  const glm::vec4 there = window * glm::vec4(point, 1.0F);
  CHECK(std::abs(there.x / there.w) < 1e-4F);
  CHECK(std::abs(there.y / there.w) < 1e-4F);
}

}  // namespace proofstand::testing

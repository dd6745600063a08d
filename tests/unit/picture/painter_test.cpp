// Danger: a picture that is upside down, of the wrong size, unlit or without its shadows looks like a picture all the
// same, to a program.
#include "sim/picture/light.h"
#include "tests/unit/picture/small_world.h"

namespace proofstand::testing {
namespace {

using picture::Fineness;
using picture::Quality;

constexpr picture::Size kSize{160, 120};

Quality quality_of(Fineness fineness) {
  Quality quality;
  quality.fineness = fineness;
  quality.samples = 16;
  return quality;
}

picture::Image drawn(Easel& easel, const scene::Scene& scene, const scene::View& view, const Quality& quality) {
  easel.painter->draw(scene, view, kSize, quality);
  while (easel.painter->refine()) {
  }
  return easel.painter->read();
}

}  // namespace

TEST_CASE("every quality gives a picture of the size asked for, a coarser draft a smaller one") {
  Easel easel = open_easel();
  easel.painter->keep({square(0.1F)});
  scene::Scene scene;
  scene.items.push_back(item_of(0, scene::paper(), -1));
  for (const Fineness fineness : {Fineness::Draft, Fineness::Normal, Fineness::Still}) {
    const auto image = drawn(easel, scene, straight_view(), quality_of(fineness));
    CHECK(image.size == kSize);
    CHECK(image.bytes.size() == 160U * 120U * 3U);
    CHECK(easel.painter->texture() != 0);
  }
  Quality half = quality_of(Fineness::Draft);
  half.scale_1 = 0.5F;
  CHECK(drawn(easel, scene, straight_view(), half).size == picture::Size{80, 60});
}

TEST_CASE("a sheet to the upper left is seen there, as white as paper, in every quality") {
  Easel easel = open_easel();
  easel.painter->keep({square(0.1F)});
  scene::Scene scene;
  // +x is the mechanic's left
  scene.items.push_back(item_of(0, scene::ink(), -1, {0.2F, 0.15F, 0.0F}));
  for (const Fineness fineness : {Fineness::Draft, Fineness::Normal, Fineness::Still}) {
    const auto image = drawn(easel, scene, straight_view(), quality_of(fineness));
    const auto where = scene::project(straight_view(), 160.0F / 120.0F, {0.2F, 0.15F, 0.0F});
    REQUIRE(where);
    const int x = static_cast<int>((0.5F + 0.5F * where->x) * 160.0F);
    const int y = static_cast<int>((0.5F - 0.5F * where->y) * 120.0F);
    CHECK(x < 80);
    CHECK(y < 60);
    CHECK(lightness_of(image, x, y) < 90.0F);
    CHECK(lightness_of(image, 159 - x, y) > 150.0F);
    CHECK(lightness_of(image, x, 119 - y) > 150.0F);
  }
}

TEST_CASE("white paper under the key light is light but not burnt out, rubber is dark but not black") {
  Easel easel = open_easel();
  easel.painter->keep({square(0.1F)});
  scene::Scene scene;
  scene.items.push_back(item_of(0, scene::paper(), -1, {0.12F, 0.0F, 0.0F}));
  scene.items.push_back(item_of(0, scene::rubber(), -1, {-0.12F, 0.0F, 0.0F}));
  const auto image = drawn(easel, scene, straight_view(), quality_of(Fineness::Normal));
  CHECK(lightness_of(image, 50, 60) > 190.0F);
  CHECK(lightness_of(image, 50, 60) < 252.0F);
  CHECK(lightness_of(image, 110, 60) > 8.0F);
  CHECK(lightness_of(image, 110, 60) < 90.0F);
}

TEST_CASE("what stands before the key light throws its shadow where the light's direction says") {
  Easel easel = open_easel();
  easel.painter->keep({square(0.4F), square(0.03F)});
  const glm::vec3 towards = picture::key_middle();
  scene::Scene scene;
  scene.items.push_back(item_of(0, scene::paper(), -1));
  const auto open = drawn(easel, scene, straight_view(), quality_of(Fineness::Normal));
  // a small sheet off to the side, placed so that its shadow falls on the middle
  scene.items.push_back(item_of(1, scene::paper(), -1, towards * (0.12F / -towards.z)));
  for (const Fineness fineness : {Fineness::Draft, Fineness::Normal, Fineness::Still}) {
    const auto shaded = drawn(easel, scene, straight_view(), quality_of(fineness));
    CHECK(lightness_of(shaded, 80, 60) < lightness_of(open, 80, 60) - 25.0F);
    CHECK(std::abs(lightness_of(shaded, 120, 90) - lightness_of(open, 120, 90)) < 14.0F);
  }
}

TEST_CASE("no surface shades itself: an even sheet is evenly lit") {
  Easel easel = open_easel();
  easel.painter->keep({square(0.6F)});
  scene::Scene scene;
  scene.items.push_back(item_of(0, scene::paper(), -1));
  for (const Fineness fineness : {Fineness::Draft, Fineness::Normal, Fineness::Still}) {
    const auto image = drawn(easel, scene, straight_view(0.6F), quality_of(fineness));
    float least = 255.0F;
    float most = 0.0F;
    for (int y = 10; y < 110; ++y) {
      for (int x = 10; x < 150; ++x) {
        least = std::min(least, lightness_of(image, x, y));
        most = std::max(most, lightness_of(image, x, y));
      }
    }
    CHECK(most - least < 8.0F);
  }
}

TEST_CASE("films are seen where they lie: dust and grease darken, the clean half stays as it was") {
  Easel easel = open_easel();
  easel.painter->keep({square(0.2F)});
  scene::Scene scene;
  scene.films.push_back({4, 1, std::vector<glm::u8vec4>(4, glm::u8vec4(0))});
  scene.items.push_back(item_of(0, scene::paint({0.7F, 0.7F, 0.7F}), -1));
  scene.items[0].film = 0;
  const auto clean = drawn(easel, scene, straight_view(0.5F), quality_of(Fineness::Normal));
  scene.films[0].cells[3] = {0, 0, 255, 0};  // coords.x near 1 lies at +x: the left half seen from the disc side
  const auto dusty = drawn(easel, scene, straight_view(0.5F), quality_of(Fineness::Normal));
  CHECK(lightness_of(dusty, 30, 60) < lightness_of(clean, 30, 60) - 30.0F);
  CHECK(std::abs(lightness_of(dusty, 100, 60) - lightness_of(clean, 100, 60)) < 2.0F);
  scene.films[0].cells[3] = {255, 0, 0, 0};
  const auto greasy = drawn(easel, scene, straight_view(0.5F), quality_of(Fineness::Normal));
  CHECK(lightness_of(greasy, 30, 60) < lightness_of(clean, 30, 60) - 10.0F);
  CHECK(lightness_of(greasy, 30, 60) > lightness_of(dusty, 30, 60));
}

TEST_CASE("drawing again shows what changed, and the same again when nothing did") {
  Easel easel = open_easel();
  easel.painter->keep({square(0.1F), square(0.4F)});
  scene::Scene scene;
  scene.items.push_back(item_of(1, scene::wall(), -1, {0.0F, 0.0F, 0.1F}));
  scene.items.push_back(item_of(0, scene::wood(), -1));
  const auto first = drawn(easel, scene, straight_view(), quality_of(Fineness::Draft));
  scene.items[1].pose = glm::translate(glm::mat4(1.0F), glm::vec3(0.1F, 0.0F, 0.0F));
  const auto moved = drawn(easel, scene, straight_view(), quality_of(Fineness::Draft));
  scene.items[1].pose = glm::mat4(1.0F);
  const auto back = drawn(easel, scene, straight_view(), quality_of(Fineness::Draft));
  CHECK(first.bytes != moved.bytes);
  CHECK(first.bytes == back.bytes);
}

TEST_CASE("a still keeps the draft's picture until it has something better, then is done after its samples") {
  Easel easel = open_easel();
  easel.painter->keep({square(0.1F)});
  scene::Scene scene;
  scene.items.push_back(item_of(0, scene::paint({0.1F, 0.3F, 0.4F}), -1));
  easel.painter->draw(scene, straight_view(), kSize, quality_of(Fineness::Draft));
  const auto draft = easel.painter->read();
  easel.painter->draw(scene, straight_view(), kSize, quality_of(Fineness::Still));
  CHECK(easel.painter->read().bytes == draft.bytes);
  int more = 0;
  while (easel.painter->refine()) ++more;
  CHECK(more == 14);  // of 16 the first came with draw(), the last says that it was the last
  CHECK_FALSE(easel.painter->refine());
  CHECK(easel.painter->read().bytes != draft.bytes);
}

TEST_CASE("an empty scene and numbers of meshes that are not kept draw the backdrop alone") {
  Easel easel = open_easel();
  easel.painter->keep({square(0.1F)});
  scene::Scene scene;
  const auto empty = drawn(easel, scene, straight_view(), quality_of(Fineness::Normal));
  scene.items.push_back(item_of(7, scene::paper(), 0));
  CHECK(drawn(easel, scene, straight_view(), quality_of(Fineness::Normal)).bytes == empty.bytes);
  CHECK(lightness_of(empty, 80, 60) > 150.0F);
}

}  // namespace proofstand::testing

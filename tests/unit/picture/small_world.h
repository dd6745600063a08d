// A few things to draw, whose places and points are known beforehand.
#pragma once

#include <glm/glm.hpp>
#include <glm/gtc/matrix_transform.hpp>
#include <memory>

#include "sim/picture/dark_room.h"
#include "sim/picture/painter.h"
#include "sim/scene/scene.h"
#include "tests/support/catch.h"

namespace proofstand::testing {

/// A square in the plane z = 0 that looks to -z, towards the mechanic.
inline scene::Mesh square(float half_m) {
  scene::Mesh mesh;
  for (const glm::vec2 corner : {glm::vec2(-1, -1), glm::vec2(-1, 1), glm::vec2(1, 1), glm::vec2(1, -1)})
    mesh.vertices.push_back({glm::vec3(corner * half_m, 0.0F), {0.0F, 0.0F, -1.0F}, 0.5F * corner + 0.5F});
  mesh.indices = {0, 1, 2, 0, 2, 3};
  return mesh;
}

inline scene::Item item_of(scene::MeshId mesh, const scene::Material& material, std::int32_t place,
                           const glm::vec3& at = {}) {
  scene::Item item;
  item.mesh = mesh;
  item.material = material;
  item.place = place;
  item.pose = glm::translate(glm::mat4(1.0F), at);
  return item;
}

/// Square on to the disc side.
inline scene::View straight_view(float distance_m = 1.0F) {
  scene::View view;
  view.distance_m = distance_m;
  view.above_rad = 0.0F;
  return view;
}

/// A context and a painter in it.
struct Easel {
  std::unique_ptr<picture::DarkRoom> room;
  std::unique_ptr<picture::Painter> painter;
};

inline Easel open_easel() {
  Easel easel;
  auto room = picture::DarkRoom::open();
  if (!room) FAIL(room.error().sentence());
  easel.room = std::move(*room);
  auto painter = picture::Painter::create(easel.room->load());
  if (!painter) FAIL(painter.error().sentence());
  easel.painter = std::move(*painter);
  return easel;
}

/// Red, green, blue of a texel, from the upper left corner.
inline glm::vec3 texel_of(const picture::Image& image, int x, int y) {
  const auto first =
      3 * (static_cast<std::size_t>(y) * static_cast<std::size_t>(image.size.width) + static_cast<std::size_t>(x));
  return {image.bytes[first], image.bytes[first + 1], image.bytes[first + 2]};
}

inline float lightness_of(const picture::Image& image, int x, int y) {
  return glm::dot(texel_of(image, x, y), glm::vec3(1.0F / 3.0F));
}

}  // namespace proofstand::testing

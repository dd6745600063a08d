#include "sim/scene/place_point.h"

#include <cmath>

namespace proofstand::scene {
namespace {

using event::PlaceKind;

enum class Shape { Polar, Round, Flat };

Shape shape_of(PlaceKind place) {
  if (event::of_rotor(place)) return Shape::Polar;
  switch (place) {
    case PlaceKind::HubSeat:
      return Shape::Polar;
    case PlaceKind::Tyre:
    case PlaceKind::Rim:
      return Shape::Round;
    default:
      return Shape::Flat;
  }
}

}  // namespace

glm::vec3 world_point(const ScenePlace& place, const PlacePoint& point) {
  const auto u = static_cast<float>(point.u_1);
  const auto v = static_cast<float>(point.v_1);
  glm::vec3 local(u, v, 0.0F);
  const Shape shape = shape_of(place.place);
  if (shape == Shape::Polar) local = {u * std::cos(v), u * std::sin(v), 0.0F};
  if (shape == Shape::Round) {
    // its radius is that of the middle
    const glm::vec3 middle = glm::vec3(glm::inverse(place.frame) * glm::vec4(place.middle, 1.0F));
    const float radius = glm::length(glm::vec2(middle));
    local = {radius * std::cos(v), radius * std::sin(v), u};
  }
  return glm::vec3(place.frame * glm::vec4(local, 1.0F));
}

PlacePoint point_at(const ScenePlace& place, const glm::vec3& world) {
  const glm::dvec3 local(glm::vec3(glm::inverse(place.frame) * glm::vec4(world, 1.0F)));
  const double round = std::atan2(local.y, local.x);
  switch (shape_of(place.place)) {
    case Shape::Polar:
      return {std::sqrt(local.x * local.x + local.y * local.y), round};
    case Shape::Round:
      return {local.z, round};
    default:
      return {local.x, local.y};
  }
}

const ScenePlace* find_place(const std::vector<ScenePlace>& places, event::ThingId thing, event::PlaceKind place,
                             event::BoltId bolt) {
  for (const ScenePlace& one : places) {
    if (one.thing == thing && one.place == place && one.bolt == bolt) return &one;
  }
  return nullptr;
}

}  // namespace proofstand::scene

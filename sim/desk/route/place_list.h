// The places that a hand could try, right or wrong alike, in an order that depends on where they are seen and on
// nothing else: what the arrow keys walk and the step panel shows. Rebuild it when the view rests, never while it is
// walked.
#pragma once

#include <cstdint>
#include <string>
#include <vector>

#include "sim/desk/route/sight.h"

namespace proofstand::desk::route {

enum class PlaceGroup : std::uint8_t { Hands, Bike, Tray, Bench };
std::string_view words_of(PlaceGroup group);

struct ListedPlace {
  std::int32_t place = -1;  ///< index into Scene::places
  hand::Pointed pointed;    ///< where it would bring the hand
  glm::vec3 world{0.0F};    ///< that point [m]
  hand::Spot at;            ///< where it is seen
  std::string words;
  PlaceGroup group = PlaceGroup::Bike;
  bool out_of_sight = false;  ///< chosen once it is only shown; "out of sight" stands in its words
};

/// What the list is made from.
struct ListView {
  const scene::Scene& scene;
  const bench::Bench& bench;
  scene::View view;
  Shape shape;
  event::HandId hand = event::HandId::Right;  ///< the active one
  bool mirrored = false;                      ///< scripts written from right to left
  const std::vector<bool>* seen = nullptr;    ///< by place: any texel of it visible; null: told by geometry alone
};

/// Everything this hand could try, in order: hands, bike, tray, bench; within one, bands of 48 pt downwards, along the
/// line of writing, ties by id; out of sight last.
std::vector<ListedPlace> list_places(const ListView& from);
/// Could this hand try that place? Right or wrong does not matter.
bool could_try(const scene::ScenePlace& place, const bench::Bench& bench, event::HandId hand);
PlaceGroup group_of(const scene::ScenePlace& place, const bench::Bench& bench);

enum class Walk : std::uint8_t { Back, On, BandUp, BandDown, GroupBack, GroupOn };
/// Index after a step from `at` (-1: none chosen yet); stays within the list; -1 when it is empty.
std::int32_t walk(const std::vector<ListedPlace>& list, std::int32_t at, Walk way);

}  // namespace proofstand::desk::route

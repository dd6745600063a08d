// What the builders of parts hand over: a thing to draw and, where a hand can go there, its place.
#pragma once

#include <optional>
#include <vector>

#include "sim/scene/scene.h"

namespace proofstand::scene {

struct PartItem {
  Item item;                        ///< its `place` is filled in when the list is put together
  std::optional<ScenePlace> place;  ///< none: cannot be picked
  bool same_place = false;          ///< belongs to the place of the item before it
};
using PartItems = std::vector<PartItem>;

/// Puts a list into a scene: places are numbered in its order.
void add_items(Scene& scene, const PartItems& items);

}  // namespace proofstand::scene

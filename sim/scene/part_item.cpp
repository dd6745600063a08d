#include "sim/scene/part_item.h"

namespace proofstand::scene {

void add_items(Scene& scene, const PartItems& items) {
  for (const PartItem& part : items) {
    Item item = part.item;
    item.place = part.same_place && !scene.items.empty() ? scene.items.back().place : -1;
    if (part.place) {
      item.place = static_cast<std::int32_t>(scene.places.size());
      scene.places.push_back(*part.place);
    }
    scene.items.push_back(item);
  }
}

}  // namespace proofstand::scene

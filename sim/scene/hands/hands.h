// Both hands: meshes kept once, items from state.
#pragma once

#include <array>

#include "sim/scene/hands/hand_shape.h"
#include "sim/scene/mesh_store.h"
#include "sim/scene/part_item.h"
#include "sim/scene/work_frame.h"

namespace proofstand::scene {

class Hands {
 public:
  explicit Hands(MeshStore& store);

  /// Skin or glove, nails and sleeve of one hand. Hands cannot be picked.
  [[nodiscard]] PartItems items(const bench::Bench& bench, event::HandId hand, const WorkFrame& work) const;

 private:
  struct Side {
    MeshId skin = 0;
    MeshId nails = 0;
    MeshId glove = 0;
  };
  struct Shaped {
    ShapedHand hand;
    std::array<Side, event::kHands> sides;
  };
  std::array<Shaped, kHandShapes> shapes_;
  MeshId sleeve_ = 0;
  MeshId cuff_ = 0;
};

}  // namespace proofstand::scene

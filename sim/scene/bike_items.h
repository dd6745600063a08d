// The bicycle's fork with its brake in a scene; the frame that hangs in the stand is furniture.
#pragma once

#include "sim/scene/mesh_store.h"
#include "sim/scene/part_item.h"

namespace proofstand::scene {

class BikeItems {
 public:
  BikeItems(const bench::BenchSetup& setup, MeshStore& store);
  /// With the wheel in it the axle is closed and the pads' spacer is out.
  void add_to(const bench::Bench& bench, PartItems& items) const;

 private:
  event::ThingId bike_ = event::kNoThing;
  MeshId legs_ = 0, ends_ = 0, axle_ = 0;
  MeshId body_ = 0, pistons_ = 0, bolts_ = 0, backing_ = 0, lining_ = 0, spacer_ = 0, hose_ = 0, posts_ = 0;
};

}  // namespace proofstand::scene

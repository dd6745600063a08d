// The wheel in a scene: hub with its seat, bosses and holes, spokes, rim, tyre; wherever it is.
#pragma once

#include "sim/scene/glyphs.h"
#include "sim/scene/mesh_store.h"
#include "sim/scene/part_item.h"

namespace proofstand::scene {

class WheelItems {
 public:
  WheelItems(const bench::BenchSetup& setup, MeshStore& store, const Typeface& face);
  /// Everything of the wheel but rotor and bolts, with its places.
  void add_to(const bench::Bench& bench, PartItems& items) const;

 private:
  void add_hub(const bench::Bench& bench, const glm::mat4& wheel, PartItems& items) const;
  void add_holes(const bench::Bench& bench, const glm::mat4& wheel, PartItems& items) const;

  event::ThingId wheel_ = event::kNoThing;
  MeshId shell_ = 0, seat_ = 0, boss_ = 0, hole_ = 0, axle_ = 0;
  MeshId spokes_ = 0, nipples_ = 0, rim_ = 0, valve_ = 0, tyre_ = 0, print_ = 0;
  MeshId dirt_ = 0, old_locker_ = 0, drop_ = 0;
};

}  // namespace proofstand::scene

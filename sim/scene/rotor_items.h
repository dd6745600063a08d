// Rotors in a scene: on the hub, in a hand, on the bench; their faces with the films on them.
#pragma once

#include <vector>

#include "sim/scene/glyphs.h"
#include "sim/scene/mesh_store.h"
#include "sim/scene/part_item.h"
#include "sim/scene/work_frame.h"

namespace proofstand::scene {

class RotorItems {
 public:
  RotorItems(const bench::BenchSetup& setup, MeshStore& store, const Typeface& face);
  /// Rotors that no hand carries; films are added to the scene's list.
  void add_standing(const bench::Bench& bench, Scene& scene, PartItems& items) const;
  /// Those that a hand carries, where its work frame is. [left, right]
  void add_carried(const bench::Bench& bench, const WorkFrame (&work)[event::kHands], Scene& scene,
                   PartItems& items) const;

 private:
  struct Kept {
    event::ThingId thing = event::kNoThing;
    std::size_t part = 0;
    MeshId track_outer = 0, track_inner = 0, edge = 0, inner_edge = 0, arms = 0, carrier_outer = 0, carrier_inner = 0;
    MeshId print = 0;
    bool has_print = false;
  };
  void add(const bench::Bench& bench, const Kept& kept, const glm::mat4& pose, Scene& scene, PartItems& items) const;

  std::vector<Kept> rotors_;
};

}  // namespace proofstand::scene

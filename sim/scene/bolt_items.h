// Rotor bolts in a scene: in their holes, in the tray, between fingers; what is on and in them.
#pragma once

#include <vector>

#include "sim/scene/mesh_store.h"
#include "sim/scene/part_item.h"
#include "sim/scene/work_frame.h"

namespace proofstand::scene {

class BoltItems {
 public:
  BoltItems(const bench::BenchSetup& setup, MeshStore& store);
  void add_standing(const bench::Bench& bench, PartItems& items) const;
  void add_carried(const bench::Bench& bench, const WorkFrame (&work)[event::kHands], PartItems& items) const;

 private:
  struct Kept {
    MeshId head = 0, recess = 0, ruined = 0, shank = 0, far_shank = 0, patch = 0;
    double length_m = 0.0, diameter_m = 0.0, height_m = 0.0;
  };
  void add_in_hole(const bench::Bench& bench, std::size_t position, PartItems& items) const;
  void add_loose(const bench::Bench& bench, event::ThingId thing, const glm::mat4& pose, bool near,
                 PartItems& items) const;
  void add_head(const bench::Bench& bench, event::ThingId thing, const glm::mat4& pose, const ScenePlace& head,
                const ScenePlace& recess, PartItems& items) const;
  /// near: in fingers or in its hole, else as it lies in the tray
  void add_shank(const bench::Bench& bench, event::ThingId thing, const glm::mat4& pose, bool near,
                 PartItems& items) const;

  std::vector<Kept> kept_;            ///< one for each size of bolt
  std::vector<std::size_t> kept_of_;  ///< per BoltPart
  MeshId drop_ = 0, dirt_ = 0;
};

}  // namespace proofstand::scene

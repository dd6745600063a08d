// What stands in the workshop: bench, tray, wheel stand, work stand with the front of a bicycle, wall and floor, the
// two papers. Nothing of it moves.
#pragma once

#include "sim/scene/glyphs.h"
#include "sim/scene/mesh_store.h"
#include "sim/scene/part_item.h"

namespace proofstand::scene {

class Furniture {
 public:
  Furniture(MeshStore& store, const bench::BenchSetup& setup);
  /// The same for every state of the bench.
  [[nodiscard]] const PartItems& items() const { return items_; }

 private:
  PartItems items_;
};

// Its parts, each with its places. store: keeps their meshes.
PartItems build_bench(MeshStore& store, const bench::BenchSetup& setup);
PartItems build_tray(MeshStore& store, const bench::BenchSetup& setup);
PartItems build_wheel_stand(MeshStore& store, const bench::BenchSetup& setup);
PartItems build_work_stand(MeshStore& store, const bench::BenchSetup& setup);
PartItems build_room(MeshStore& store);
PartItems build_papers(MeshStore& store, const bench::BenchSetup& setup);

/// A mesh in the world that cannot be picked.
PartItem plain_item(MeshStore& store, Mesh mesh, const glm::mat4& pose, const Material& material);
/// The same, with a place of a thing: frame has z out of it. No place when the setup has no such thing.
PartItem placed_item(MeshStore& store, Mesh mesh, const glm::mat4& pose, const Material& material, event::ThingId thing,
                     event::PlaceKind place, const glm::mat4& frame, const glm::vec3& middle);
/// Frame of a level surface: x to the mechanic's right, y away from them, z up.
glm::mat4 level_frame(const glm::vec3& at);

}  // namespace proofstand::scene

// All loose things of a bench but bolts, rotors and the wheel: tools, instruments, bottles, rags, gloves' box. Their
// meshes are kept once; their items follow from state.
#pragma once

#include <map>

#include "sim/scene/part_item.h"
#include "sim/scene/tools/pieces.h"
#include "sim/scene/tools/rags.h"
#include "sim/scene/work_frame.h"

namespace proofstand::scene {

class LooseThings {
 public:
  LooseThings(MeshStore& store, const bench::BenchSetup& setup);

  /// Everything that lies in its spot or stands by itself at the rotor. rotor_places: those of the wheel's parts.
  [[nodiscard]] PartItems lying_items(const bench::Bench& bench, const std::vector<ScenePlace>& rotor_places) const;
  /// What a hand holds, if it is one of these.
  [[nodiscard]] PartItems held_items(const bench::Bench& bench, event::HandId hand, const WorkFrame& work) const;

  /// One of them as it stands now, at a pose of one's own; nothing of bolts, rotors, the wheel.
  [[nodiscard]] PartItems items_at(const bench::Bench& bench, event::ThingId thing, const glm::mat4& pose) const;

 private:
  void add_thing(PartItems& items, const bench::Bench& bench, event::ThingId thing, const glm::mat4& pose) const;
  void add_rag(PartItems& items, const bench::Bench& bench, event::ThingId thing, const glm::mat4& pose, bool pressed,
               bool pinched) const;
  void add_dial(PartItems& items, const bench::Bench& bench, event::ThingId thing, const glm::mat4& dial,
                const glm::mat4& arm, const glm::mat4& stand) const;

  std::map<event::ThingId, Pieces> pieces_;
  Pieces dial_arm_;
  Pieces dial_stand_;
  RagMeshes rags_;
  std::vector<glm::vec3> middles_;  // of each mesh, for places
};

/// Light of a lamp in a hand; strength 0 when neither holds one.
HandLamp lamp_in_hands(const bench::Bench& bench, const WorkFrame (&hands)[event::kHands]);

}  // namespace proofstand::scene

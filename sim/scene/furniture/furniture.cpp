#include "sim/scene/furniture/furniture.h"

namespace proofstand::scene {

Furniture::Furniture(MeshStore& store, const bench::BenchSetup& setup) {
  const auto add = [this](PartItems parts) { items_.insert(items_.end(), parts.begin(), parts.end()); };
  add(build_room(store));
  add(build_bench(store, setup));
  add(build_tray(store, setup));
  add(build_wheel_stand(store, setup));
  add(build_work_stand(store, setup));
  add(build_papers(store, setup));
}

PartItem plain_item(MeshStore& store, Mesh mesh, const glm::mat4& pose, const Material& material) {
  PartItem part;
  part.item.mesh = store.keep(std::move(mesh));
  part.item.pose = pose;
  part.item.material = material;
  return part;
}

PartItem placed_item(MeshStore& store, Mesh mesh, const glm::mat4& pose, const Material& material, event::ThingId thing,
                     event::PlaceKind kind, const glm::mat4& frame, const glm::vec3& middle) {
  PartItem part = plain_item(store, std::move(mesh), pose, material);
  if (thing == event::kNoThing) return part;
  ScenePlace place;
  place.thing = thing;
  place.place = kind;
  place.frame = frame;
  place.middle = middle;
  place.normal = glm::normalize(glm::vec3(frame[2]));
  part.place = place;
  return part;
}

glm::mat4 level_frame(const glm::vec3& at) {
  return {glm::vec4(-1.0F, 0.0F, 0.0F, 0.0F), glm::vec4(0.0F, 0.0F, 1.0F, 0.0F), glm::vec4(0.0F, 1.0F, 0.0F, 0.0F),
          glm::vec4(at, 1.0F)};
}

}  // namespace proofstand::scene

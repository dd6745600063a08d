#include "sim/scene/rotor_items.h"

#include <cmath>
#include <glm/gtc/constants.hpp>
#include <glm/gtc/matrix_transform.hpp>

#include "sim/bench/surface.h"
#include "sim/scene/carried.h"
#include "sim/scene/film_maps.h"
#include "sim/scene/layout.h"
#include "sim/scene/mesh_tidy.h"
#include "sim/scene/parts/rotor.h"
#include "sim/scene/wheel_pose.h"

namespace proofstand::scene {
namespace {

using event::PlaceKind;

// a rotor's surfaces as places: the frames of the inner side are those of the outer turned about the zero direction
struct Faces {
  event::ThingId thing;
  glm::mat4 outer;
  glm::mat4 inner;

  // middle of a band at the angle at which it lies nearest to the viewer's upper left
  [[nodiscard]] ScenePlace place(PlaceKind kind, bool printed_side, float radius_m) const {
    ScenePlace place;
    place.thing = thing;
    place.place = kind;
    place.frame = printed_side ? outer : inner;
    const glm::vec3 centre(place.frame[3]);
    const glm::vec3 normal(place.frame[2]);
    // the mechanic's lower left, laid into the face
    glm::vec3 towards = glm::vec3(0.5F, 0.866F, 0.0F);
    towards -= normal * glm::dot(towards, normal);
    if (glm::length(towards) < 0.1F) towards = glm::vec3(1.0F, 0.0F, 0.0F);
    place.middle = centre + radius_m * glm::normalize(towards);
    place.normal = normal;
    if (kind == PlaceKind::Edge) place.normal = glm::normalize(towards);
    if (kind == PlaceKind::InnerEdge) place.normal = normal;
    place.axis = -normal;
    return place;
  }
};

PartItem item_of(MeshId mesh, const glm::mat4& pose, const Material& material, const ScenePlace& place) {
  PartItem item;
  item.item.mesh = mesh;
  item.item.pose = pose;
  item.item.material = material;
  item.place = place;
  return item;
}

std::int32_t add_film(Scene& scene, const bench::FaceState& face, base::Tick tick) {
  scene.films.push_back(compute_film(face, tick));
  return static_cast<std::int32_t>(scene.films.size() - 1);
}

}  // namespace

RotorItems::RotorItems(const bench::BenchSetup& setup, MeshStore& store, const Typeface& face) {
  for (std::size_t i = 0; i < setup.things.size(); ++i) {
    if (setup.things[i].kind != bench::ThingKind::Rotor) continue;
    const RotorMeshes meshes = build_rotor(setup.rotors[setup.things[i].part], face);
    Kept kept;
    kept.thing = static_cast<event::ThingId>(i);
    kept.part = setup.things[i].part;
    kept.track_outer = store.keep(tidied(meshes.track_outer));
    kept.track_inner = store.keep(tidied(meshes.track_inner));
    kept.edge = store.keep(tidied(meshes.edge));
    kept.inner_edge = store.keep(tidied(meshes.inner_edge));
    kept.arms = store.keep(tidied(meshes.arms));
    kept.carrier_outer = store.keep(tidied(meshes.carrier_outer));
    kept.carrier_inner = store.keep(tidied(meshes.carrier_inner));
    kept.has_print = !meshes.print.indices.empty();
    if (kept.has_print) kept.print = store.keep(tidied(meshes.print));
    rotors_.push_back(kept);
  }
}

void RotorItems::add(const bench::Bench& bench, const Kept& kept, const glm::mat4& pose, Scene& scene,
                     PartItems& items) const {
  const bench::RotorPart& part = bench.setup().rotors[kept.part];
  const bench::RotorSurfaces& surfaces = bench.state().rotors[kept.part];
  const auto thick = static_cast<float>(part.thickness_new_m);
  const auto rim = static_cast<float>(part.diameter_m / 2.0);
  const bench::TrackGrid grid = bench::track_grid(part);
  const auto inner = static_cast<float>(grid.inner_m);
  const auto middle = static_cast<float>(grid.middle_m);
  Faces faces{kept.thing, glm::translate(pose, glm::vec3(0.0F, 0.0F, thick)),
              glm::rotate(pose, glm::pi<float>(), glm::vec3(1.0F, 0.0F, 0.0F))};
  const bool printed_near = pose[2].z < -0.3F || pose[2].y > 0.3F;
  const Material track = part.worn_m > 0.0 ? worn_steel() : bare_steel();
  items.push_back(item_of(kept.track_outer, pose, track, faces.place(PlaceKind::TrackOuter, true, middle)));
  items.back().item.film = add_film(scene, surfaces.faces[0], bench.tick());
  items.push_back(item_of(kept.track_inner, pose, track, faces.place(PlaceKind::TrackInner, false, middle)));
  items.back().item.film = add_film(scene, surfaces.faces[1], bench.tick());
  items.push_back(item_of(kept.edge, pose, track, faces.place(PlaceKind::Edge, printed_near, rim)));
  items.push_back(item_of(kept.inner_edge, pose, track, faces.place(PlaceKind::InnerEdge, printed_near, inner)));
  Material plate = bare_steel();
  plate.roughness_1 = 0.36F;
  items.push_back(
      item_of(kept.arms, pose, plate, faces.place(PlaceKind::Arms, printed_near, 0.5F * (inner + 0.0275F))));
  items.push_back(item_of(kept.carrier_outer, pose, plate, faces.place(PlaceKind::CarrierOuter, true, 0.0195F)));
  items.push_back(item_of(kept.carrier_inner, pose, plate, faces.place(PlaceKind::CarrierInner, false, 0.0195F)));
  if (kept.has_print) {
    // belongs to the printed carrier and arms: picking there finds those
    PartItem print = item_of(kept.print, pose, ink(), faces.place(PlaceKind::CarrierOuter, true, 0.0195F));
    print.place.reset();
    print.item.shadow = false;
    items.push_back(print);
  }
}

void RotorItems::add_standing(const bench::Bench& bench, Scene& scene, PartItems& items) const {
  for (const Kept& kept : rotors_) {
    if (carrier_of(bench, kept.thing)) continue;
    const bench::ThingState& thing = bench.state().things[event::index_of(kept.thing)];
    if (bench.state().seat.rotor == kept.thing) {
      add(bench, kept, rotor_on_hub_pose(bench), scene, items);
      continue;
    }
    // flat on the bench, one face up
    const Spot spot = rotor_spot(bench.setup(), kept.thing);
    glm::mat4 pose = glm::rotate(spot.frame(), -glm::half_pi<float>(), glm::vec3(1.0F, 0.0F, 0.0F));
    if (thing.inner_up) {
      const auto thick = static_cast<float>(bench.setup().rotors[kept.part].thickness_new_m);
      pose = glm::translate(pose, glm::vec3(0.0F, 0.0F, thick));
      pose = glm::rotate(pose, glm::pi<float>(), glm::vec3(1.0F, 0.0F, 0.0F));
    }
    add(bench, kept, pose, scene, items);
  }
}

void RotorItems::add_carried(const bench::Bench& bench, const WorkFrame (&work)[event::kHands], Scene& scene,
                             PartItems& items) const {
  for (const Kept& kept : rotors_) {
    const std::optional<event::HandId> hand = carrier_of(bench, kept.thing);
    if (!hand) continue;
    const glm::mat4& frame = work[static_cast<std::size_t>(*hand)].frame;
    add(bench, kept, frame * held_rotor_pose(bench, *hand, kept.thing), scene, items);
  }
}

}  // namespace proofstand::scene

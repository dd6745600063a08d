#include "sim/scene/scene.h"

#include "sim/scene/bike_items.h"
#include "sim/scene/bolt_items.h"
#include "sim/scene/furniture/furniture.h"
#include "sim/scene/glyphs.h"
#include "sim/scene/hands/hands.h"
#include "sim/scene/mesh_store.h"
#include "sim/scene/part_item.h"
#include "sim/scene/rotor_items.h"
#include "sim/scene/tools/close_up.h"
#include "sim/scene/tools/loose_things.h"
#include "sim/scene/wheel_items.h"
#include "sim/scene/work_frame.h"

namespace proofstand::scene {

struct Workshop::Inside {
  explicit Inside(const bench::BenchSetup& setup)
      : face(Typeface::find()),
        wheel(setup, store, face),
        rotors(setup, store, face),
        bolts(setup, store),
        bike(setup, store),
        furniture(store, setup),
        things(store, setup),
        hands(store) {}

  MeshStore store;
  Typeface face;
  WheelItems wheel;
  RotorItems rotors;
  BoltItems bolts;
  BikeItems bike;
  Furniture furniture;
  LooseThings things;
  Hands hands;
};

Workshop::Workshop(const bench::BenchSetup& setup) : inside_(std::make_unique<Inside>(setup)) {}
Workshop::~Workshop() = default;
Workshop::Workshop(Workshop&&) noexcept = default;
Workshop& Workshop::operator=(Workshop&&) noexcept = default;

const std::vector<Mesh>& Workshop::meshes() const { return inside_->store.all(); }

std::optional<CloseUp> Workshop::compute_close_up(const bench::Bench& bench, std::string_view name,
                                                  const CloseUpOf& of) const {
  return scene::compute_close_up(inside_->things, bench, thing_with_scale(bench.setup(), name), of);
}

Scene Workshop::compute_scene(const bench::Bench& bench, const std::vector<Hover>& hovers) const {
  Scene scene;
  PartItems standing;
  inside_->wheel.add_to(bench, standing);
  inside_->rotors.add_standing(bench, scene, standing);
  inside_->bolts.add_standing(bench, standing);
  inside_->bike.add_to(bench, standing);
  add_items(scene, standing);
  add_items(scene, inside_->furniture.items());
  add_items(scene, inside_->things.lying_items(bench, scene.places));
  // hands look for their places among what stands
  const WorkFrame work[event::kHands] = {work_frame(bench, scene.places, hovers, event::HandId::Left),
                                         work_frame(bench, scene.places, hovers, event::HandId::Right)};
  PartItems carried;
  inside_->rotors.add_carried(bench, work, scene, carried);
  inside_->bolts.add_carried(bench, work, carried);
  for (const event::HandId hand : {event::HandId::Left, event::HandId::Right}) {
    const WorkFrame& frame = work[static_cast<std::size_t>(hand)];
    for (const PartItems& items :
         {inside_->things.held_items(bench, hand, frame), inside_->hands.items(bench, hand, frame)}) {
      carried.insert(carried.end(), items.begin(), items.end());
    }
  }
  scene.lamp = lamp_in_hands(bench, work);
  add_items(scene, carried);
  return scene;
}

}  // namespace proofstand::scene

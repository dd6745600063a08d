#include "sim/scene/wheel_items.h"

#include <cmath>
#include <glm/gtc/matrix_transform.hpp>

#include "sim/scene/dimensions.h"
#include "sim/scene/mesh_tidy.h"
#include "sim/scene/parts/bolt.h"
#include "sim/scene/parts/hub.h"
#include "sim/scene/parts/rim.h"
#include "sim/scene/parts/spokes.h"
#include "sim/scene/wheel_pose.h"

namespace proofstand::scene {
namespace {

using event::PlaceKind;

Material hub_black() { return anodised({0.085F, 0.09F, 0.10F}); }
Material rim_grey() { return anodised({0.16F, 0.165F, 0.175F}); }
Material old_locker() { return plastic({0.72F, 0.66F, 0.40F}); }
Material grit() { return plastic({0.20F, 0.15F, 0.10F}); }

// dirt too thin to be seen is only felt, and found in raking light
constexpr double kSeenDirt_m = 0.000004;

PartItem plain(MeshId mesh, const glm::mat4& pose, const Material& material) {
  PartItem item;
  item.item.mesh = mesh;
  item.item.pose = pose;
  item.item.material = material;
  return item;
}

PartItem placed(MeshId mesh, const glm::mat4& pose, const Material& material, const ScenePlace& place) {
  PartItem item = plain(mesh, pose, material);
  item.place = place;
  return item;
}

// the wheel's rolling frame as hands meet it: z to the mechanic, angles as on the disc
glm::mat4 round_frame(const glm::mat4& wheel) {
  glm::mat4 frame = disc_frame();
  frame[3] = {0.0F, 0.0F, 0.0F, 1.0F};
  return wheel * frame;
}

// tyre or rim: grasped where it comes nearest to a hand, lower left of the hub, whichever way the wheel has turned
ScenePlace round_place(event::ThingId thing, PlaceKind kind, const glm::mat4& stands, const glm::mat4& wheel,
                       float radius_m) {
  ScenePlace place;
  place.thing = thing;
  place.place = kind;
  place.frame = round_frame(wheel);
  const glm::vec3 out = glm::normalize(glm::vec3(0.88F, -0.47F, 0.0F));
  place.middle = glm::vec3(stands[3]) + radius_m * out;
  place.normal = glm::normalize(out + glm::vec3(0.0F, 0.0F, -0.7F));
  place.axis = {0.0F, 0.0F, 1.0F};
  return place;
}

}  // namespace

WheelItems::WheelItems(const bench::BenchSetup& setup, MeshStore& store, const Typeface& face)
    : wheel_(bench::first_of(setup, bench::ThingKind::Wheel)) {
  HubMeshes hub = build_hub(setup.hub);
  shell_ = store.keep(tidied(hub.shell));
  seat_ = store.keep(tidied(hub.seat));
  boss_ = store.keep(tidied(hub.boss));
  hole_ = store.keep(tidied(hub.hole));
  axle_ = store.keep(tidied(hub.axle));
  SpokeMeshes spokes = build_spokes();
  spokes_ = store.keep(tidied(spokes.spokes));
  nipples_ = store.keep(tidied(spokes.nipples));
  RimMeshes rim = build_rim(face);
  rim_ = store.keep(tidied(rim.rim));
  valve_ = store.keep(tidied(rim.valve));
  tyre_ = store.keep(tidied(rim.tyre));
  print_ = store.keep(tidied(rim.print));
  dirt_ = store.keep(tidied(build_crumbs(0.0042, 6)));
  old_locker_ = store.keep(tidied(build_crumbs(0.0022, 7)));
  drop_ = store.keep(tidied(build_drop(0.0016)));
}

void WheelItems::add_to(const bench::Bench& bench, PartItems& items) const {
  const glm::mat4 stands = wheel_stands(bench);
  const glm::mat4 wheel = wheel_pose(bench);
  const auto tyre_m = static_cast<float>(tyre_diameter_m(size::kBeadSeat, size::kTyreWidth) / 2.0);
  const auto rim_m = static_cast<float>(size::kBeadSeat / 2.0 + size::kRimHook - size::kRimDepth / 2.0);
  items.push_back(placed(tyre_, wheel, rubber(), round_place(wheel_, PlaceKind::Tyre, stands, wheel, tyre_m)));
  items.push_back(plain(print_, wheel, plastic({0.30F, 0.30F, 0.29F})));
  items.back().same_place = true;
  items.push_back(placed(rim_, wheel, rim_grey(), round_place(wheel_, PlaceKind::Rim, stands, wheel, rim_m)));
  items.push_back(plain(nipples_, wheel, aluminium()));
  items.push_back(plain(valve_, wheel, stainless()));
  ScenePlace body;
  body.thing = wheel_;
  body.frame = round_frame(wheel);
  body.middle = glm::vec3(stands[3]) + glm::vec3(-0.16F, 0.16F, -0.005F);
  items.push_back(placed(spokes_, wheel, stainless(), body));
  add_hub(bench, wheel, items);
  add_holes(bench, wheel, items);
}

void WheelItems::add_hub(const bench::Bench& bench, const glm::mat4& wheel, PartItems& items) const {
  items.push_back(plain(shell_, wheel, hub_black()));
  ScenePlace seat;
  seat.thing = wheel_;
  seat.place = PlaceKind::HubSeat;
  seat.frame = wheel * disc_frame();
  seat.middle = glm::vec3(seat.frame * glm::vec4(0.0F, 0.0F, 0.0F, 1.0F));
  seat.axis = {0.0F, 0.0F, 1.0F};
  items.push_back(placed(seat_, wheel, aluminium(), seat));
  ScenePlace axle;
  axle.thing = wheel_;
  axle.place = PlaceKind::Axle;
  axle.frame = round_frame(wheel);
  axle.middle = glm::vec3(wheel_stands(bench)[3]) + glm::vec3(0.0F, 0.0F, -static_cast<float>(size::kOverEnds / 2.0));
  items.push_back(placed(axle_, wheel, anodised({0.22F, 0.225F, 0.235F}), axle));
}

void WheelItems::add_holes(const bench::Bench& bench, const glm::mat4& wheel, PartItems& items) const {
  const bench::BenchSetup& setup = bench.setup();
  for (std::size_t k = 0; k < setup.bolt_count(); ++k) {
    const bench::HoleState& state = bench.state().holes[k];
    const glm::mat4 frame = wheel * hole_frame(setup, k);
    ScenePlace place;
    place.thing = wheel_;
    place.place = PlaceKind::Boss;
    place.bolt = static_cast<event::BoltId>(k);
    place.frame = frame;
    // beside the hole: there is nothing to wipe in its middle
    place.middle = glm::vec3(frame * glm::vec4(0.0F, 0.0038F, 0.0F, 1.0F));
    items.push_back(placed(boss_, frame, aluminium(), place));
    if (state.dirt_m > kSeenDirt_m) {
      items.push_back(plain(dirt_, frame, grit()));
      items.back().same_place = true;
    }
    place.place = PlaceKind::Hole;
    place.middle = glm::vec3(frame[3]);
    place.axis = {0.0F, 0.0F, 1.0F};
    const bool open = state.bolt == event::kNoThing;
    if (!open) continue;  // nothing of it is seen
    items.push_back(placed(hole_, frame, aluminium(), place));
    if (state.old_locker_nm > 0.0) {
      items.push_back(plain(old_locker_, glm::translate(frame, glm::vec3(0.0F, 0.0F, -0.0016F)), old_locker()));
      items.back().same_place = true;
    }
    if (state.locker_m3 > 0.0) {
      items.push_back(
          plain(drop_, glm::translate(frame, glm::vec3(0.0F, 0.0F, -0.0022F)), anodised({0.20F, 0.42F, 0.46F})));
      items.back().same_place = true;
    }
  }
}

}  // namespace proofstand::scene

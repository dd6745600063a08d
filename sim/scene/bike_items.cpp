#include "sim/scene/bike_items.h"

#include <glm/gtc/matrix_transform.hpp>

#include "sim/scene/layout.h"
#include "sim/scene/mesh_tidy.h"
#include "sim/scene/parts/caliper.h"
#include "sim/scene/parts/fork.h"
#include "sim/scene/wheel_pose.h"

namespace proofstand::scene {
namespace {

constexpr double kNewThick_m = 0.0018;

Material frame_paint() {
  Material material = paint({0.62F, 0.57F, 0.47F});
  material.roughness_1 = 0.20F;
  return material;
}

}  // namespace

BikeItems::BikeItems(const bench::BenchSetup& setup, MeshStore& store)
    : bike_(bench::first_of(setup, bench::ThingKind::Bike)) {
  const ForkMeshes fork = build_fork();
  legs_ = store.keep(tidied(fork.legs));
  ends_ = store.keep(tidied(fork.ends));
  axle_ = store.keep(tidied(fork.axle));
  const CaliperMeshes caliper =
      build_caliper(setup.brake.rotor_diameter_m, kNewThick_m, setup.brake.pad_gap_out_m, setup.brake.pad_gap_in_m);
  body_ = store.keep(tidied(caliper.body));
  pistons_ = store.keep(tidied(caliper.pistons));
  bolts_ = store.keep(tidied(caliper.bolts));
  backing_ = store.keep(tidied(caliper.backing));
  lining_ = store.keep(tidied(caliper.lining));
  spacer_ = store.keep(tidied(caliper.spacer));
  hose_ = store.keep(tidied(caliper.hose));
  posts_ = store.keep(tidied(caliper.posts));
}

void BikeItems::add_to(const bench::Bench& bench, PartItems& items) const {
  const glm::mat4 axle = glm::translate(glm::mat4(1.0F), kBikeAxle);
  const glm::mat4 fork = axle * fork_frame();
  ScenePlace place;
  place.thing = bike_;
  place.frame = axle * disc_frame();
  place.frame[3] = glm::vec4(kBikeAxle, 1.0F);
  const auto add = [&](MeshId mesh, const Material& material) {
    PartItem item;
    item.item.mesh = mesh;
    item.item.pose = fork;
    item.item.material = material;
    if (bike_ != event::kNoThing) item.place = place;
    items.push_back(item);
  };
  const auto add_same = [&](MeshId mesh, const Material& material) {
    add(mesh, material);
    items.back().place.reset();
    items.back().same_place = true;
  };
  const bool in_bike = bench.state().wheel.at == bench::WheelAt::Bike;
  place.place = event::PlaceKind::ForkEnds;
  place.middle = kBikeAxle + glm::vec3(0.0F, 0.0F, -0.060F);
  add(ends_, anodised({0.20F, 0.205F, 0.215F}));
  if (in_bike) add_same(axle_, black_oxide());
  place.place = event::PlaceKind::Body;
  place.middle = kBikeAxle + glm::vec3(-0.07F, 0.20F, -0.070F);
  add(legs_, frame_paint());
  add_same(posts_, frame_paint());
  add_same(hose_, rubber());
  add_same(body_, anodised({0.10F, 0.105F, 0.115F}));
  add_same(pistons_, plastic({0.62F, 0.61F, 0.56F}));
  add_same(bolts_, stainless());
  add_same(backing_, bare_steel());
  add_same(lining_, plastic({0.16F, 0.125F, 0.10F}));
  if (!in_bike) add_same(spacer_, plastic({0.70F, 0.66F, 0.52F}));
}

}  // namespace proofstand::scene

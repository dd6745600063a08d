#include "sim/scene/bolt_items.h"

#include <algorithm>
#include <cmath>
#include <glm/gtc/constants.hpp>
#include <glm/gtc/matrix_transform.hpp>

#include "sim/scene/carried.h"
#include "sim/scene/layout.h"
#include "sim/scene/mesh_tidy.h"
#include "sim/scene/parts/bolt.h"
#include "sim/scene/wheel_pose.h"

namespace proofstand::scene {
namespace {

using event::PlaceKind;

// from here a recess looks shaved, and its lobes are bright where the black has gone
constexpr double kShaved_m = 0.00008;
constexpr double kRuined_m = 0.00022;
constexpr double kDirtSeen_m = 0.0001;
// triangles of a thread that lies in the tray
constexpr std::size_t kFarThread = 520;
// below the head, where a loose bolt's thread is offered: alike for all, or the order of a list would tell the long one
constexpr double kListed_m = 0.005;
// height of a head over the hub's seat below which its thread is hidden by rotor and hub
constexpr double kHidden_m = 0.0021;

Material patch_ochre() { return plastic({0.62F, 0.42F, 0.10F}); }
Material locker_liquid() {
  Material liquid = plastic({0.10F, 0.34F, 0.40F});
  liquid.roughness_1 = 0.08F;
  return liquid;
}

const bench::BoltPart& part_of(const bench::BenchSetup& setup, event::ThingId thing) {
  return setup.bolts[setup.things[event::index_of(thing)].part];
}

const bench::BoltState& state_of(const bench::Bench& bench, event::ThingId thing) {
  return bench.state().bolts[bench.setup().things[event::index_of(thing)].part];
}

Material metal_of(const bench::BoltPart& part) {
  return part.grade == bench::BoltGrade::StainlessA2_70 ? stainless() : black_oxide();
}

PartItem item_of(MeshId mesh, const glm::mat4& pose, const Material& material) {
  PartItem item;
  item.item.mesh = mesh;
  item.item.pose = pose;
  item.item.material = material;
  return item;
}

glm::mat4 up_by(const glm::mat4& pose, double z_m) {
  return glm::translate(pose, glm::vec3(0.0F, 0.0F, static_cast<float>(z_m)));
}

}  // namespace

BoltItems::BoltItems(const bench::BenchSetup& setup, MeshStore& store) {
  for (const bench::BoltPart& part : setup.bolts) {
    std::size_t found = kept_.size();
    for (std::size_t i = 0; i < kept_.size(); ++i) {
      const Kept& one = kept_[i];
      if (one.length_m == part.length_m && one.diameter_m == part.head_diameter_m &&
          one.height_m == part.head_height_m) {
        found = i;
      }
    }
    kept_of_.push_back(found);
    if (found < kept_.size()) continue;
    const BoltMeshes meshes = build_bolt(part, setup.hub.thread_pitch_m);
    kept_.push_back({store.keep(tidied(meshes.head)), store.keep(tidied(meshes.recess)),
                     store.keep(tidied(meshes.recess_ruined)), store.keep(tidied(meshes.shank)),
                     store.keep(simplified(meshes.shank, kFarThread, 0.00012F)), store.keep(tidied(meshes.patch)),
                     part.length_m, part.head_diameter_m, part.head_height_m});
  }
  drop_ = store.keep(tidied(build_drop(0.0011)));
  dirt_ = store.keep(tidied(build_crumbs(0.0017, 12)));
}

void BoltItems::add_head(const bench::Bench& bench, event::ThingId thing, const glm::mat4& pose, const ScenePlace& head,
                         const ScenePlace& recess, PartItems& items) const {
  const bench::BoltPart& part = part_of(bench.setup(), thing);
  const bench::BoltState& state = state_of(bench, thing);
  const Kept& kept = kept_[kept_of_[bench.setup().things[event::index_of(thing)].part]];
  items.push_back(item_of(kept.head, pose, metal_of(part)));
  items.back().place = head;
  const bool ruined = state.recess_wear_m >= kRuined_m;
  const Material drive = state.recess_wear_m >= kShaved_m ? stainless() : metal_of(part);
  items.push_back(item_of(ruined ? kept.ruined : kept.recess, pose, drive));
  items.back().place = recess;
  if (state.recess_debris_m > kDirtSeen_m) {
    const double floor_m = part.head_height_m - kRecessDepth_m;
    items.push_back(item_of(dirt_, up_by(pose, floor_m + 0.5 * state.recess_debris_m), plastic({0.16F, 0.12F, 0.09F})));
    items.back().same_place = true;
  }
}

void BoltItems::add_shank(const bench::Bench& bench, event::ThingId thing, const glm::mat4& pose, bool near,
                          PartItems& items) const {
  const bench::BoltPart& part = part_of(bench.setup(), thing);
  const bench::BoltState& state = state_of(bench, thing);
  const Kept& kept = kept_[kept_of_[bench.setup().things[event::index_of(thing)].part]];
  Material metal = metal_of(part);
  if (state.grease_kg_m2 + state.oil_kg_m2 > 1e-3) metal.roughness_1 = 0.12F;
  items.push_back(item_of(near ? kept.shank : kept.far_shank, pose, metal));
  if (part.patch && state.patch_uses < 3) {
    Material patch = patch_ochre();
    // each run in rubs some of it off
    patch.color = glm::mix(patch.color, glm::vec3(0.10F, 0.10F, 0.10F), 0.35F * static_cast<float>(state.patch_uses));
    items.push_back(item_of(kept.patch, pose, patch));
  }
  if (state.locker_m3 <= 0.0) return;
  // drops run together round the thread as there are more of them
  const int drops = glm::clamp(static_cast<int>(std::lround(state.locker_m3 / 5e-9)), 1, 8);
  for (int k = 0; k < drops; ++k) {
    const float round = 2.4F * static_cast<float>(k);
    glm::mat4 at = up_by(pose, -part.length_m * (0.55 + 0.04 * k));
    at = glm::rotate(at, round, glm::vec3(0.0F, 0.0F, 1.0F));
    at = glm::translate(at, glm::vec3(0.0023F, 0.0F, 0.0F));
    items.push_back(
        item_of(drop_, glm::rotate(at, glm::half_pi<float>(), glm::vec3(0.0F, 1.0F, 0.0F)), locker_liquid()));
  }
}

void BoltItems::add_in_hole(const bench::Bench& bench, std::size_t position, PartItems& items) const {
  const bench::BenchSetup& setup = bench.setup();
  const bench::HoleState& hole = bench.state().holes[position];
  const bench::BoltPart& part = part_of(setup, hole.bolt);
  const glm::mat4 pose = bolt_in_hole_pose(bench, position);
  // the place's frame does not turn with the bolt: the hand that turns it counts from where it took hold
  glm::mat4 frame = wheel_pose(bench) * hole_frame(setup, position);
  frame[2] = pose[2];
  frame[1] = glm::vec4(glm::normalize(glm::cross(glm::vec3(frame[2]), glm::vec3(frame[0]))), 0.0F);
  frame[0] = glm::vec4(glm::cross(glm::vec3(frame[1]), glm::vec3(frame[2])), 0.0F);
  frame[3] = up_by(pose, part.head_height_m)[3];
  ScenePlace head;
  head.thing = bench::first_of(setup, bench::ThingKind::Wheel);
  head.place = PlaceKind::BoltHead;
  head.bolt = static_cast<event::BoltId>(position);
  head.frame = frame;
  head.middle = glm::vec3(frame[3]);
  head.normal = glm::vec3(frame[2]);
  head.axis = -head.normal;
  ScenePlace recess = head;
  recess.place = PlaceKind::BoltRecess;
  add_head(bench, hole.bolt, pose, head, recess, items);
  // driven home there is nothing to be seen of the thread
  const glm::vec3 seat(glm::inverse(wheel_pose(bench) * hole_frame(setup, position)) * pose[3]);
  if (static_cast<double>(seat.z) < kHidden_m) return;
  const auto first = items.size();
  add_shank(bench, hole.bolt, pose, true, items);
  // what shows of the thread belongs to the bolt
  for (std::size_t i = first; i < items.size(); ++i) items[i].same_place = true;
}

void BoltItems::add_loose(const bench::Bench& bench, event::ThingId thing, const glm::mat4& pose, bool near,
                          PartItems& items) const {
  const bench::BoltPart& part = part_of(bench.setup(), thing);
  ScenePlace body;
  body.thing = thing;
  body.frame = up_by(pose, part.head_height_m);
  body.middle = glm::vec3(body.frame[3]);
  body.normal = glm::vec3(pose[2]);
  ScenePlace thread = body;
  thread.place = PlaceKind::BoltThread;
  thread.frame = pose;
  thread.middle = glm::vec3(up_by(pose, -std::min(kListed_m, part.length_m))[3]);
  thread.normal = glm::vec3(pose[0]);
  const auto from = items.size();
  add_head(bench, thing, pose, body, body, items);
  // head and recess are one place of a loose bolt
  for (std::size_t i = from + 1; i < items.size(); ++i) {
    items[i].place.reset();
    items[i].same_place = true;
  }
  const auto first = items.size();
  add_shank(bench, thing, pose, near, items);
  items[first].place = thread;
  for (std::size_t i = first + 1; i < items.size(); ++i) items[i].same_place = true;
}

void BoltItems::add_standing(const bench::Bench& bench, PartItems& items) const {
  const bench::BenchSetup& setup = bench.setup();
  for (std::size_t k = 0; k < setup.bolt_count(); ++k) {
    if (bench.state().holes[k].bolt != event::kNoThing) add_in_hole(bench, k, items);
  }
  for (std::size_t i = 0; i < setup.things.size(); ++i) {
    const auto thing = static_cast<event::ThingId>(i);
    if (setup.things[i].kind != bench::ThingKind::Bolt) continue;
    bool in_hole = false;
    for (const bench::HoleState& hole : bench.state().holes) in_hole = in_hole || hole.bolt == thing;
    if (in_hole || carrier_of(bench, thing)) continue;
    // on its side: head's rim and the point touch the tray
    const bench::BoltPart& part = setup.bolts[setup.things[i].part];
    const double lean = std::asin((part.head_diameter_m / 2.0 - 0.0025) / part.length_m);
    glm::mat4 pose = glm::translate(spot_of(setup, thing).frame(),
                                    glm::vec3(0.0F, static_cast<float>(part.head_diameter_m / 2.0), 0.0F));
    pose = glm::rotate(pose, -static_cast<float>(lean), glm::vec3(1.0F, 0.0F, 0.0F));
    add_loose(bench, thing, glm::rotate(pose, 0.9F * static_cast<float>(i), glm::vec3(0.0F, 0.0F, 1.0F)), false, items);
  }
}

void BoltItems::add_carried(const bench::Bench& bench, const WorkFrame (&work)[event::kHands], PartItems& items) const {
  const bench::BenchSetup& setup = bench.setup();
  for (std::size_t i = 0; i < setup.things.size(); ++i) {
    const auto thing = static_cast<event::ThingId>(i);
    if (setup.things[i].kind != bench::ThingKind::Bolt) continue;
    bool in_hole = false;
    for (const bench::HoleState& hole : bench.state().holes) in_hole = in_hole || hole.bolt == thing;
    const std::optional<event::HandId> hand = carrier_of(bench, thing);
    if (in_hole || !hand) continue;
    // held by the head, its point towards the work
    const WorkFrame& at = work[static_cast<std::size_t>(*hand)];
    const glm::mat4 pose = up_by(at.frame, static_cast<double>(at.off_m));
    add_loose(bench, thing, glm::rotate(pose, at.turn_rad, glm::vec3(0.0F, 0.0F, 1.0F)), true, items);
  }
}

}  // namespace proofstand::scene

#include "sim/scene/tools/loose_things.h"

#include <glm/gtc/matrix_transform.hpp>

#include "sim/scene/layout.h"
#include "sim/scene/tools/carrying.h"
#include "sim/scene/tools/thing_pose.h"

namespace proofstand::scene {
namespace {

using bench::ThingKind;

const bench::Thing& thing_at(const bench::Bench& bench, event::ThingId thing) {
  return bench.setup().things[event::index_of(thing)];
}

Pieces build(MeshStore& store, const bench::BenchSetup& setup, const bench::Thing& thing) {
  switch (thing.kind) {
    case ThingKind::LKey:
      return build_key(store, setup.tools[thing.part]);
    case ThingKind::Driver:
      return build_driver(store, setup.tools[thing.part]);
    case ThingKind::ClickDriver:
      return build_click_driver(store, setup.tools[thing.part]);
    case ThingKind::Micrometer:
      return build_micrometer(store);
    case ThingKind::Vernier:
      return build_vernier(store, setup.instruments[thing.part]);
    case ThingKind::DialGauge:
      return build_dial(store);
    case ThingKind::Pick:
      return build_pick(store);
    case ThingKind::Lamp:
      return build_lamp(store);
    case ThingKind::Bottle:
      return build_bottle(store, setup.bottles[thing.part]);
    case ThingKind::Gloves:
      return build_glove_box(store);
    default:
      return {};
  }
}

bool in_a_hand(const bench::Bench& bench, event::ThingId thing) {
  for (std::size_t i = 0; i < event::kHands; ++i) {
    if (carried_thing(bench, static_cast<event::HandId>(i)) == thing) return true;
  }
  return false;
}

bool turns_by_itself(event::Grip grip) {
  return grip == event::Grip::Setting || grip == event::Grip::Thimble || grip == event::Grip::Ratchet;
}

ScenePlace place_of(event::ThingId thing, const Piece& piece, const glm::mat4& pose, const glm::vec3& middle) {
  ScenePlace place;
  place.thing = thing;
  place.place = piece.place;
  place.grip = piece.grip;
  place.frame = pose;
  place.middle = glm::vec3(pose * glm::vec4(middle, 1.0F));
  place.normal = {0.0F, 0.8F, -0.6F};  // what lies on the bench is reached from above and before
  // a handle that turns about the tool's own axis turns clockwise looking along it at the work
  if (turns_by_itself(piece.grip)) place.axis = -glm::normalize(glm::vec3(pose[2]));
  if (piece.place == event::PlaceKind::Mouth) {
    // a bottle's own z runs from its tip to its foot; out of its mouth is the other way
    place.frame[1] = -place.frame[1];
    place.frame[2] = -place.frame[2];
  }
  return place;
}

}  // namespace

LooseThings::LooseThings(MeshStore& store, const bench::BenchSetup& setup) {
  const std::size_t first = store.all().size();
  for (std::size_t i = 0; i < setup.things.size(); ++i) {
    Pieces pieces = build(store, setup, setup.things[i]);
    if (!pieces.empty()) pieces_.emplace(static_cast<event::ThingId>(i), std::move(pieces));
  }
  dial_arm_ = build_dial_arm(store);
  dial_stand_ = build_dial_stand(store);
  rags_ = build_rags(store);
  middles_.resize(store.all().size(), glm::vec3(0.0F));
  for (std::size_t i = first; i < middles_.size(); ++i) middles_[i] = bounding_ball(store.all()[i]).centre;
}

void LooseThings::add_thing(PartItems& items, const bench::Bench& bench, event::ThingId thing,
                            const glm::mat4& pose) const {
  const auto found = pieces_.find(thing);
  if (found == pieces_.end()) return;
  for (const Piece& piece : found->second) {
    const glm::mat4 at = pose * move_of(bench, thing, piece.move);
    PartItem part;
    part.item.mesh = piece.mesh;
    part.item.pose = at;
    part.item.material = piece.material;
    part.item.shadow = piece.picked;
    part.place = place_of(thing, piece, at, middles_[piece.mesh]);
    items.push_back(part);
  }
}

void LooseThings::add_dial(PartItems& items, const bench::Bench& bench, event::ThingId thing, const glm::mat4& dial,
                           const glm::mat4& arm, const glm::mat4& stand) const {
  add_thing(items, bench, thing, dial);
  const auto add = [this, &items, thing](const Pieces& pieces, const glm::mat4& pose) {
    for (const Piece& piece : pieces) {
      PartItem part;
      part.item.mesh = piece.mesh;
      part.item.pose = pose;
      part.item.material = piece.material;
      part.place = place_of(thing, piece, pose, middles_[piece.mesh]);
      items.push_back(part);
    }
  };
  add(dial_arm_, arm);
  add(dial_stand_, stand);
}

void LooseThings::add_rag(PartItems& items, const bench::Bench& bench, event::ThingId thing, const glm::mat4& pose,
                          bool pressed, bool pinched) const {
  const RagLook look = rag_look(bench, thing_at(bench, thing).part);
  Piece piece;
  piece.mesh = pinched ? rags_.pinched : pressed ? rags_.flat : rags_.folded;
  piece.grip = pinched ? event::Grip::Pinched : event::Grip::Flat;
  PartItem part;
  part.item.mesh = piece.mesh;
  part.item.pose = pose;
  part.item.material = rag_material(look);
  part.place = place_of(thing, piece, pose, middles_[piece.mesh]);
  items.push_back(part);
  const int stain = stain_of(look);
  if (stain < 0 || pressed) return;
  const auto which = static_cast<std::size_t>(stain);
  part.item.mesh = pinched ? rags_.pinched_stains[which] : rags_.stains[which];
  const float dark = 0.16F - 0.12F * look.black_1;
  part.item.material = cloth({dark, dark, dark});
  part.item.shadow = false;
  items.push_back(part);
}

PartItems LooseThings::lying_items(const bench::Bench& bench, const std::vector<ScenePlace>& rotor_places) const {
  PartItems items;
  for (std::size_t i = 0; i < bench.setup().things.size(); ++i) {
    const auto thing = static_cast<event::ThingId>(i);
    if (in_a_hand(bench, thing)) continue;
    const bench::Thing& what = thing_at(bench, thing);
    if (what.kind == ThingKind::Rag) {
      add_rag(items, bench, thing, lying_pose(bench, thing), false, false);
    } else if (what.kind == ThingKind::DialGauge) {
      const bool stands = bench.state().things[i].where == bench::Whereabouts::Standing;
      const DialPoses poses =
          stands ? dial_at_rotor(bench, thing, rotor_places) : dial_on_column(lying_pose(bench, thing), kBenchTop_y);
      add_dial(items, bench, thing, poses.dial, poses.arm, poses.stand);
    } else {
      add_thing(items, bench, thing, lying_pose(bench, thing));
    }
  }
  return items;
}

PartItems LooseThings::items_at(const bench::Bench& bench, event::ThingId thing, const glm::mat4& pose) const {
  PartItems items;
  add_thing(items, bench, thing, pose);
  return items;
}

PartItems LooseThings::held_items(const bench::Bench& bench, event::HandId hand, const WorkFrame& work) const {
  PartItems items;
  const event::ThingId thing = carried_thing(bench, hand);
  if (thing == event::kNoThing) return items;
  const glm::mat4 pose = held_pose(bench, thing, hand, work);
  switch (thing_at(bench, thing).kind) {
    case ThingKind::Rag: {
      const bool there = work.place != nullptr;
      const bool pinched = carrying_grip(bench, hand) == event::Grip::Pinched;
      add_rag(items, bench, thing, pose, there && !pinched, pinched);
      break;
    }
    case ThingKind::DialGauge: {
      const bool stands = bench.state().instruments[thing_at(bench, thing).part].standing;
      // carried, it comes with its column; the foot hangs below it
      const float foot_y = stands ? kBenchTop_y : pose[3].y - 0.200F;
      const DialPoses poses = dial_on_column(pose, foot_y);
      add_dial(items, bench, thing, poses.dial, poses.arm, poses.stand);
      break;
    }
    default:
      add_thing(items, bench, thing, pose);
      break;
  }
  for (PartItem& part : items) {
    if (!part.place) continue;
    part.place->normal = {0.0F, 0.0F, -1.0F};
    // what stands in its work turns about the work's axis, wherever it is gripped
    if (work.at_work && !turns_by_itself(part.place->grip))
      part.place->axis = -glm::normalize(glm::vec3(work.frame[2]));
  }
  return items;
}

HandLamp lamp_in_hands(const bench::Bench& bench, const WorkFrame (&hands)[event::kHands]) {
  HandLamp lamp;
  for (std::size_t i = 0; i < event::kHands; ++i) {
    const auto hand = static_cast<event::HandId>(i);
    const event::ThingId thing = carried_thing(bench, hand);
    if (thing == event::kNoThing || thing_at(bench, thing).kind != ThingKind::Lamp) continue;
    const glm::mat4 pose = held_pose(bench, thing, hand, hands[i]);
    lamp.at = glm::vec3(pose[3]);
    lamp.towards = -glm::normalize(glm::vec3(pose[2]));
    lamp.strength_1 = 1.0F;
  }
  return lamp;
}

}  // namespace proofstand::scene

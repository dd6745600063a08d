#include "sim/scene/carried.h"

#include <glm/gtc/constants.hpp>
#include <glm/gtc/matrix_transform.hpp>

#include "sim/bench/hand_motion.h"

namespace proofstand::scene {
namespace {

using event::ActionKind;
using event::Grip;
using event::PlaceKind;

const bench::HandState& state_of(const bench::Bench& bench, event::HandId hand) {
  return bench.state().hands[static_cast<std::size_t>(hand)];
}

bool takes(const bench::HandState& hand, event::ThingId thing) {
  return hand.has_pending && hand.pending.kind == ActionKind::Take &&
         static_cast<event::ThingId>(hand.pending.numbers[1]) == thing;
}

Grip grip_of(const bench::HandState& hand, event::ThingId rotor) {
  return takes(hand, rotor) ? static_cast<Grip>(hand.pending.numbers[2]) : hand.grip;
}

}  // namespace

float motion_share_1(const bench::Bench& bench, event::HandId hand_id) {
  const bench::HandState& hand = state_of(bench, hand_id);
  if (hand.stage != bench::HandStage::Busy || !hand.has_pending) return 1.0F;
  const base::Tick whole = bench::motion_ticks(hand.pending.kind);
  if (whole <= 0) return 1.0F;
  const float left = static_cast<float>(hand.busy_until - bench.state().tick) / static_cast<float>(whole);
  return glm::clamp(1.0F - left, 0.0F, 1.0F);
}

bool lays_down(const bench::Bench& bench, event::HandId hand_id) {
  const bench::HandState& hand = state_of(bench, hand_id);
  if (hand.stage != bench::HandStage::Busy || !hand.has_pending || hand.holding == event::kNoThing) return false;
  if (hand.pending.kind == ActionKind::PutBack) return true;
  if (hand.pending.kind != ActionKind::Bring) return false;
  const auto place = static_cast<PlaceKind>(hand.pending.numbers[2]);
  const bench::ThingKind kind = bench.setup().things[event::index_of(hand.holding)].kind;
  const bool wipes = kind == bench::ThingKind::Rag || kind == bench::ThingKind::Bottle;
  return !wipes && (place == PlaceKind::BenchTop || place == PlaceKind::Tray);
}

std::optional<event::HandId> carrier_of(const bench::Bench& bench, event::ThingId thing) {
  for (const event::HandId id : {event::HandId::Left, event::HandId::Right}) {
    const bench::HandState& hand = state_of(bench, id);
    const bool later_half = motion_share_1(bench, id) >= 0.5F;
    if (hand.holding == thing && !(lays_down(bench, id) && later_half)) return id;
    if (hand.stage == bench::HandStage::Busy && takes(hand, thing) && later_half) return id;
  }
  return std::nullopt;
}

glm::vec3 held_rotor_middle(const bench::Bench& bench, event::HandId hand_id, event::ThingId rotor) {
  const bench::BenchSetup& setup = bench.setup();
  const auto rim = static_cast<float>(setup.rotors[setup.things[event::index_of(rotor)].part].diameter_m / 2.0);
  float radius = rim;
  switch (grip_of(state_of(bench, hand_id), rotor)) {
    case Grip::Track:
      radius = rim - 0.0075F;
      break;
    case Grip::InnerEdge:
      radius = rim - 0.015F;
      break;
    case Grip::Arms:
      radius = rim - 0.032F;
      break;
    default:
      break;
  }
  const float side = hand_id == event::HandId::Left ? 1.0F : -1.0F;
  return radius * glm::vec3(0.5F * side, 0.8660254F, 0.0F);
}

glm::mat4 held_rotor_pose(const bench::Bench& bench, event::HandId hand_id, event::ThingId rotor) {
  const bench::HandState& hand = state_of(bench, hand_id);
  const bool away = bench.state().things[event::index_of(rotor)].inner_up;
  float over_1 = away ? 1.0F : 0.0F;
  if (hand.stage == bench::HandStage::Busy && hand.has_pending && hand.pending.kind == ActionKind::TurnOver) {
    over_1 += motion_share_1(bench, hand_id);
  }
  const glm::mat4 middle = glm::translate(glm::mat4(1.0F), held_rotor_middle(bench, hand_id, rotor));
  return glm::rotate(middle, glm::pi<float>() * over_1, glm::vec3(0.0F, 1.0F, 0.0F));
}

}  // namespace proofstand::scene

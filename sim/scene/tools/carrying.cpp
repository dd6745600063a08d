#include "sim/scene/tools/carrying.h"

#include "sim/bench/hand_contact.h"
#include "sim/scene/carried.h"

namespace proofstand::scene {
namespace {

const bench::HandState& state_of(const bench::Bench& bench, event::HandId hand) {
  return bench.state().hands[static_cast<std::size_t>(hand)];
}

bool takes(const bench::HandState& hand) {
  return hand.stage == bench::HandStage::Busy && hand.has_pending && hand.pending.kind == event::ActionKind::Take;
}

}  // namespace

event::ThingId carried_thing(const bench::Bench& bench, event::HandId hand_id) {
  const bench::HandState& hand = state_of(bench, hand_id);
  if (hand.holding != event::kNoThing) {
    // a wheel is in both hands at once
    if (bench.setup().things[event::index_of(hand.holding)].kind == bench::ThingKind::Wheel) return hand.holding;
    return carrier_of(bench, hand.holding) == hand_id ? hand.holding : event::kNoThing;
  }
  if (!takes(hand)) return event::kNoThing;
  const auto thing = static_cast<event::ThingId>(hand.pending.numbers[1]);
  return carrier_of(bench, thing) == hand_id ? thing : event::kNoThing;
}

event::Grip carrying_grip(const bench::Bench& bench, event::HandId hand_id) {
  const bench::HandState& hand = state_of(bench, hand_id);
  if (!takes(hand) || hand.holding != event::kNoThing) return hand.grip;
  const auto asked = static_cast<event::Grip>(hand.pending.numbers[2]);
  if (asked != event::Grip::None) return asked;
  const auto thing = static_cast<std::size_t>(hand.pending.numbers[1]);
  return bench::natural_grip(bench.setup().things[thing].kind);
}

}  // namespace proofstand::scene

#include "sim/scene/tools/carrying.h"

#include "sim/bench/hand_contact.h"

namespace proofstand::scene {
namespace {

const bench::HandState& state_of(const bench::Bench& bench, event::HandId hand) {
  return bench.state().hands[static_cast<std::size_t>(hand)];
}

bool under_way(const bench::HandState& hand, event::ActionKind kind) {
  return hand.stage == bench::HandStage::Busy && hand.has_pending && hand.pending.kind == kind;
}

}  // namespace

event::ThingId carried_thing(const bench::Bench& bench, const WorkFrame& work, event::HandId hand_id) {
  const bench::HandState& hand = state_of(bench, hand_id);
  if (under_way(hand, event::ActionKind::Take) && hand.holding == event::kNoThing && work.share_1 >= 0.5F) {
    return static_cast<event::ThingId>(hand.pending.numbers[1]);
  }
  if (under_way(hand, event::ActionKind::PutBack) && work.share_1 >= 0.5F) return event::kNoThing;
  return hand.holding;
}

event::Grip carrying_grip(const bench::Bench& bench, const WorkFrame& work, event::HandId hand_id) {
  const bench::HandState& hand = state_of(bench, hand_id);
  if (under_way(hand, event::ActionKind::Take) && hand.holding == event::kNoThing) {
    const auto asked = static_cast<event::Grip>(hand.pending.numbers[2]);
    const event::ThingId thing = carried_thing(bench, work, hand_id);
    if (asked != event::Grip::None || thing == event::kNoThing) return asked;
    return bench::natural_grip(bench.setup().things[event::index_of(thing)].kind);
  }
  return hand.grip;
}

}  // namespace proofstand::scene

#include "sim/bench/hand_check.h"

#include "sim/bench/hand_contact.h"
#include "sim/bench/tool_seat.h"
#include "sim/bench/wheel.h"

namespace proofstand::bench {
namespace {

using event::ActionKind;
using event::of_rotor;

bool fixed(ThingKind kind) {
  return kind == ThingKind::WheelStand || kind == ThingKind::Bike || kind == ThingKind::Bench ||
         kind == ThingKind::Tray || kind == ThingKind::Card || kind == ThingKind::Sheet || kind == ThingKind::Gloves;
}

bool of_wheel(PlaceKind place) {
  switch (place) {
    case PlaceKind::Tyre:
    case PlaceKind::Rim:
    case PlaceKind::Axle:
    case PlaceKind::HubSeat:
    case PlaceKind::Body:
      return true;
    default:
      return numbered_place(place);
  }
}

// does a thing of this kind have such a place?
bool has_place(ThingKind kind, PlaceKind place) {
  if (place == PlaceKind::Body) return true;
  switch (kind) {
    case ThingKind::Wheel:
      return of_wheel(place);
    case ThingKind::Rotor:
      return of_rotor(place) || place == PlaceKind::BoltHead || place == PlaceKind::BoltRecess;
    case ThingKind::Bolt:
      return place == PlaceKind::BoltHead || place == PlaceKind::BoltRecess || place == PlaceKind::BoltThread;
    case ThingKind::Bottle:
      return place == PlaceKind::Mouth;
    case ThingKind::WheelStand:
      return place == PlaceKind::StandSlot;
    case ThingKind::Bike:
      return place == PlaceKind::ForkEnds;
    case ThingKind::Bench:
      return place == PlaceKind::BenchTop;
    case ThingKind::Tray:
      return place == PlaceKind::Tray;
    case ThingKind::Gloves:
      return place == PlaceKind::GloveBox;
    default:
      return false;
  }
}

// fingers, a tool or a pick of the other hand on that bolt leave no room; a lamp only shines on it
bool other_at_bolt(const World& world, HandId hand, BoltId bolt) {
  const HandState& other = world.hand(World::other(hand));
  if (other.stage != HandStage::At || other.near || other.at_bolt != bolt) return false;
  const bool lamp = other.holding != event::kNoThing && world.kind(other.holding) == ThingKind::Lamp;
  const bool here_lamp =
      world.hand(hand).holding != event::kNoThing && world.kind(world.hand(hand).holding) == ThingKind::Lamp;
  return !lamp && !here_lamp && other.at_place != PlaceKind::Boss;
}

// is the place hidden by what lies on it, or by the bike?
Refusal check_reach(const World& world, HandId hand, ThingId thing, PlaceKind place, BoltId bolt) {
  const BenchState& state = world.state;
  if (numbered_place(place) || place == PlaceKind::HubSeat) {
    if (state.wheel.at == WheelAt::Bike) return Refusal::WheelInBike;
    if (state.wheel.at == WheelAt::Hands) return Refusal::BothHandsNeeded;
  }
  const bool rotor_on = state.seat.rotor != event::kNoThing;
  if (rotor_on && (place == PlaceKind::Boss || place == PlaceKind::HubSeat)) return Refusal::Covered;
  if (numbered_place(place)) {
    const HoleState& hole = state.holes[event::index_of(bolt)];
    if (place == PlaceKind::Hole && hole.bolt != event::kNoThing) return Refusal::HoleTaken;
    const bool of_bolt = place == PlaceKind::BoltHead || place == PlaceKind::BoltRecess;
    if (of_bolt && hole.bolt == event::kNoThing) return Refusal::NothingToDo;
    if (of_bolt && other_at_bolt(world, hand, bolt)) return Refusal::ToolInTheWay;
  }
  if (thing == state.seat.rotor && rotor_on) {
    const PlaceKind hub_side = state.seat.printed_out ? PlaceKind::CarrierInner : PlaceKind::CarrierOuter;
    if (place == hub_side) return Refusal::Covered;
    if (state.wheel.at == WheelAt::Hands) return Refusal::BothHandsNeeded;
  }
  return Refusal::None;
}

bool in_other_hand(const World& world, HandId hand, ThingId thing) {
  return world.hand(World::other(hand)).holding == thing;
}

Refusal check_take(const World& world, HandId hand_id, ThingId thing, Grip grip) {
  const HandState& hand = world.hand(hand_id);
  if (hand.holding == thing) return Refusal::AlreadyThere;
  if (hand.holding != event::kNoThing) return Refusal::HandFull;
  const ThingKind kind = world.kind(thing);
  if (fixed(kind)) return Refusal::NoSuchPlace;
  if (grip != Grip::None && !grip_fits(kind, grip))
    return kind == ThingKind::Wheel ? Refusal::BothHandsNeeded : Refusal::DoesNotFit;
  if (kind == ThingKind::Wheel) {
    const HandState& other = world.hand(World::other(hand_id));
    if (other.holding != event::kNoThing || other.stage == HandStage::Busy) return Refusal::BothHandsNeeded;
    return wheel_spins(world.state) ? Refusal::WheelTurning : Refusal::None;
  }
  if (in_other_hand(world, hand_id, thing)) return Refusal::OutOfReach;
  if (kind == ThingKind::Rotor && world.state.seat.rotor == thing) {
    if (world.state.wheel.at == WheelAt::Bike) return Refusal::WheelInBike;
    for (const HoleState& hole : world.state.holes) {
      if (hole.bolt != event::kNoThing) return Refusal::BoltsHoldIt;
    }
  }
  if (kind == ThingKind::Bolt) {
    for (const HoleState& hole : world.state.holes) {
      if (hole.bolt == thing) return Refusal::Locked;  // screwed in: it must be turned out
    }
  }
  return Refusal::None;
}

Refusal check_place(const World& world, HandId hand, ThingId thing, PlaceKind place, BoltId bolt) {
  if (!has_place(world.kind(thing), place)) return Refusal::NoSuchPlace;
  if (numbered_place(place) && event::index_of(bolt) >= world.state.holes.size()) return Refusal::NoSuchPlace;
  if (world.kind(thing) == ThingKind::Bolt && world.state.things[event::index_of(thing)].where == Whereabouts::InHole &&
      place == PlaceKind::BoltThread) {
    return Refusal::Covered;
  }
  if (world.hand(hand).holding == thing) return Refusal::NoSuchPlace;
  return check_reach(world, hand, thing, place, bolt);
}

Refusal check_touch(const World& world, HandId hand_id, const event::Action& action) {
  const HandState& hand = world.hand(hand_id);
  if (hand.holding != event::kNoThing && action.kind == ActionKind::Touch) return Refusal::HandFull;
  return check_place(world, hand_id, thing_of(action), place_of(action), bolt_of(action));
}

Refusal check_tool(const World& world, HandId hand_id, const event::Action& action) {
  if (place_of(action) != PlaceKind::BoltRecess) return Refusal::None;
  return tip_enters(world.setup.tools[world.thing(world.hand(hand_id).holding).part]) ? Refusal::None
                                                                                      : Refusal::DoesNotFit;
}

Refusal check_bring(const World& world, HandId hand_id, const event::Action& action) {
  const HandState& hand = world.hand(hand_id);
  if (hand.holding == event::kNoThing) return Refusal::HandEmpty;
  const ThingKind kind = world.kind(hand.holding);
  const PlaceKind place = place_of(action);
  if (kind == ThingKind::Wheel) {
    return place == PlaceKind::StandSlot || place == PlaceKind::ForkEnds ? Refusal::None : Refusal::DoesNotFit;
  }
  const Refusal reach = check_place(world, hand_id, thing_of(action), place, bolt_of(action));
  if (reach != Refusal::None) {
    // a rotor brought to a seat that has one
    const bool second = kind == ThingKind::Rotor && place == PlaceKind::HubSeat && reach == Refusal::Covered;
    return second ? Refusal::HoleTaken : reach;
  }
  if (is_tool(kind)) return check_tool(world, hand_id, action);
  if (kind == ThingKind::Rotor) {
    if (place == PlaceKind::BenchTop || place == PlaceKind::Tray) return Refusal::None;
    if (place != PlaceKind::HubSeat) return Refusal::DoesNotFit;
    const RotorPart& rotor = world.setup.rotors[world.thing(hand.holding).part];
    const bool fits = static_cast<std::size_t>(rotor.holes) == world.setup.bolt_count() &&
                      rotor.bore_m >= world.setup.hub.register_m &&
                      rotor.hole_circle_m - world.setup.hub.hole_circle_m < 0.0005 &&
                      world.setup.hub.hole_circle_m - rotor.hole_circle_m < 0.0005;
    if (!fits) return Refusal::DoesNotFit;
    for (const HoleState& hole : world.state.holes) {
      if (hole.bolt != event::kNoThing) return Refusal::HoleTaken;
    }
    return Refusal::None;
  }
  if (kind == ThingKind::Bolt && place != PlaceKind::Hole && place != PlaceKind::Tray && place != PlaceKind::BenchTop) {
    return place == PlaceKind::Mouth ? Refusal::None : Refusal::DoesNotFit;
  }
  return Refusal::None;
}

}  // namespace

bool numbered_place(PlaceKind place) {
  return place == PlaceKind::BoltHead || place == PlaceKind::BoltRecess || place == PlaceKind::Hole ||
         place == PlaceKind::Boss;
}

bool is_tool(ThingKind kind) {
  return kind == ThingKind::LKey || kind == ThingKind::Driver || kind == ThingKind::ClickDriver;
}

bool is_instrument(ThingKind kind) {
  return kind == ThingKind::Micrometer || kind == ThingKind::Vernier || kind == ThingKind::DialGauge ||
         kind == ThingKind::Pick || kind == ThingKind::Lamp;
}

Refusal check_numbers(const World& world, const event::Action& action) {
  const event::ActionSpec& spec = event::spec_of(action.kind);
  for (std::size_t i = 0; i < spec.fields.size(); ++i) {
    const std::int64_t number = action.numbers[i];
    std::int64_t most = INT64_MAX;
    std::int64_t least = 0;
    switch (spec.fields[i].step) {
      case event::Step::Hand:
        most = 1;
        break;
      case event::Step::Thing:
        most = static_cast<std::int64_t>(world.setup.things.size()) - 1;
        break;
      case event::Step::Place:
        most = static_cast<std::int64_t>(event::place_table().size()) - 1;
        break;
      case event::Step::Bolt:
        most = 255;
        break;
      case event::Step::GripKind:
        most = static_cast<std::int64_t>(event::grip_words().size()) - 1;
        break;
      case event::Step::CardEntry:
        most = static_cast<std::int64_t>(world.setup.card.size()) - 1;
        break;
      case event::Step::Flag:
        most = 1;
        break;
      case event::Step::Tick:
        most = base::kTicksPerSecond * 86400;
        break;
      default:
        most = 1'000'000'000'000;
        least = -most;
        break;
    }
    if (number < least || number > most) return Refusal::NoSuchPlace;
  }
  return Refusal::None;
}

Refusal check_motion(const World& world, const event::Action& action) {
  const HandId hand_id = action.hand();
  const HandState& hand = world.hand(hand_id);
  switch (action.kind) {
    case ActionKind::Take:
      return check_take(world, hand_id, thing_of(action), static_cast<Grip>(action.numbers[2]));
    case ActionKind::Touch:
    case ActionKind::Near:
      return check_touch(world, hand_id, action);
    case ActionKind::Bring:
      return check_bring(world, hand_id, action);
    case ActionKind::PutBack:
      if (hand.holding == event::kNoThing) return Refusal::HandEmpty;
      return world.kind(hand.holding) == ThingKind::Wheel ? Refusal::WouldFall : Refusal::None;
    case ActionKind::Pass: {
      if (hand.holding == event::kNoThing) return Refusal::HandEmpty;
      if (world.kind(hand.holding) == ThingKind::Wheel) return Refusal::BothHandsNeeded;
      const HandState& other = world.hand(World::other(hand_id));
      if (other.holding != event::kNoThing) return Refusal::HandFull;
      return other.stage == HandStage::Busy ? Refusal::Busy : Refusal::None;
    }
    case ActionKind::GripAt: {
      const Grip grip = static_cast<Grip>(action.numbers[1]);
      if (hand.holding == event::kNoThing) {
        const bool tyre =
            hand.stage == HandStage::At && (hand.at_place == PlaceKind::Tyre || hand.at_place == PlaceKind::Rim);
        if (!tyre) return Refusal::HandEmpty;
        return grip == Grip::Tyre || grip == Grip::Fingers ? Refusal::None : Refusal::DoesNotFit;
      }
      return grip_fits(world.kind(hand.holding), grip) ? Refusal::None : Refusal::DoesNotFit;
    }
    case ActionKind::Regrip:
      return hand.stage == HandStage::At ? Refusal::None : Refusal::NothingToDo;
    case ActionKind::TurnOver: {
      if (hand.holding == event::kNoThing) return Refusal::HandEmpty;
      const ThingKind kind = world.kind(hand.holding);
      if (kind == ThingKind::Wheel) return Refusal::BothHandsNeeded;
      return kind == ThingKind::Rotor || kind == ThingKind::Rag || kind == ThingKind::LKey ||
                     kind == ThingKind::Vernier || kind == ThingKind::Bolt
                 ? Refusal::None
                 : Refusal::NothingToDo;
    }
    case ActionKind::Glove: {
      if (hand.holding != event::kNoThing) return Refusal::HandFull;
      const bool on = action.numbers[1] != 0;
      return hand.gloved == on ? Refusal::AlreadyThere : Refusal::None;
    }
    default:
      return Refusal::NothingToDo;
  }
}

}  // namespace proofstand::bench

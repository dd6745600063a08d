#include "sim/desk/refusal_words.h"

#include "sim/base/number_text.h"
#include "sim/bench/hold_sight.h"
#include "sim/bench/senses.h"
#include "sim/desk/words.h"

namespace proofstand::desk {
namespace {

using bench::Refusal;
using bench::ThingKind;
using event::ActionKind;
using event::PlaceKind;

/// What the sentences are about.
struct About {
  const bench::Bench& bench;
  const event::Action& action;
  bench::HoldSight hold;

  [[nodiscard]] bool goes_somewhere() const {
    return action.kind == ActionKind::Touch || action.kind == ActionKind::Near || action.kind == ActionKind::Bring;
  }
  [[nodiscard]] bool names_thing() const { return goes_somewhere() || action.kind == ActionKind::Take; }
  [[nodiscard]] std::string name(event::ThingId thing) const {
    if (event::index_of(thing) >= bench.setup().things.size()) return tr("this");
    return tr(bench.setup().things[event::index_of(thing)].name.c_str());
  }
  [[nodiscard]] ThingKind kind(event::ThingId thing) const {
    if (event::index_of(thing) >= bench.setup().things.size()) return ThingKind::Bench;
    return bench.setup().things[event::index_of(thing)].kind;
  }
  [[nodiscard]] std::string held() const { return name(hold.holding); }
  [[nodiscard]] event::ThingId thing() const { return static_cast<event::ThingId>(action.numbers[1]); }
  [[nodiscard]] PlaceKind place() const {
    return goes_somewhere() ? static_cast<PlaceKind>(action.numbers[2]) : hold.at_place;
  }
  [[nodiscard]] std::string bolt() const {
    const std::int64_t position = goes_somewhere() ? action.numbers[3] : static_cast<std::int64_t>(hold.at_bolt);
    return tr("bolt {0}", {base::text_from_int(position + 1)});
  }
  [[nodiscard]] std::string hole() const {
    const std::int64_t position = goes_somewhere() ? action.numbers[3] : static_cast<std::int64_t>(hold.at_bolt);
    return tr("hole {0}", {base::text_from_int(position + 1)});
  }
};

RefusalWords full(const About& about) {
  if (about.action.kind == ActionKind::Pass) {
    return {tr("The other hand holds something already."), tr("Put that back first.")};
  }
  return {tr("This hand holds the {0}.", {about.held()}), tr("Put it back or pass it.")};
}

RefusalWords covered(const About& about) {
  const bool of_seat = about.place() == PlaceKind::Boss || about.place() == PlaceKind::HubSeat;
  if (of_seat) return {tr("The rotor covers this spot."), tr("Take the rotor off.")};
  if (about.place() == PlaceKind::BoltThread) return {tr("The thread is in its hole."), tr("Turn the bolt out.")};
  return {tr("The hub covers this spot."), tr("Take the rotor off.")};
}

RefusalWords locked(const About& about) {
  if (about.action.kind == ActionKind::Take) {
    return {tr("The bolt is screwed into its hole."), tr("Turn it out.")};
  }
  return {tr("The setting handle is locked."), tr("Draw its collar back.")};
}

RefusalWords does_not_fit(const About& about) {
  if (about.action.kind == ActionKind::GripAt || about.action.kind == ActionKind::Take) {
    return {tr("It cannot be held like that."), tr("Take it at another part.")};
  }
  const ThingKind held = about.kind(about.hold.holding);
  if (about.place() == PlaceKind::BoltRecess) {
    return {tr("The {0} does not go into {1}.", {about.held(), about.bolt()}), tr("Another tool may fit.")};
  }
  if (held == ThingKind::Wheel) {
    return {tr("The wheel does not go in there."), tr("The stand or the bike takes it.")};
  }
  if (held == ThingKind::Rotor) return {tr("The rotor does not go on there."), {}};
  return {tr("The {0} does not go there.", {about.held()}), {}};
}

RefusalWords out_of_reach(const About& about) {
  if (about.names_thing()) {
    return {tr("The {0} is in the other hand.", {about.name(about.thing())}), tr("Pass it over.")};
  }
  return {tr("Out of reach from this side."), tr("Look from the other side.")};
}

RefusalWords nothing_to_do(const About& about) {
  switch (about.action.kind) {
    case ActionKind::AimTurn:
      return {tr("This hold turns nothing."), tr("Hold it another way.")};
    case ActionKind::AimAlong:
      return {tr("This hold presses nothing."), tr("Hold it another way.")};
    case ActionKind::TurnOver:
      return {tr("The {0} has no other side.", {about.held()}), {}};
    case ActionKind::Squeeze:
      return {tr("The bottle's mouth is at nothing."), tr("Bring it to a place.")};
    case ActionKind::Touch:
    case ActionKind::Bring:
      if (event::place_table()[static_cast<std::size_t>(about.place())].numbered) {
        return {tr("There is no bolt in {0}.", {about.hole()}), {}};
      }
      break;
    default:
      break;
  }
  return {tr("The hand rests nowhere."), tr("Bring it to a place.")};
}

RefusalWords would_fall(const About& about) {
  const bool wheel = about.kind(about.hold.holding) == ThingKind::Wheel;
  return {wheel ? tr("The wheel would fall.") : tr("It would fall."), tr("Bring it where it can stand.")};
}

RefusalWords hole_taken(const About& about) {
  if (about.kind(about.hold.holding) != ThingKind::Rotor) {
    return {tr("There is a bolt in {0} already.", {about.hole()}), tr("Turn that bolt out.")};
  }
  const bool rotor_on = bench::see_rotor_on_hub(about.bench) != event::kNoThing;
  return rotor_on ? RefusalWords{tr("There is a rotor on the hub already."), tr("Take that rotor off.")}
                  : RefusalWords{tr("Bolts stand in the holes."), tr("Turn the bolts out.")};
}

}  // namespace

RefusalWords refusal_words(const bench::Bench& bench, const event::Action& action, Refusal why) {
  const std::vector<event::ActionField>& fields = event::spec_of(action.kind).fields;
  const bool by_hand = !fields.empty() && fields.front().step == event::Step::Hand;
  const bool left = by_hand && action.numbers[0] == 0;
  const About about{bench, action, bench::see_hold(bench, left ? event::HandId::Left : event::HandId::Right)};
  switch (why) {
    case Refusal::WheelInBike:
      return {tr("The wheel is still in the bike."), tr("Take it out by its axle.")};
    case Refusal::BothHandsNeeded:
      return about.kind(about.hold.holding) == ThingKind::Wheel || bench::see_wheel(bench) == bench::WheelAt::Hands
                 ? RefusalWords{tr("Both hands are on the wheel."), tr("Set it down first.")}
                 : RefusalWords{tr("The wheel needs both hands."), tr("Empty the other hand.")};
    case Refusal::HandFull:
      return full(about);
    case Refusal::HandEmpty:
      return {tr("This hand is empty."), tr("Take something first.")};
    case Refusal::DoesNotFit:
      return does_not_fit(about);
    case Refusal::Covered:
      return covered(about);
    case Refusal::OutOfReach:
      return out_of_reach(about);
    case Refusal::Locked:
      return locked(about);
    case Refusal::ToolInTheWay:
      return {tr("The other hand is at {0}.", {about.bolt()}), tr("Draw it away.")};
    case Refusal::NotANumber:
      return {tr("A number is needed here, such as 1.78 or 1,78."), {}};
    case Refusal::BoltsHoldIt:
      return {tr("Bolts hold the rotor."), tr("Turn every bolt out.")};
    case Refusal::NoSuchPlace:
      return {tr("The hand cannot do that there."), {}};
    case Refusal::AlreadyThere:
      return action.kind == ActionKind::Glove
                 ? RefusalWords{action.numbers[1] != 0 ? tr("This hand wears a glove already.")
                                                       : tr("This hand is bare already."),
                                {}}
                 : RefusalWords{tr("It is there already."), {}};
    case Refusal::NothingToDo:
      return nothing_to_do(about);
    case Refusal::Busy:
      return {tr("The other hand is still on its way."), tr("Wait until it is there.")};
    case Refusal::RotorMissing:
      return {tr("There is no rotor on the hub."), tr("Put a rotor on.")};
    case Refusal::HoleTaken:
      return hole_taken(about);
    case Refusal::HandedOver:
      return {tr("The work has been handed over."), {}};
    case Refusal::WouldFall:
      return would_fall(about);
    case Refusal::NotPartOfThisJob:
      return {tr("That is no part of this job."), {}};
    case Refusal::WheelTurning:
      return {tr("The wheel still turns."), tr("Wait until it stands.")};
    case Refusal::None:
      break;
  }
  return {};
}

RefusalWords both_hands_words(const bench::Bench&) {
  return {tr("Both hands are on the wheel."), tr("Set it down first.")};
}

std::optional<Refusal> refused_since(const bench::Bench& bench, std::size_t events_before) {
  const auto kind = bench.vocabulary().find_kind("refused");
  if (!kind) return std::nullopt;
  const std::vector<event::Record>& events = bench.events();
  for (std::size_t i = events.size(); i > events_before; --i) {
    const event::Record& record = events[i - 1];
    if (record.kind != *kind) continue;
    const auto why = event::Vocabulary::find_field(bench.vocabulary().kinds[*kind], "why");
    if (why && record.knows(*why)) return static_cast<Refusal>(static_cast<int>(record.values[*why]));
  }
  return std::nullopt;
}

}  // namespace proofstand::desk

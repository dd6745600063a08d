// Commands and the hands: what is meant now, why something does nothing, and doing it.
#include "sim/bench/hold_sight.h"
#include "sim/desk/commands.h"
#include "sim/desk/words.h"
#include "sim/hand/gesture_laws.h"

namespace proofstand::desk {
namespace {

using hand::HandCommand;
using hand::HandDoing;
using hand::Tap;

bool at_tyre(const bench::HoldSight& hold) {
  return hold.hold.contact == bench::Contact::TyreHand || hold.hold.contact == bench::Contact::TyreFingers;
}

bench::ThingKind held_kind(const bench::Bench& bench, const bench::HoldSight& hold) {
  return hold.holding == event::kNoThing ? bench::ThingKind::Bench
                                         : bench.setup().things[event::index_of(hold.holding)].kind;
}

bool engaged(const bench::HoldSight& hold) {
  return hold.stage == bench::HandStage::At || hold.hold.contact == bench::Contact::Setting;
}

std::string why_no_tap(const bench::Bench& bench, const bench::HoldSight& hold, bool round) {
  if (!engaged(hold)) return tr("The hand rests nowhere. Bring it to a place.");
  if (hold.near) return tr("The hand is only held near.");
  const hand::Motion motion = hand::motion_of(hold, held_kind(bench, hold));
  if (motion == hand::Motion::None) return tr("There is nothing here to pull on.");
  if (motion == hand::Motion::Face || motion == hand::Motion::Drops) return {};
  if (round && !hold.hold.turns) return tr("This hold turns nothing.");
  if (!round && !hold.hold.presses) return tr("This hold presses nothing.");
  return {};
}

std::string why_no_throw(const bench::HoldSight& hold) {
  return at_tyre(hold) ? std::string() : std::string(tr("The hand is not at the tyre."));
}

}  // namespace

Situation situation_of(const hand::TwoHands& hands, const bench::Bench& bench, bool look_mode) {
  if (look_mode) return Situation::Look;
  const bench::HoldSight hold = bench::see_hold(bench, hands.active());
  const HandDoing doing = hands.doing(hands.active());
  switch (doing) {
    case HandDoing::Busy:
      return Situation::Busy;
    case HandDoing::At:
      return at_tyre(hold) ? Situation::AtTyre : Situation::At;
    case HandDoing::Work:
      return at_tyre(hold) ? Situation::WorkTyre : Situation::Work;
    case HandDoing::Free:
      break;
  }
  // fingers on a setting handle turn it wherever the tool is
  return hold.hold.contact == bench::Contact::Setting ? Situation::At : Situation::Free;
}

std::string why_not(CommandId id, const hand::TwoHands& hands, const bench::Bench& bench, bool look_mode) {
  if (!command_of(id).acts) return {};
  if (bench.over()) return tr("The work has been handed over.");
  (void)look_mode;  // looking round stops nobody from acting by the panel
  const bench::HoldSight hold = bench::see_hold(bench, hands.active());
  const bool holds = hold.holding != event::kNoThing;
  switch (id) {
    case CommandId::TapBack:
    case CommandId::TapOn:
      return why_no_tap(bench, hold, true);
    case CommandId::TapIn:
    case CommandId::TapOut:
      return why_no_tap(bench, hold, false);
    case CommandId::Harder:
    case CommandId::Softer: {
      if (!engaged(hold)) return tr("The hand rests nowhere. Bring it to a place.");
      const hand::Motion motion = hand::motion_of(hold, held_kind(bench, hold));
      const bool does = motion == hand::Motion::Face || motion == hand::Motion::Drops || hold.hold.presses ||
                        hand::notch_turn_rad(hold, held_kind(bench, hold)) > 0.0;
      return does ? std::string() : std::string(tr("There is nothing here to press harder."));
    }
    case CommandId::Slack:
      return hands.cord(hands.active()).drawn ? std::string() : std::string(tr("The cord is slack."));
    case CommandId::Leave:
    case CommandId::FreshGrip:
      return hold.stage == bench::HandStage::At ? std::string() : std::string(tr("The hand rests nowhere."));
    case CommandId::Keep:
      return holds && held_kind(bench, hold) == bench::ThingKind::Wheel
                 ? std::string(tr("Both hands are on the wheel."))
                 : std::string();
    case CommandId::NextGrip:
      return holds || at_tyre(hold) ? std::string() : std::string(tr("This hand is empty."));
    case CommandId::TipLeft:
    case CommandId::TipRight:
    case CommandId::TipUp:
    case CommandId::TipDown:
    case CommandId::TurnOver:
    case CommandId::PassOver:
    case CommandId::PutBack:
      return holds ? std::string() : std::string(tr("This hand is empty."));
    case CommandId::Throw:
      return why_no_throw(hold);
    case CommandId::Lamp: {
      if (bench::first_of(bench.setup(), bench::ThingKind::Lamp) == event::kNoThing)
        return tr("There is no lamp here.");
      const bool full = holds && held_kind(bench, hold) != bench::ThingKind::Lamp;
      return full ? std::string(tr("This hand is full.")) : std::string();
    }
    case CommandId::Glove:
      return holds ? std::string(tr("This hand is full.")) : std::string();
    default:
      return {};
  }
}

hand::Answer run(CommandId id, hand::TwoHands& hands, bool fine, int count) {
  switch (id) {
    case CommandId::TapBack:
      return hands.tap(Tap::Left, fine, count);
    case CommandId::TapOn:
      return hands.tap(Tap::Right, fine, count);
    case CommandId::TapIn:
      return hands.tap(Tap::Up, fine, count);
    case CommandId::TapOut:
      return hands.tap(Tap::Down, fine, count);
    case CommandId::TipLeft:
      return hands.tip(Tap::Left, fine);
    case CommandId::TipRight:
      return hands.tip(Tap::Right, fine);
    case CommandId::TipUp:
      return hands.tip(Tap::Up, fine);
    case CommandId::TipDown:
      return hands.tip(Tap::Down, fine);
    case CommandId::Harder:
      return hands.command(HandCommand::Harder, fine);
    case CommandId::Softer:
      return hands.command(HandCommand::Softer, fine);
    case CommandId::SlackOrLeave:
      return hands.command(HandCommand::Escape);
    case CommandId::Slack:
      return hands.command(HandCommand::Slack);
    case CommandId::Leave:
      return hands.command(HandCommand::Leave);
    case CommandId::Keep:
      return hands.command(HandCommand::Keep);
    case CommandId::NextGrip:
      return hands.command(HandCommand::NextGrip);
    case CommandId::FreshGrip:
      return hands.command(HandCommand::FreshGrip);
    case CommandId::Throw:
      return hands.command(HandCommand::Throw, fine);
    case CommandId::TurnOver:
      return hands.command(HandCommand::TurnOver);
    case CommandId::PassOver:
      return hands.command(HandCommand::PassOver);
    case CommandId::PutBack:
      return hands.command(HandCommand::PutBack);
    case CommandId::Lamp:
      return hands.command(HandCommand::Lamp);
    case CommandId::Glove:
      return hands.command(HandCommand::Glove);
    default:
      return hand::Answer::NotMine;
  }
}

}  // namespace proofstand::desk

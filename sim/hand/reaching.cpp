#include "sim/hand/reaching.h"

namespace proofstand::hand {
namespace {

constexpr base::Tick kLook = 4;  // how often a waiting hand looks
constexpr int kMostLooks = 240;  // four seconds: longer than the bench ever moves a hand

}  // namespace

void forget_hold(Work& work, HandId hand) {
  if (work.memory.hold.hand == hand) work.memory.hold.kind = StandingHold::Kind::None;
}

bool rests_at(Work& work, HandId hand, PlaceKind place, BoltId bolt) {
  const RestingAt& at = work.at(hand);
  return work.sense(hand).stage == bench::HandStage::At && at.place == place && at.bolt == bolt;
}

Task settle(Work& work, HandId hand) {
  for (int i = 0; i < kMostLooks && work.sense(hand).stage == bench::HandStage::Busy; ++i) {
    co_await work.pause(kLook);
  }
  if (work.sense(hand).stage == bench::HandStage::Busy) {
    co_await work.give_up("the hand never got there", "report this line: a hand should arrive within a second");
  }
}

Task draw_away(Work& work, HandId hand) {
  co_await settle(work, hand);
  if (work.sense(hand).stage == bench::HandStage::At) {
    work.act(event::make_plain(0, event::ActionKind::Slack, hand));
    co_await work.pause(kLook);
    work.act(event::make_plain(0, event::ActionKind::Leave, hand));
    co_await work.pause(kLook);
    co_await settle(work, hand);
  }
  work.at(hand) = {};
}

Task empty(Work& work, HandId hand) {
  co_await draw_away(work, hand);
  if (work.sense(hand).holding != kNoThing) {
    work.act(event::make_plain(0, event::ActionKind::PutBack, hand));
    co_await work.pause(kLook);
    co_await settle(work, hand);
  }
  const ThingId left = work.sense(hand).holding;
  if (left != kNoThing) {
    co_await work.give_up("the hand could not put down \"" + work.name(left) + "\"", "put it down before this line");
  }
}

Task grip_at(Work& work, HandId hand, Grip grip) {
  if (grip == Grip::None || work.sense(hand).grip == grip) co_return;
  work.act(event::make_grip(0, hand, grip));
  co_await work.pause(kLook);
  co_await settle(work, hand);
  if (work.sense(hand).grip != grip) {
    co_await work.give_up("\"" + work.name(work.sense(hand).holding) + "\" cannot be held by \"" +
                              std::string(event::words_of(grip)) + "\" here",
                          "name another grip");
  }
}

Task take(Work& work, HandId hand, ThingId thing, Grip grip) {
  co_await settle(work, hand);
  if (work.sense(hand).holding == thing) {
    co_await grip_at(work, hand, grip);
    co_return;
  }
  const HandId other = Work::other(hand);
  forget_hold(work, hand);
  co_await empty(work, hand);
  if (work.sense(other).holding == thing) {
    co_await draw_away(work, other);
    work.act(event::make_plain(0, event::ActionKind::Pass, other));
    co_await work.pause(kLook);
    co_await settle(work, other);
    co_await settle(work, hand);
    if (work.sense(hand).holding == thing) co_await grip_at(work, hand, grip);
  } else {
    work.act(event::make_take(0, hand, thing, grip));
    co_await work.pause(kLook);
    co_await settle(work, hand);
  }
  if (work.sense(hand).holding != thing) {
    co_await work.give_up("\"" + work.name(thing) + "\" did not come into the hand", "see what stands in the way");
  }
}

Task bring(Work& work, HandId hand, Pose pose) {
  co_await draw_away(work, hand);
  work.act(event::make_bring(0, hand, pose.thing, pose.place, pose.bolt, pose.u_um, pose.v_urad, pose.tilt_x_urad,
                             pose.tilt_y_urad));
  co_await work.pause(kLook);
  co_await settle(work, hand);
  if (work.sense(hand).stage != bench::HandStage::At) {
    co_await work.give_up("the hand did not get to the " + std::string(event::words_of(pose.place)) + " of \"" +
                              work.name(pose.thing) + "\"",
                          "see what stands in the way");
  }
  work.at(hand) = {pose.thing, pose.place, pose.bolt};
}

Task lay(Work& work, HandId hand, Pose pose) {
  co_await draw_away(work, hand);
  work.act(event::make_bring(0, hand, pose.thing, pose.place, pose.bolt, pose.u_um, pose.v_urad, 0, 0));
  co_await work.pause(kLook);
  co_await settle(work, hand);
  if (work.sense(hand).holding != kNoThing) {
    co_await work.give_up("\"" + work.name(work.sense(hand).holding) + "\" is still in the hand", "lay it elsewhere");
  }
}

Task touch(Work& work, HandId hand, Pose pose) {
  if (rests_at(work, hand, pose.place, pose.bolt) && work.at(hand).thing == pose.thing &&
      work.sense(hand).holding == kNoThing) {
    co_return;
  }
  co_await empty(work, hand);
  work.act(event::make_touch(0, hand, pose.thing, pose.place, pose.bolt, pose.u_um, pose.v_urad));
  co_await work.pause(kLook);
  co_await settle(work, hand);
  if (work.sense(hand).stage != bench::HandStage::At) {
    co_await work.give_up("the hand did not get to the " + std::string(event::words_of(pose.place)) + " of \"" +
                              work.name(pose.thing) + "\"",
                          "see what stands in the way");
  }
  work.at(hand) = {pose.thing, pose.place, pose.bolt};
}

ThingId owner_of(Work& work, PlaceKind place, ThingId said) {
  if (said != kNoThing) return said;
  const bench::BenchSetup& setup = work.setup();
  switch (place) {
    case PlaceKind::BoltHead:
    case PlaceKind::BoltRecess:
    case PlaceKind::Hole:
    case PlaceKind::Boss:
    case PlaceKind::HubSeat:
    case PlaceKind::Tyre:
    case PlaceKind::Rim:
    case PlaceKind::Axle:
      return bench::first_of(setup, bench::ThingKind::Wheel);
    case PlaceKind::StandSlot:
      return bench::first_of(setup, bench::ThingKind::WheelStand);
    case PlaceKind::ForkEnds:
      return bench::first_of(setup, bench::ThingKind::Bike);
    case PlaceKind::BenchTop:
      return bench::first_of(setup, bench::ThingKind::Bench);
    case PlaceKind::Tray:
      return bench::first_of(setup, bench::ThingKind::Tray);
    case PlaceKind::GloveBox:
      return bench::first_of(setup, bench::ThingKind::Gloves);
    default:
      return bench::see_rotor_on_hub(*work.bench);
  }
}

}  // namespace proofstand::hand

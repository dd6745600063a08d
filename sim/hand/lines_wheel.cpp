// Lines about the wheel: moved, spun, stopped, held.
#include "sim/hand/instructions.h"
#include "sim/hand/reaching.h"

namespace proofstand::hand {
namespace {

constexpr double kSpin_rad_s = base::kTwoPi;
constexpr double kLongestSpin_s = 300.0;

Pose tyre_of(Work& work) {
  Pose pose;
  pose.thing = owner_of(work, PlaceKind::Tyre, kNoThing);
  pose.place = PlaceKind::Tyre;
  return pose;
}

Task free_both(Work& work) {
  work.memory.hold.kind = StandingHold::Kind::None;
  co_await empty(work, HandId::Left);
  co_await empty(work, HandId::Right);
}

}  // namespace

Task steady_wheel(Work& work, const Instruction& line) {
  const HandId other = Work::other(work.memory.main);
  if (line.says(Say::Unsteadied)) {
    if (work.memory.hold.kind != StandingHold::Kind::RotorAgainst) co_await draw_away(work, other);
    co_return;
  }
  if (work.memory.hold.kind != StandingHold::Kind::None && work.memory.hold.hand == other) co_return;
  if (rests_at(work, other, PlaceKind::Tyre, kNoBolt)) co_return;
  co_await touch(work, other, tyre_of(work));
}

Task do_hold_tyre(Work& work, const Instruction& line) {
  const HandId hand = work.hand_of(line.hand, Work::other(work.memory.main));
  forget_hold(work, hand);
  co_await touch(work, hand, tyre_of(work));
  work.memory.hold = {StandingHold::Kind::Tyre, hand, tyre_of(work).thing, Grip::None};
}

Task do_move_wheel(Work& work, const Instruction& line) {
  const bool to_bike = line.says(Say::Bike);
  const bench::WheelAt wanted = to_bike ? bench::WheelAt::Bike : bench::WheelAt::Stand;
  if (bench::see_wheel(*work.bench) == wanted) co_return;
  const HandId hand = work.memory.main;
  const ThingId wheel = owner_of(work, PlaceKind::Tyre, kNoThing);
  if (work.sense(hand).holding != wheel) {
    co_await free_both(work);
    work.act(event::make_take(0, hand, wheel, Grip::Both));
    co_await work.pause(4);
    co_await settle(work, hand);
  }
  Pose pose;
  pose.place = to_bike ? PlaceKind::ForkEnds : PlaceKind::StandSlot;
  pose.thing = owner_of(work, pose.place, kNoThing);
  work.act(event::make_bring(0, hand, pose.thing, pose.place, kNoBolt, 0, 0, 0, 0));
  co_await work.pause(4);
  co_await settle(work, hand);
  co_await draw_away(work, hand);
  if (bench::see_wheel(*work.bench) != wanted) {
    co_await work.give_up("the wheel did not go in", "see what stands in the way");
  }
}

Task do_spin_wheel(Work& work, const Instruction& line) {
  const HandId hand = work.memory.main;
  const double longest_s = line.time_s.value_or(kLongestSpin_s);
  base::Tick began = work.now();
  if (!work.memory.thrown) {
    // no hand near a wheel that turns already: it comes to rest by itself
    while (bench::see_wheel_turning(*work.bench)) co_await work.pause(120);
    co_await free_both(work);
    co_await touch(work, hand, tyre_of(work));
    const double rate = line.rate_rad_s.value_or(kSpin_rad_s) * (line.says(Say::Backwards) ? -1.0 : 1.0);
    work.memory.thrown = true;
    work.act(event::make_throw(0, hand, micro(rate)));
    co_await work.pause(60);
    work.at(hand) = {};
    began = work.now();
  }
  while (bench::see_wheel_turning(*work.bench) && base::seconds(work.now() - began) < longest_s) {
    co_await work.pause(120);
  }
}

Task do_stop_wheel(Work& work, const Instruction&) {
  const HandId hand = work.memory.main;
  if (!bench::see_wheel_turning(*work.bench)) co_return;
  co_await touch(work, hand, tyre_of(work));
  co_await work.pause_s(0.5);
  co_await draw_away(work, hand);
}

}  // namespace proofstand::hand

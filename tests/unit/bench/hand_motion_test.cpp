#include "tests/support/catch.h"
#include "tests/unit/bench/job_driver.h"

namespace proofstand::testing {

using bench::Refusal;
using event::ActionKind;

// danger: what cannot be is done all the same, or is refused for another reason than the one that stands in the way
TEST_CASE("impossible actions are refused with their reason and change nothing") {
  JobDriver d(six_bolt());
  CHECK(d.plain(kRight, ActionKind::PutBack) == Refusal::HandEmpty);
  CHECK(d.plain(kRight, ActionKind::Leave) == Refusal::NothingToDo);
  CHECK(d.bring(kRight, d.job.wheel, PlaceKind::BoltRecess, bolt_at(0)) == Refusal::HandEmpty);
  CHECK(d.take(kRight, d.job.wheel, Grip::Handle) == Refusal::BothHandsNeeded);
  CHECK(d.take(kRight, d.job.card) == Refusal::NoSuchPlace);
  CHECK(d.take(kRight, d.job.old_bolts[0]) == Refusal::Locked);
  CHECK(d.touch(kRight, d.job.wheel, PlaceKind::Boss, bolt_at(0)) == Refusal::Covered);
  CHECK(d.touch(kRight, d.job.old_rotor, PlaceKind::CarrierInner) == Refusal::Covered);
  CHECK(d.touch(kRight, d.job.key, PlaceKind::Tyre) == Refusal::NoSuchPlace);
  CHECK(d.take(kRight, d.job.key) == Refusal::None);
  CHECK(d.take(kRight, d.job.driver) == Refusal::HandFull);
  CHECK(d.take(kLeft, d.job.key) == Refusal::OutOfReach);
  CHECK(d.grip(kRight, Grip::Ratchet) == Refusal::DoesNotFit);
  CHECK(d.bring(kRight, d.job.wheel, PlaceKind::BoltRecess, static_cast<BoltId>(17)) == Refusal::NoSuchPlace);
  CHECK(d.bring(kRight, d.job.wheel, PlaceKind::BoltRecess, bolt_at(0)) == Refusal::None);
  CHECK(d.touch(kLeft, d.job.old_rotor, PlaceKind::BoltHead, bolt_at(0)) == Refusal::ToolInTheWay);
  CHECK(d.take(kLeft, d.job.new_bolts[0]) == Refusal::None);
  CHECK(d.bring(kLeft, d.job.wheel, PlaceKind::Hole, bolt_at(1)) == Refusal::HoleTaken);
  const auto refused = d.of_kind("refused");
  CHECK(refused.size() == 15);
  CHECK(d.field(refused[0], "why") == event::choice_value(d.bench.vocabulary(), "refused", "why", "hand_empty"));
}

// danger: a joint in the bike is worked as if it lay on the stand
TEST_CASE("with the wheel in the bike the joint cannot be reached") {
  SixBolt job = six_bolt();
  job.setup.wheel_in_bike = true;
  JobDriver d(job);
  d.take(kRight, d.job.key);
  CHECK(d.bring(kRight, d.job.wheel, PlaceKind::BoltRecess, bolt_at(0)) == Refusal::WheelInBike);
  CHECK(d.take(kLeft, d.job.old_rotor, Grip::Edge) == Refusal::WheelInBike);
  CHECK(d.take(kLeft, d.job.wheel, Grip::Both) == Refusal::BothHandsNeeded);
  d.plain(kRight, ActionKind::PutBack);
  CHECK(d.take(kLeft, d.job.wheel, Grip::Both) == Refusal::None);
  CHECK(d.sense(kLeft).holding == d.job.wheel);
  CHECK(d.sense(kRight).holding == d.job.wheel);
  CHECK(d.plain(kRight, ActionKind::Leave) == Refusal::WouldFall);
  CHECK(d.bring(kRight, d.job.stand, PlaceKind::StandSlot) == Refusal::None);
  CHECK(bench::see_wheel(d.bench) == bench::WheelAt::Stand);
  CHECK(d.sense(kLeft).holding == event::kNoThing);
  CHECK(d.take(kRight, d.job.key) == Refusal::None);
  CHECK(d.bring(kRight, d.job.wheel, PlaceKind::BoltRecess, bolt_at(0)) == Refusal::None);
}

// danger: input while the hand is under way is lost, piles up, or acts at once
TEST_CASE("of what comes while a hand is under way the latest waits") {
  JobDriver d(six_bolt());
  d.bench.apply(event::make_take(d.bench.tick(), kRight, d.job.key, Grip::Handle));
  CHECK(d.sense(kRight).stage == bench::HandStage::Busy);
  CHECK(d.sense(kRight).holding == event::kNoThing);
  const auto to_bolt = [&](std::size_t bolt) {
    return event::make_bring(d.bench.tick(), kRight, d.job.wheel, PlaceKind::BoltRecess, bolt_at(bolt), 0, 0, 0, 0);
  };
  CHECK(d.bench.apply(to_bolt(1)) == Refusal::None);
  CHECK(d.bench.apply(to_bolt(4)) == Refusal::None);
  d.wait_s(2.0);
  CHECK(d.bench.state().hands[1].at_bolt == bolt_at(4));
  CHECK(d.of_kind("took").size() == 1);
  CHECK(d.of_kind("refused").empty());
}

// danger: two hands end up with the same thing, or with none
TEST_CASE("a thing passed over is in the other hand alone") {
  JobDriver d(six_bolt());
  d.take(kRight, d.job.new_rotor, Grip::Arms);
  CHECK(d.plain(kRight, ActionKind::Pass) == Refusal::None);
  CHECK(d.sense(kRight).holding == event::kNoThing);
  CHECK(d.sense(kLeft).holding == d.job.new_rotor);
  CHECK(bench::see_where(d.bench, d.job.new_rotor) == bench::Whereabouts::LeftHand);
  CHECK(d.plain(kLeft, ActionKind::PutBack) == Refusal::None);
  CHECK(bench::see_where(d.bench, d.job.new_rotor) == bench::Whereabouts::OnBench);
}

// danger: two hands go for the same bolt and the later one works a bolt that is gone
TEST_CASE("what has become impossible on the way is refused on arrival") {
  JobDriver d(six_bolt());
  const base::Tick now = d.bench.tick();
  CHECK(d.bench.apply(event::make_take(now, kLeft, d.job.key, Grip::None)) == Refusal::None);
  CHECK(d.bench.apply(event::make_take(now, kRight, d.job.key, Grip::None)) == Refusal::None);
  d.wait_s(1.0);
  CHECK(d.of_kind("took").size() == 1);
  CHECK(d.of_kind("refused").size() == 1);
  CHECK(d.sense(kRight).holding == event::kNoThing);
}

// danger: later stages of the job look as if they worked already
TEST_CASE("levers, rides and drives are no part of this job") {
  JobDriver d(six_bolt());
  for (const ActionKind kind : {ActionKind::LeverPull, ActionKind::Load, ActionKind::Ride, ActionKind::Power}) {
    event::Action action;
    action.kind = kind;
    CHECK(d.bench.apply(action) == Refusal::NotPartOfThisJob);
  }
}

// danger: only a short tool of the right shape may ever be tried, or anything fits
TEST_CASE("wrong tools go into a recess and bear less, or do not go in") {
  for (const bench::DriveKind drive : {bench::DriveKind::Hexalobular20, bench::DriveKind::Hexagon3_0,
                                       bench::DriveKind::Hexagon3_2, bench::DriveKind::FlatBlade}) {
    SixBolt job = six_bolt();
    job.setup.tools[0].drive = drive;
    JobDriver d(job);
    d.touch(kLeft, d.job.wheel, PlaceKind::Tyre);
    d.take(kRight, d.job.key);
    if (d.bring(kRight, d.job.wheel, PlaceKind::BoltRecess, bolt_at(0)) == Refusal::DoesNotFit) continue;
    d.press_to(kRight, 40.0);
    d.wait_s(1.0);
    d.turn_to(kRight, -100.0);
    d.wait_s(2.0);
    CHECK(d.of_kind("tool_slipped").size() >= 1);
    CHECK(d.of_kind("cracked").empty());
  }
}

}  // namespace proofstand::testing

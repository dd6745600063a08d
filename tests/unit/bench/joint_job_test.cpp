#include "tests/support/catch.h"
#include "tests/unit/bench/job_driver.h"

// danger: the parts work one by one, yet the job as a whole cannot be done at the bench
TEST_CASE("a six-bolt rotor can be replaced by force alone") {
  using namespace proofstand;
  using namespace proofstand::testing;
  JobDriver d(six_bolt());
  d.off_with_old_rotor();
  CHECK(d.of_kind("cracked").size() == 6);
  CHECK(d.of_kind("bolt_out").size() == 6);
  CHECK(d.of_kind("rotor_off").size() == 1);
  d.take(kLeft, d.job.new_rotor, Grip::Edge);
  CHECK(d.bring(kLeft, d.job.wheel, PlaceKind::HubSeat) == bench::Refusal::None);
  d.plain(kLeft, event::ActionKind::Leave);
  for (std::size_t i = 0; i < 6; ++i) d.start(bolt_at(i), d.job.new_bolts[i]);
  CHECK(d.of_kind("started").size() == 6);
  d.touch(kLeft, d.job.wheel, PlaceKind::Tyre);
  for (std::size_t i = 0; i < 6; ++i) d.run_in(bolt_at(i), 7.9);
  d.plain(kLeft, event::ActionKind::Leave);
  d.plain(kRight, event::ActionKind::PutBack);
  // turned against the bolts and held while two opposite bolts are snugged
  d.set_driver(2.0);
  d.grip(kRight, Grip::Handle);
  d.touch(kLeft, d.job.new_rotor, PlaceKind::Edge);
  d.turn_to(kLeft, 15.0);
  d.wait_s(1.0);
  CHECK(d.of_kind("rotor_turned").size() == 1);
  d.plain(kLeft, event::ActionKind::Keep);
  CHECK(d.click(bolt_at(0)));
  CHECK(d.click(bolt_at(3)));
  d.plain(kLeft, event::ActionKind::Leave);
  d.touch(kLeft, d.job.wheel, PlaceKind::Tyre);
  for (std::size_t i : {1u, 4u, 2u, 5u}) CHECK(d.click(bolt_at(i)));
  d.set_driver(5.0);
  for (std::size_t i : {0u, 3u, 1u, 4u, 2u, 5u}) CHECK(d.click(bolt_at(i)));
  d.bench.apply(event::make_hand_over(d.bench.tick()));
  const auto joint = d.of_kind("left_joint");
  REQUIRE(joint.size() == 1);
  CHECK(d.field(joint[0], "bolts") == 6.0);
  CHECK(d.field(joint[0], "below") == 0.0);
  CHECK(d.field(joint[0], "clearance") < 1e-5);
  for (const auto& bolt : d.of_kind("left_bolt")) {
    CHECK(d.field(bolt, "last_torque") > 4.6);
    CHECK(d.field(bolt, "last_torque") < 5.4);
    CHECK(d.field(bolt, "preload") > 2500.0);
  }
  INFO(d.events_text());
  CHECK(d.of_kind("refused").empty());
}

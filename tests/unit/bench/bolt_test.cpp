#include <array>

#include "sim/base/math.h"
#include "tests/support/catch.h"
#include "tests/unit/bench/job_driver.h"

namespace proofstand::testing {
namespace {

// an empty hub with the new rotor on it
JobDriver bare_hub(SixBolt job = six_bolt()) {
  job.setup.fitted_bolts.assign(6, event::kNoThing);
  job.setup.fitted_rotor = job.new_rotor;
  JobDriver d(job);
  return d;
}

void twirl_until(JobDriver& d, double angle_deg, double turns) {
  d.turn_to(kRight, angle_deg);
  for (int i = 0; i < 240 * 8; ++i) {
    const double done = d.bench.state().visits[1].hand_rad / base::kTwoPi;
    if (turns > 0.0 ? done >= turns : done <= turns) break;
    d.bench.advance_to(d.bench.tick() + 1);
  }
  d.plain(kRight, event::ActionKind::Slack);
  d.wait_s(0.2);
}

// how many of so many seeds cross when the bolt is brought at a tilt and simply turned in
int crossed_of(int seeds, double tilt_deg, bool back_first) {
  int crossed = 0;
  for (int seed = 1; seed <= seeds; ++seed) {
    SixBolt job = six_bolt();
    job.setup.seed = static_cast<std::uint64_t>(seed);
    JobDriver d = bare_hub(job);
    d.take(kRight, d.job.new_bolts[0]);
    d.bring(kRight, d.job.wheel, PlaceKind::Hole, bolt_at(0), tilt_deg);
    if (back_first) {
      d.turn_to(kRight, -100.0);
      for (int i = 0; i < 240 * 5 && !d.sense(kRight).dropped; ++i) d.bench.advance_to(d.bench.tick() + 1);
      d.plain(kRight, event::ActionKind::Slack);
      d.wait_s(0.1);
    }
    twirl_until(d, 100.0, 1.2);
    crossed += d.hole(0).crossed ? 1 : 0;
  }
  return crossed;
}

}  // namespace

// danger: starts cross by a bare chance, or never
TEST_CASE("square bolts catch, tilted ones cross unless turned back first") {
  CHECK(crossed_of(20, 1.0, false) == 0);
  CHECK(crossed_of(20, 3.5, true) == 0);
  const int blind = crossed_of(40, 3.5, false);
  CHECK(blind > 5);
  CHECK(blind < 38);
  CHECK(crossed_of(20, 6.0, true) == 20);
}

// danger: a crossed thread feels like a good one
TEST_CASE("a crossed bolt is stiff from the first quarter turn, stands askew and can be backed out") {
  JobDriver d = bare_hub();
  d.take(kRight, d.job.new_bolts[0]);
  d.bring(kRight, d.job.wheel, PlaceKind::Hole, bolt_at(0), 7.0);
  twirl_until(d, 100.0, 3.0);
  REQUIRE(d.hole(0).crossed);
  CHECK(d.hole(0).turns_1 < 0.6);
  CHECK(bench::see_bolt(d.bench, bolt_at(0)).askew);
  const double strength = d.hole(0).strip_1;
  d.turn_to(kRight, -100.0);
  d.wait_s(3.0);
  CHECK(d.hole(0).bolt == event::kNoThing);
  CHECK(d.sense(kRight).holding == d.job.new_bolts[0]);
  CHECK(d.hole(0).strip_1 == Approx(strength * 0.95));
}

// danger: turned back, the bolt does not show that it found its start
TEST_CASE("turned back once round a bolt drops into its start") {
  JobDriver d = bare_hub();
  d.take(kRight, d.job.new_bolts[0]);
  d.bring(kRight, d.job.wheel, PlaceKind::Hole, bolt_at(0), 1.0);
  CHECK_FALSE(d.sense(kRight).dropped);
  d.turn_to(kRight, -100.0);
  for (int i = 0; i < 240 * 3 && !d.sense(kRight).dropped; ++i) d.bench.advance_to(d.bench.tick() + 1);
  d.plain(kRight, event::ActionKind::Slack);
  CHECK(d.sense(kRight).dropped);
  CHECK_FALSE(d.sense(kRight).caught);
  twirl_until(d, 100.0, 1.0);
  const auto started = d.of_kind("started");
  REQUIRE(started.size() == 1);
  CHECK(d.field(started[0], "turned_back") == 1.0);
  CHECK(d.field(started[0], "torque") < 0.2);
}

// danger: a bolt that has not caught stays hanging in the air
TEST_CASE("let go before it caught the bolt comes away in the fingers") {
  JobDriver d = bare_hub();
  d.take(kRight, d.job.new_bolts[0]);
  d.bring(kRight, d.job.wheel, PlaceKind::Hole, bolt_at(0), 1.0);
  d.plain(kRight, event::ActionKind::Leave);
  CHECK(d.hole(0).bolt == event::kNoThing);
  CHECK(d.sense(kRight).holding == d.job.new_bolts[0]);
}

// danger: a bolt too long for its hole clamps nothing and nobody can tell
TEST_CASE("a long bolt reaches its torque on the bottom of the hole and clamps nothing") {
  SixBolt job = six_bolt();
  job.setup.bolts[6].length_m = 0.016;
  JobDriver d = bare_hub(job);
  d.touch(kLeft, d.job.wheel, PlaceKind::Tyre);
  d.start(bolt_at(0), d.job.new_bolts[0]);
  d.run_in(bolt_at(0), 10.0);
  d.set_driver(5.0);
  d.grip(kRight, Grip::Handle);
  CHECK(d.click(bolt_at(0)));
  const auto pulls = d.of_kind("tightened");
  REQUIRE(pulls.size() == 1);
  CHECK(d.field(pulls[0], "peak_torque") == Approx(5.0).epsilon(0.07));
  CHECK(d.field(pulls[0], "preload") == 0.0);
  CHECK(bench::see_bolt(d.bench, bolt_at(0)).head_gap_m > 0.002);
  d.bench.apply(event::make_hand_over(d.bench.tick()));
  CHECK(d.field(d.of_kind("left_bolt")[0], "bottomed") == 1.0);
}

// danger: grease in the thread passes for a normal bolt
TEST_CASE("greased threads clamp far harder at the same torque") {
  std::array<double, 2> preload_n{};
  for (int greased = 0; greased < 2; ++greased) {
    SixBolt job = six_bolt();
    job.setup.bolts[6].patch = false;
    job.setup.bolts[6].grease_kg_m2 = greased * 0.05;
    JobDriver d = bare_hub(job);
    d.touch(kLeft, d.job.wheel, PlaceKind::Tyre);
    d.start(bolt_at(0), d.job.new_bolts[0]);
    d.run_in(bolt_at(0), 7.9);
    d.set_driver(5.0);
    d.grip(kRight, Grip::Handle);
    d.click(bolt_at(0));
    preload_n[static_cast<std::size_t>(greased)] = d.hole(0).preload_n;
  }
  CHECK(preload_n[1] > 1.2 * preload_n[0]);
}

// danger: the hub's aluminium holds whatever is pulled
TEST_CASE("far beyond its torque a short thread strips and lets the head stand") {
  SixBolt job = six_bolt();
  job.setup.bolts[6].length_m = 0.0045;
  job.setup.bolts[6].grade = bench::BoltGrade::Steel12_9;
  job.setup.bolts[6].patch = false;
  JobDriver d = bare_hub(job);
  d.touch(kLeft, d.job.wheel, PlaceKind::Tyre);
  d.start(bolt_at(0), d.job.new_bolts[0]);
  d.plain(kRight, event::ActionKind::PutBack);
  d.seat_tool(d.job.key, bolt_at(0));
  for (int pull = 0; pull < 9; ++pull) {
    d.turn_to(kRight, 150.0);
    d.wait_s(3.0);
    d.plain(kRight, event::ActionKind::Regrip);
    d.press_to(kRight, 30.0);
    d.wait_s(0.6);
  }
  CHECK(d.hole(0).stripped);
  CHECK(d.hole(0).preload_n < 1000.0);
}

// danger: half engaged tools hold as well as seated ones, or ruin nothing
TEST_CASE("a tool half in slips round, wears the recess and is told") {
  SixBolt job = six_bolt();
  job.setup.fitted_torque_nm = 6.0;
  job.setup.fitted_locker_1 = 1.0;
  JobDriver d(job);
  d.touch(kLeft, d.job.wheel, PlaceKind::Tyre);
  d.take(kRight, d.job.key);
  d.bring(kRight, d.job.wheel, PlaceKind::BoltRecess, bolt_at(0));
  d.press_to(kRight, 9.0);
  d.wait_s(0.6);
  CHECK_FALSE(d.sense(kRight).home);
  d.turn_to(kRight, -100.0);
  d.wait_s(2.0);
  const auto slips = d.of_kind("tool_slipped");
  REQUIRE(slips.size() >= 1);
  CHECK(d.field(slips[0], "depth_share") < 0.8);
  CHECK(d.field(slips[0], "recess_wear") > 0.0001);
  CHECK(d.sense(kRight).slips >= 1);
  CHECK(bench::see_bolt(d.bench, bolt_at(0)).recess_ruined);
}

// danger: a second pull finds nothing to do although the joint has settled
TEST_CASE("settling takes some preload and a second pull gives it back") {
  SixBolt job = six_bolt();
  job.setup.fitted_torque_nm = 0.0;
  job.setup.fitted_locker_1 = 0.0;
  for (auto& bolt : job.setup.bolts) bolt.patch = false;
  for (auto& boss : job.setup.hub.bosses) boss = {0.00003, true, 0.0, 1.0, 0.0};
  JobDriver d = bare_hub(job);
  d.touch(kLeft, d.job.wheel, PlaceKind::Tyre);
  d.start(bolt_at(0), d.job.new_bolts[0]);
  d.run_in(bolt_at(0), 7.5);
  d.set_driver(5.0);
  d.grip(kRight, Grip::Handle);
  d.click(bolt_at(0));
  const double first_n = d.hole(0).preload_n;
  d.click(bolt_at(0));
  CHECK(d.hole(0).preload_n > first_n + 100.0);
}

}  // namespace proofstand::testing

#include "sim/bench/hand_law.h"

#include <array>
#include <utility>
#include "sim/base/math.h"

#include "tests/support/catch.h"
#include "tests/unit/bench/job_driver.h"

namespace proofstand::testing {
namespace {

double pull_nm(const JobDriver& d) { return d.sense(kRight).torque_nm; }

// a bolt that nothing moves: the key's pull is then all that the hand gives
SixBolt stuck() {
  SixBolt job = six_bolt();
  job.setup.fitted_torque_nm = 7.0;
  job.setup.fitted_locker_1 = 6.0;
  for (auto& bolt : job.setup.bolts) bolt.grade = bench::BoltGrade::Steel12_9;  // its recess bears the whole pull
  return job;
}

}  // namespace

// danger: lead, level and force drift from the law that every route and every recorded attempt relies on
TEST_CASE("lead decides the level, the level the force") {
  const bench::AxisLaw law = bench::turn_law();
  const std::array<double, 6> leads_deg = {2.0, 21.0, 40.0, 59.0, 78.0, 200.0};
  const std::array<std::int64_t, 6> levels = {0, 128, 256, 384, 512, 512};
  const std::array<double, 6> pulls_nm = {0.0, 1.13, 3.18, 5.85, 9.0, 9.0};
  for (std::size_t i = 0; i < leads_deg.size(); ++i) {
    CHECK(bench::level_of(law, base::radians(leads_deg[i])) == levels[i]);
    CHECK(9.0 * bench::force_share_1(levels[i]) == Approx(pulls_nm[i]).epsilon(0.005));
  }
}

// danger: a key on a stuck bolt gives another torque than its lead stands for
TEST_CASE("a key on a stuck bolt pulls as far as it is drawn") {
  for (const auto& [lead_deg, pull] : std::array<std::pair<double, double>, 6>{
           {{2.0, 0.0}, {21.0, 1.13}, {40.0, 3.18}, {59.0, 5.85}, {78.0, 9.0}, {200.0, 9.0}}}) {
    JobDriver d(stuck());
    d.touch(kLeft, d.job.wheel, PlaceKind::Tyre);
    d.seat_tool(d.job.key, bolt_at(0));
    d.turn_to(kRight, -lead_deg);
    d.wait_s(2.5);
    CHECK(pull_nm(d) == Approx(pull).epsilon(0.005).margin(1e-9));
    CHECK(d.sense(kRight).fastener_rad == 0.0);
  }
}

// danger: the pull comes or goes faster than an arm can, so that a jerk beats the click mechanism
TEST_CASE("the level rises by four a tick and falls by sixteen") {
  JobDriver d(stuck());
  d.touch(kLeft, d.job.wheel, PlaceKind::Tyre);
  d.seat_tool(d.job.key, bolt_at(0));
  d.turn_to(kRight, -100.0);
  std::int64_t before = 0;
  for (int i = 0; i < 200; ++i) {
    d.bench.advance_to(d.bench.tick() + 1);
    const std::int64_t level = d.bench.state().hands[1].turn.level;
    CHECK(level - before <= 4);
    before = level;
  }
  CHECK(before == 512);
  d.plain(kRight, event::ActionKind::Slack);
  d.bench.advance_to(d.bench.tick() + 10);
  CHECK(d.bench.state().hands[1].turn.level == 512 - 160);
  d.wait_s(0.2);
  CHECK(pull_nm(d) == 0.0);
}

// danger: a bent wrist goes on pulling, and one pull becomes a whole turn
TEST_CASE("past its reach the hand stops, and a fresh grip sets the key in unpressed") {
  JobDriver d(six_bolt());
  d.touch(kLeft, d.job.wheel, PlaceKind::Tyre);
  d.crack(bolt_at(0));
  d.seat_tool(d.job.key, bolt_at(0));
  d.turn_to(kRight, -170.0);
  d.wait_s(4.0);
  CHECK(base::degrees(d.sense(kRight).turn_rad) == Approx(-75.0).margin(0.5));
  CHECK(d.sense(kRight).reach_left_rad == Approx(0.0).margin(base::radians(0.5)));
  CHECK(d.plain(kRight, event::ActionKind::Regrip) == bench::Refusal::None);
  CHECK(d.sense(kRight).turn_rad == 0.0);
  CHECK(d.sense(kRight).press_n == 0.0);
  CHECK_FALSE(d.sense(kRight).home);
}

// danger: fingers that circle wind up force, or go on twirling after the pointer came back
TEST_CASE("fingers twirl one way with what two fingers have, and stand still 78 degrees back") {
  JobDriver d(six_bolt());
  d.touch(kLeft, d.job.wheel, PlaceKind::Tyre);
  d.crack(bolt_at(0));
  d.plain(kRight, event::ActionKind::PutBack);
  d.touch(kRight, d.job.old_rotor, PlaceKind::BoltHead, bolt_at(0));
  double before = 0.0;
  for (int sample = 1; sample <= 40; ++sample) {  // five circles of eight
    d.turn_to(kRight, -45.0 * sample);
    d.bench.advance_to(d.bench.tick() + 12);
    const double now = d.sense(kRight).fastener_rad;
    CHECK(now <= before + 1e-12);
    before = now;
    CHECK(d.sense(kRight).torque_nm <= 0.22 + 1e-9);
  }
  d.turn_to(kRight, -45.0 * 40 + 78.0);
  d.wait_s(1.0);
  const double end_before = d.bench.state().hands[1].turn.end_1;
  d.wait_s(1.0);
  CHECK(d.bench.state().hands[1].turn.end_1 == end_before);
}

// danger: a kept hand forgets what it was asked to hold, or goes on when it was told to stop
TEST_CASE("a kept hand keeps its pull, and slack ends it with the thing still held") {
  JobDriver d(stuck());
  d.touch(kLeft, d.job.wheel, PlaceKind::Tyre);
  d.seat_tool(d.job.key, bolt_at(0));
  d.turn_to(kRight, -(2.0 + 76.0 * 300.0 / 512.0));
  d.wait_s(1.5);
  const std::int64_t level = d.bench.state().hands[1].turn.level;
  CHECK(level == 300);
  CHECK(d.bench.apply(event::make_plain(d.bench.tick(), event::ActionKind::Keep, kRight)) == bench::Refusal::None);
  d.wait_s(3.0);
  CHECK(d.bench.state().hands[1].turn.level == 300);
  CHECK(d.bench.state().hands[1].kept);
  d.plain(kRight, event::ActionKind::Slack);
  d.wait_s(0.2);
  CHECK(d.bench.state().hands[1].turn.level == 0);
  CHECK(d.sense(kRight).holding == d.job.key);
}

// danger: pressing home needs another drag than the law says, or drawing back pulls the tool out
TEST_CASE("forty millimetres press with eighty newton, back to nothing leaves the tool in") {
  JobDriver d(six_bolt());
  d.take(kRight, d.job.key);
  d.bring(kRight, d.job.wheel, PlaceKind::BoltRecess, bolt_at(0));
  CHECK(d.bench.state().visits[1].depth_m == 0.0);
  d.press_to(kRight, 40.0);
  d.wait_s(1.0);
  CHECK(d.sense(kRight).press_n == Approx(80.0).epsilon(0.005));
  CHECK(d.sense(kRight).home);
  d.press_to(kRight, 0.0);
  d.wait_s(0.5);
  CHECK(d.sense(kRight).press_n == 0.0);
  CHECK(d.sense(kRight).home);
  d.press_to(kRight, -13.0);
  d.wait_s(0.5);
  CHECK(d.sense(kRight).press_n == 0.0);
  CHECK(d.bench.state().hands[1].at_place == PlaceKind::BoltRecess);
}

// danger: a stalled machine charges the trainee with a jerk
TEST_CASE("a gap is recorded and changes nothing else") {
  JobDriver plain(stuck());
  JobDriver stalled(stuck());
  for (JobDriver* d : {&plain, &stalled}) {
    d->touch(kLeft, d->job.wheel, PlaceKind::Tyre);
    d->seat_tool(d->job.key, bolt_at(0));
    d->turn_to(kRight, -40.0);
    d->wait_s(0.4);
    if (d == &stalled) d->bench.apply(event::make_gap(d->bench.tick(), 108));
    d->turn_to(kRight, -60.0);
    d->wait_s(1.0);
  }
  CHECK(stalled.of_kind("gap").size() == 1);
  CHECK(plain.bench.state().hands[1].turn.level == stalled.bench.state().hands[1].turn.level);
  CHECK(plain.bench.state().visits[1].peak_out_nm == stalled.bench.state().visits[1].peak_out_nm);
  CHECK(stalled.bench.state().gap_ticks == 108);
}

}  // namespace proofstand::testing

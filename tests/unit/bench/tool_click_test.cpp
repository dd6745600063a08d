#include "sim/base/math.h"
#include "sim/bench/tool_work.h"
#include "tests/support/catch.h"
#include "tests/unit/bench/job_driver.h"

namespace proofstand::testing {
namespace {

// all bolts left at 3 N·m, no locker: ready for the torque tool
SixBolt nearly_tight() {
  SixBolt job = six_bolt();
  job.setup.fitted_torque_nm = 3.0;
  job.setup.fitted_locker_1 = 0.0;
  job.setup.tools[2].start_setting_nm = 5.0;
  job.setup.tools[2].class_1 = 0.0;
  for (auto& bolt : job.setup.bolts) bolt.patch = false;
  return job;
}

// draws at a rate until the click and 0.3 s on, as in the law's own example; returns the largest torque
double peak_at_rate_nm(double rate_deg_s) {
  JobDriver d(nearly_tight());
  d.touch(kLeft, d.job.wheel, PlaceKind::Tyre);
  d.seat_tool(d.job.click_driver, bolt_at(0));
  double at = 0.0;
  int after = 0;
  while (after < 72 && at < 300.0) {
    at += rate_deg_s / 240.0;
    d.turn_to(kRight, at);
    d.bench.advance_to(d.bench.tick() + 1);
    if (d.sense(kRight).clicks > 0) ++after;
  }
  d.plain(kRight, event::ActionKind::Slack);
  d.wait_s(0.3);
  d.plain(kRight, event::ActionKind::Leave);
  const auto pulls = d.of_kind("tightened");
  REQUIRE(pulls.size() == 1);
  CHECK(d.field(pulls[0], "clicks") == 1.0);
  return d.field(pulls[0], "peak_torque");
}

}  // namespace

// danger: a slow, clean pull is punished, or a fast one forgiven
TEST_CASE("drawn slowly a click stops the pull, drawn fast it is overrun") {
  CHECK(peak_at_rate_nm(10.0) <= 5.1);
  const double at_20 = peak_at_rate_nm(20.0);
  CHECK(at_20 > 5.1);
  CHECK(at_20 < 5.8);
  const double at_60 = peak_at_rate_nm(60.0);
  CHECK(at_60 > 6.0);
  CHECK(at_60 < 7.4);
}

// danger: a deliberate pull through the click leaves no trace
TEST_CASE("pulled on past its free travel the tool bites again") {
  JobDriver d(nearly_tight());
  d.touch(kLeft, d.job.wheel, PlaceKind::Tyre);
  d.seat_tool(d.job.click_driver, bolt_at(0));
  d.draw_on(kRight, 0.0, 75.0, 20.0);
  d.wait_s(1.0);
  d.plain(kRight, event::ActionKind::Slack);
  d.wait_s(0.3);
  d.plain(kRight, event::ActionKind::Leave);
  const auto pulls = d.of_kind("tightened");
  REQUIRE(pulls.size() == 1);
  CHECK(d.of_kind("clicked").size() == 1);
  CHECK(d.field(pulls[0], "peak_torque") > 6.5);
  CHECK(d.field(pulls[0], "past_click") > 1.5);
  CHECK(d.field(pulls[0], "over_pull") > base::radians(1.0));
}

// danger: torque tools err beyond their class, or all the same way
TEST_CASE("tools err within their class, each in its own way") {
  bool high = false, low = false;
  for (std::uint64_t seed = 1; seed <= 60; ++seed) {
    SixBolt job = nearly_tight();
    job.setup.seed = seed;
    job.setup.tools[2].class_1 = 0.06;
    JobDriver d(job);
    d.touch(kLeft, d.job.wheel, PlaceKind::Tyre);
    CHECK(d.click(bolt_at(0)));
    const double off = d.field(d.of_kind("tightened")[0], "peak_torque") / 5.0 - 1.0;
    CHECK(off <= 0.061);
    CHECK(off >= -0.061);
    high = high || off > 0.01;
    low = low || off < -0.01;
  }
  CHECK(high);
  CHECK(low);
}

// danger: the scale turns while its collar is locked, or a figure stands between two lines
TEST_CASE("the setting handle turns only with its collar drawn and locks on a line") {
  JobDriver d(six_bolt());
  d.take(kRight, d.job.click_driver, Grip::Setting);
  CHECK(d.turn_to(kRight, -60.0) == bench::Refusal::Locked);
  CHECK(bench::see_setting_nm(d.bench, d.job.click_driver) == Approx(8.0));
  d.set_driver(5.0);
  CHECK(bench::see_setting_nm(d.bench, d.job.click_driver) == Approx(5.0));
  CHECK(d.bench.state().tools[2].setting_nm == Approx(5.0).margin(1e-12));
  const auto set = d.of_kind("driver_set");
  REQUIRE(set.size() == 1);
  CHECK(d.field(set[0], "before") == Approx(8.0));
  CHECK(d.turn_to(kRight, 60.0) == bench::Refusal::Locked);
}

// danger: a wheel that nothing holds takes all the torque that a hand has
TEST_CASE("with nobody holding the wheel it turns and the bolt stays tight") {
  JobDriver d(six_bolt());
  d.seat_tool(d.job.key, bolt_at(0));
  d.turn_to(kRight, -75.0);
  d.wait_s(2.0);
  CHECK(d.of_kind("cracked").empty());
  CHECK(d.bench.state().wheel.angle_rad > base::radians(20.0));
  CHECK(d.bench.state().visits[1].peak_out_nm <= bench::kBearingDrag_nm + 1e-9);
}

// danger: a straight driver's handle reaches a torque that hands do not have
TEST_CASE("a straight driver falls short of the sheet's torque") {
  JobDriver d(nearly_tight());
  d.touch(kLeft, d.job.wheel, PlaceKind::Tyre);
  d.seat_tool(d.job.driver, bolt_at(0));
  d.turn_to(kRight, 105.0);
  d.wait_s(3.0);
  d.plain(kRight, event::ActionKind::Slack);
  d.wait_s(0.3);
  d.plain(kRight, event::ActionKind::Leave);
  const auto pulls = d.of_kind("tightened");
  REQUIRE(pulls.size() == 1);
  CHECK(d.field(pulls[0], "peak_torque") < 4.6);
}

}  // namespace proofstand::testing

#include "sim/bench/wheel.h"

#include "sim/bench/rub.h"
#include "tests/support/bench_parts.h"
#include "tests/support/catch.h"

namespace proofstand::bench {
namespace {

using testing::BenchParts;

// danger: a thrown wheel never stops, stops at once, or its angle depends on how often it is looked at
TEST_CASE("a thrown wheel slows down in closed form and tells its turns") {
  BenchParts parts;
  parts.state.tick = 100;
  throw_wheel(parts.world(), HandId::Right, base::kTwoPi);
  CHECK(wheel_spins(parts.state));
  const base::Tick stops = wheel_stops_at(parts.world());
  parts.state.tick = stops - 1;
  CHECK(wheel_spins(parts.state));
  CHECK(wheel_rate_rad_s(parts.state) == Approx(kStandingRate_rad_s).epsilon(0.01));
  parts.state.tick = stops;
  CHECK_FALSE(wheel_spins(parts.state));
  end_spin(parts.world());
  const auto spun = parts.of_kind("wheel_spun");
  REQUIRE(spun.size() == 1);
  // turns = J (w0² - w1²)/(4 pi T) with 0.10 kg m² and 0.012 N·m: mechanics; figures from memory
  const double w0 = base::kTwoPi;
  const double turns = 0.10 * (w0 * w0 - kStandingRate_rad_s * kStandingRate_rad_s) / (4.0 * base::kPi * 0.012);
  CHECK(parts.field(spun[0], "turns") == Approx(turns).epsilon(1e-3));
  CHECK(parts.field(spun[0], "forward") == 1.0);
  CHECK(parts.field(spun[0], "rub_heard") == 0.0);
  const auto turning = parts.of_kind("wheel_turning");
  REQUIRE(turning.size() == 2);
  CHECK(parts.field(turning[0], "turning") == 1.0);
  CHECK(parts.field(turning[1], "turning") == 0.0);
}

// danger: letting go gently counts as a throw
TEST_CASE("a slow let-go throws nothing, and no hand throws faster than two turns a second") {
  BenchParts parts;
  throw_wheel(parts.world(), HandId::Right, 0.05 * base::kTwoPi);
  CHECK_FALSE(wheel_spins(parts.state));
  throw_wheel(parts.world(), HandId::Right, -100.0);
  CHECK(wheel_rate_rad_s(parts.state) == Approx(-2.0 * base::kTwoPi));
}

// danger: the wheel is thrown with a rag at the rotor and nothing stops the run
TEST_CASE("a throw with the other hand at the rotor stops the run") {
  BenchParts parts;
  parts.hold(HandId::Left, parts.job.clean_rag, parts.job.old_rotor, PlaceKind::TrackOuter, 0.0725, 0.0);
  throw_wheel(parts.world(), HandId::Right, base::kTwoPi);
  CHECK(parts.state.stopped);
  REQUIRE(parts.of_kind("endangered").size() == 1);
  CHECK(parts.field(parts.of_kind("endangered")[0], "hand") == 0.0);
}

// danger: a rotor of the wrong size goes between fork and caliper, or a wheel moves with a hand full
TEST_CASE("the wheel moves only with both hands free and a rotor that fits") {
  BenchParts parts;
  parts.state.hands[0].holding = parts.job.key;
  CHECK(move_wheel(parts.world(), HandId::Right, WheelAt::Hands) == Refusal::BothHandsNeeded);
  parts.state.hands[0].holding = event::kNoThing;
  CHECK(move_wheel(parts.world(), HandId::Right, WheelAt::Stand) == Refusal::AlreadyThere);
  CHECK(move_wheel(parts.world(), HandId::Right, WheelAt::Hands) == Refusal::None);
  parts.job.setup.rotors[0].diameter_m = 0.180;
  CHECK(move_wheel(parts.world(), HandId::Right, WheelAt::Bike) == Refusal::DoesNotFit);
  parts.job.setup.rotors[0].diameter_m = 0.160;
  parts.state.holes[5].preload_n = 100.0;
  parts.state.holes[4].bolt = event::kNoThing;
  CHECK(move_wheel(parts.world(), HandId::Right, WheelAt::Bike) == Refusal::None);
  const auto moved = parts.of_kind("wheel_moved");
  REQUIRE(moved.size() == 2);
  CHECK(parts.choice(moved[1], "to") == "bike");
  CHECK(parts.choice(moved[1], "from") == "hands");
  CHECK(parts.field(moved[1], "loose") == 2.0);
}

// danger: a rotor that wobbles more than its gaps is silent, or a true one rubs
TEST_CASE("what exceeds the pad gaps rubs, and rub slows the wheel") {
  BenchParts parts;
  parts.state.wheel.at = WheelAt::Bike;
  CHECK(rub_in_caliper(parts.world()).share_1 == 0.0);
  throw_wheel(parts.world(), HandId::Right, base::kTwoPi);
  const base::Tick free_run = wheel_stops_at(parts.world());
  BenchParts tight;
  tight.job.setup.brake.pad_gap_out_m = -0.00005;
  tight.state.wheel.at = WheelAt::Bike;
  const Rub rub = rub_in_caliper(tight.world());
  CHECK(rub.share_1 == 1.0);
  CHECK(rub.gap_out_m == 0.0);
  throw_wheel(tight.world(), HandId::Right, base::kTwoPi);
  CHECK(wheel_stops_at(tight.world()) < free_run);
  tight.state.tick = wheel_stops_at(tight.world());
  end_spin(tight.world());
  CHECK(tight.field(tight.of_kind("wheel_spun").at(0), "rub_heard") == 1.0);
  CHECK(tight.choice(tight.of_kind("wheel_spun").at(0), "at") == "bike");
}

}  // namespace
}  // namespace proofstand::bench

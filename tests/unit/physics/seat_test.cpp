// Danger: a clamp that appears without contact, or an order of tightening that matters more here than it does in metal.
#include <rapidcheck.h>

#include <cmath>

#include "sim/base/math.h"
#include "sim/physics/interaction.h"
#include "sim/physics/seating.h"
#include "sim/physics/settling.h"
#include "tests/support/catch.h"

using namespace proofstand;
using namespace proofstand::physics;

namespace {

double between(int low, int high) { return static_cast<double>(*rc::gen::inRange(low, high)); }

std::vector<double> any_heights() {
  std::vector<double> height_m(static_cast<std::size_t>(*rc::gen::inRange(3, 9)));
  for (double& one_m : height_m) one_m = 1e-6 * between(0, 200);
  return height_m;
}

double spread_1(const std::vector<double>& force_n) {
  double low = force_n[0];
  double high = force_n[0];
  double mean = 0.0;
  for (const double one : force_n) {
    low = one < low ? one : low;
    high = one > high ? one : high;
    mean += one / static_cast<double>(force_n.size());
  }
  return (high - low) / mean;
}

std::vector<double> pulled(const InteractionRow& row, const std::vector<std::size_t>& order, int passes) {
  const std::vector<double> matrix = interaction_matrix_1(row, 6);
  std::vector<double> force_n(6, 0.0);
  std::vector<bool> locked(6, false);
  for (int pass = 0; pass < passes; ++pass) {
    for (const std::size_t bolt : order) {
      force_n = pull_one_n(matrix, force_n, locked, bolt, 5000.0);
      locked[bolt] = true;
    }
  }
  return force_n;
}

}  // namespace

TEST_CASE("a plane is fitted exactly when the bosses lie in one, whatever their number") {
  CHECK(rc::check("exact", [] {
    const std::size_t n = static_cast<std::size_t>(*rc::gen::inRange(3, 12));
    const Tilt truth{1e-4 * between(-20, 20), 1e-4 * between(-20, 20), 1e-6 * between(0, 100)};
    std::vector<double> height_m;
    for (std::size_t b = 0; b < n; ++b) {
      height_m.push_back(truth.height_m(0.022, base::kTwoPi * static_cast<double>(b) / static_cast<double>(n)));
    }
    const Tilt fit = fit_tilt(height_m, 0.022);
    RC_ASSERT(std::fabs(fit.x_1 - truth.x_1) < 1e-12);
    RC_ASSERT(std::fabs(fit.y_1 - truth.y_1) < 1e-12);
    RC_ASSERT(std::fabs(fit.offset_m - truth.offset_m) < 1e-14);
  }));
}

TEST_CASE("a rigid rotor rests on three bosses and passes through none") {
  CHECK(rc::check("rests", [] {
    const std::vector<double> height_m = any_heights();
    const Tilt plane = resting_tilt(height_m, 0.022, 0.01 * between(0, 628));
    int touching = 0;
    for (std::size_t b = 0; b < height_m.size(); ++b) {
      const double at_m =
          plane.height_m(0.022, base::kTwoPi * static_cast<double>(b) / static_cast<double>(height_m.size()));
      RC_ASSERT(at_m >= height_m[b] - 1e-11);
      if (at_m < height_m[b] + 1e-10) ++touching;
    }
    RC_ASSERT(touching >= 3);
    for (const double gap_m : boss_gaps_m(height_m, 0.022, plane)) RC_ASSERT(gap_m >= 0.0);
  }));
}

TEST_CASE("grit under one boss leaves gaps elsewhere but not there; a flat seat leaves none") {
  const std::vector<double> grit = {0.00005, 0, 0, 0, 0, 0};
  const std::vector<double> gaps_m = boss_gaps_m(grit, 0.022, resting_tilt(grit, 0.022, base::kPi));
  CHECK(gaps_m[0] == Approx(0.0).margin(1e-10));
  CHECK(gaps_m[1] + gaps_m[2] + gaps_m[4] + gaps_m[5] > 0.00003);
  CHECK(resting_tilt(std::vector<double>(6, 0.0), 0.022, 1.0).size_rad() == Approx(0.0).margin(1e-12));
}

TEST_CASE("pulling closes a gap, never opens it, and what others hold down stays") {
  CHECK(rc::check("closes", [] {
    const double gap_m = 1e-6 * between(0, 300);
    const double force_n = between(0, 9000);
    const double straight_1 = 0.01 * between(0, 101);
    const double alone_m = gap_after_pull_m(gap_m, force_n, false, straight_1);
    const double held_m = gap_after_pull_m(gap_m, force_n, true, straight_1);
    RC_ASSERT(alone_m >= 0.0);
    RC_ASSERT(alone_m <= gap_m);
    RC_ASSERT(held_m >= alone_m);
    RC_ASSERT(held_m <= gap_m);
    RC_ASSERT(gap_after_pull_m(gap_m, force_n + 100.0, true, straight_1) <= held_m);
  }));
  CHECK(gap_after_pull_m(0.0001, 5000.0, true, 1.0) == Approx(0.00003));
  CHECK(gap_after_pull_m(0.0001, 5000.0, true, 0.0) == 0.0);
  CHECK(interface_clamp_n(100.0, 0.001) == 0.0);
  CHECK(interface_clamp_n(5000.0, 0.0) == 5000.0);
}

TEST_CASE("on a clean flat seat the order hardly changes the clamp") {
  const std::vector<std::size_t> star = {0, 3, 1, 4, 2, 5};
  const std::vector<std::size_t> circle = {0, 1, 2, 3, 4, 5};
  CHECK(spread_1(pulled(clean_seat_interaction(), star, 1)) < 0.002);
  CHECK(spread_1(pulled(clean_seat_interaction(), circle, 1)) < 0.002);
  // with a soft layer the number of passes matters more than the path
  CHECK(spread_1(pulled(soft_layer_interaction(), star, 1)) > 0.10);
  CHECK(spread_1(pulled(soft_layer_interaction(), circle, 1)) > 0.10);
  CHECK(spread_1(pulled(soft_layer_interaction(), star, 2)) < 0.01);
}

TEST_CASE("a rotor not yet seated keeps part of its tilt when the first bolt goes straight to torque") {
  // 0.2 mm cocked: small steps leave none of it, one go leaves 0.06 mm, 0.4 kN of clamp and a plain wobble
  const double cocked_m = 0.0002;
  const double steps_m = gap_after_pull_m(cocked_m, 5000.0, true, 0.0);
  const double straight_m = gap_after_pull_m(cocked_m, 5000.0, true, 1.0);
  CHECK(steps_m == 0.0);
  CHECK(interface_clamp_n(5000.0, steps_m) - interface_clamp_n(5000.0, straight_m) == Approx(420.0));
  CHECK(2.0 * 0.072 * cocked_tilt_rad(straight_m, 0.044) > 0.00015);
}

TEST_CASE("the weak form agrees with the solved one where the coupling is weak") {
  CHECK(rc::check("agree", [] {
    const InteractionRow row = boss_seat_interaction();
    const std::vector<double> matrix = interaction_matrix_1(row, 6);
    std::vector<double> force_n(6);
    std::vector<bool> locked(6);
    for (std::size_t b = 0; b < 6; ++b) {
      force_n[b] = between(1000, 6000);
      locked[b] = *rc::gen::arbitrary<bool>();
    }
    const std::size_t bolt = *rc::gen::inRange<std::size_t>(0, 6);
    const double target_n = between(1000, 6000);
    const std::vector<double> solved = pull_one_n(matrix, force_n, locked, bolt, target_n);
    const std::vector<double> weak = pull_one_weak_n(row, force_n, locked, bolt, target_n - force_n[bolt]);
    for (std::size_t b = 0; b < 6; ++b) {
      RC_ASSERT(std::fabs(solved[b] - weak[b]) < 0.01);
      RC_ASSERT(solved[b] >= 0.0);
      if (b != bolt && !locked[b]) RC_ASSERT(solved[b] == force_n[b]);
    }
  }));
}

TEST_CASE("settling never raises the preload, and each pass finds less left") {
  CHECK(rc::check("settles", [] {
    const double force_n = between(0, 8000);
    double settled_m = 0.0;
    double before_m = 1.0;
    for (int pass = 0; pass < 4; ++pass) {
      const double embed_m = embed_in_pull_m(kDirtyEmbed_m, settled_m, force_n, 5000.0);
      RC_ASSERT(embed_m >= 0.0);
      RC_ASSERT(embed_m <= before_m);
      RC_ASSERT(embedding_loss_n(embed_m, 2.77e-9) >= 0.0);
      settled_m += embed_m;
      before_m = embed_m;
    }
    RC_ASSERT(settled_m <= kDirtyEmbed_m * 2.0);
    RC_ASSERT(relaxed_preload_n(force_n, kRelaxation_1, between(0, 100000), 3600.0) <= force_n);
  }));
  CHECK(embed_in_pull_m(kCleanEmbed_m, 0.0, 0.0, 5000.0) == 0.0);
  // published range of preload loss, NSTS 08307 3.6: 2 to 10 % for a usual joint
  const double loss_n = embedding_loss_n(embed_in_pull_m(kCleanEmbed_m, 0.0, 5000.0, 5000.0), 2.77e-9);
  CHECK(loss_n > 0.02 * 5000.0);
  CHECK(loss_n < 0.10 * 5000.0);
  // closed form: stainless carrier under a steel bolt, 100 K
  CHECK(thermal_preload_change_n(10.0e-6, 11.7e-6, 100.0, 0.0018, 2.77e-9) == Approx(-110.5).epsilon(0.01));
}

// Danger: a tool out of its class, a hand that cannot be, or a scale that shows another value than the one it holds.
#include <rapidcheck.h>

#include <cmath>

#include "sim/base/math.h"
#include "sim/physics/dimensions.h"
#include "sim/physics/drive_recess.h"
#include "sim/physics/hand_strength.h"
#include "sim/physics/instrument.h"
#include "sim/physics/lockring.h"
#include "sim/physics/thread_start.h"
#include "sim/physics/torque_tool.h"
#include "sim/physics/wear_profile.h"
#include "tests/support/catch.h"

using namespace proofstand;
using namespace proofstand::physics;

namespace {

double between(int low, int high) { return static_cast<double>(*rc::gen::inRange(low, high)); }

}  // namespace

TEST_CASE("a tool never leaves its class, whatever is drawn") {
  CHECK(rc::check("class", [] {
    const double class_1 = 0.01 * between(0, 11);
    const ToolError error = tool_error(class_1, 0.1 * between(-60, 60), 0.1 * between(-60, 60));
    RC_ASSERT(std::fabs(error.factor_1() - 1.0) <= class_1 + 1e-12);
  }));
  CHECK(within_range(5.0, 2.0, 10.0));
  CHECK_FALSE(within_range(5.0, 10.0, 60.0));
  CHECK_FALSE(within_range(11.0, 2.0, 10.0));
  CHECK(torque_with_extension_nm(5.0, 0.2, 0.03, base::kPi / 2.0) == Approx(5.0));
  CHECK(axis_torque_nm(5.0, base::radians(60.0)) == Approx(2.5));
  CHECK(over_pull_nm(0.02, 0.05, 30.0) == 0.0);
}

TEST_CASE("a stronger hand does more in every grip; the middle of the table is its median") {
  for (int i = 0; i < kHandEffortCount; ++i) {
    const HandEffort effort = static_cast<HandEffort>(i);
    const EffortRow row = effort_row(effort);
    CHECK(effort_at_si(effort, 0.5) == Approx(row.middle_si));
    CHECK(effort_at_si(effort, 0.05) == Approx(row.low_si).epsilon(2e-3));
    CHECK(effort_at_si(effort, 0.95) == Approx(row.high_si).epsilon(2e-3));
    double before_si = 0.0;
    for (double share_1 = 0.02; share_1 < 0.99; share_1 += 0.01) {
      CHECK(effort_at_si(effort, share_1) > before_si);
      before_si = effort_at_si(effort, share_1);
    }
  }
  // Handbook of Mathematical Functions, table 26.5
  CHECK(normal_quantile_1(0.975) == Approx(1.95996).margin(5e-4));
  CHECK(normal_quantile_1(0.05) == Approx(-1.64485).margin(5e-4));
  CHECK(force_error_n(100.0) == Approx(3.3));
}

TEST_CASE("a straight driver falls short of 5 N·m for half of all hands, a cross handle does not") {
  CHECK(effort_at_si(HandEffort::DriverTwist, 0.5) < 5.0);
  CHECK(effort_at_si(HandEffort::CrossHandleTwist, 0.5) > 5.4);
  CHECK(effort_at_si(HandEffort::FingerTwist, 0.5) < 0.9);  // no fingers turn a patch bolt home
}

TEST_CASE("a recess carries less with every fault of the tool in it, never less than nothing") {
  CHECK(rc::check("ordered", [] {
    DriveFit fit;
    fit.tool = static_cast<DriveTool>(*rc::gen::inRange(0, 5));
    fit.depth_m = 1e-5 * between(0, 153);
    fit.tilt_rad = base::radians(between(0, 30));
    fit.recess_wear_m = 1e-5 * between(0, 80);
    fit.debris_m = 1e-5 * between(0, 60);
    const double capacity_nm = drive_capacity_nm(fit);
    RC_ASSERT(capacity_nm >= 0.0);
    DriveFit worse = fit;
    worse.tilt_rad += base::radians(1.0);
    RC_ASSERT(drive_capacity_nm(worse) <= capacity_nm);
    worse = fit;
    worse.recess_wear_m += 1e-5;
    RC_ASSERT(drive_capacity_nm(worse) <= capacity_nm);
    worse = fit;
    worse.depth_m -= 1e-5;
    RC_ASSERT(drive_capacity_nm(worse) <= capacity_nm);
  }));
  DriveFit right;
  for (const DriveTool tool :
       {DriveTool::Hexalobular20, DriveTool::Hexagon3_0, DriveTool::Hexagon3_2, DriveTool::FlatBlade}) {
    DriveFit wrong = right;
    wrong.tool = tool;
    CHECK(drive_capacity_nm(wrong) < 0.6 * drive_capacity_nm(right));
    CHECK(drive_play_rad(tool) > drive_play_rad(DriveTool::Hexalobular25));
    CHECK(deepest_fit_m(tool, 0.0015) <= 0.0015);
  }
  CHECK(hexagon_enters(0.0032));
  CHECK_FALSE(hexagon_enters(0.0033));
  CHECK_FALSE(hexagon_enters(0.0040));
  CHECK(push_out_n(5.0, 0.0019, base::radians(3.0), base::radians(1.0), 0.12) == 0.0);
  CHECK(push_out_n(5.0, 0.0019, base::radians(15.0), base::radians(1.0), 0.12) > 300.0);
  CHECK(recess_wear_added_m(9.0, 8.8) == 0.0002);
  CHECK(recess_wear_added_m(8.0, 8.8) == 0.00005);
  CHECK(recess_wear_added_m(5.0, 8.8) == 0.0);
}

TEST_CASE("upright starts never cross, more tilt never helps, and turning back does") {
  CHECK(rc::check("starts", [] {
    StartAttempt start;
    start.tilt_rad = base::radians(0.1 * between(0, 90));
    start.phase_1 = 0.001 * between(0, 1000);
    start.offset_m = 1e-6 * between(0, 300);
    StartAttempt back = start;
    back.turned_back = true;
    if (start_crosses(back, 0.0008, 0.00448)) {
      StartAttempt other = start;
      other.phase_1 = 0.999;
      RC_ASSERT(start_crosses(other, 0.0008, 0.00448));
    }
    StartAttempt more = start;
    more.tilt_rad += base::radians(0.5);
    if (start_crosses(start, 0.0008, 0.00448)) RC_ASSERT(start_crosses(more, 0.0008, 0.00448));
    start.tilt_rad = 0.0;
    start.offset_m = 0.0;
    RC_ASSERT(!start_crosses(start, 0.0008, 0.00448));
  }));
  CHECK(start_drop_m(0.0008) == Approx(0.00032));
  CHECK(turn_back_to_drop_rad(0.25) == Approx(base::kPi / 2.0));
}

TEST_CASE("a worn rotor keeps its lip: what rests on it reads new, what stands inside reads the wear") {
  CHECK(rc::check("profile", [] {
    const double worn_m = 1e-5 * between(0, 60);
    const WearProfile profile = make_wear_profile(0.160, 0.0018, worn_m);
    const double radius_m = 0.060 + 1e-5 * between(0, 2000);
    const double here_m = thickness_at_m(profile, radius_m);
    RC_ASSERT(here_m <= 0.0018 + 1e-15);
    RC_ASSERT(here_m >= 0.0018 - worn_m - 1e-15);
    RC_ASSERT(thickness_under_m(profile, radius_m - 0.001, radius_m + 0.001) >= thinnest_m(profile) - 1e-15);
  }));
  // closed form: a quarter into the edge a smooth step has run 5/32
  CHECK(thickness_at_m(make_wear_profile(0.160, 0.0018, 0.0003), 0.078875) == Approx(0.0018 - 0.0003 * 5.0 / 32.0));
  const WearProfile worn = make_wear_profile(0.180, 0.0018, 0.0004);
  CHECK(thinnest_m(worn) == Approx(0.0014));
  CHECK(jaw_reads_m(worn, JawKind::Anvil, 0.082, 0.00635, 0.090) == Approx(0.0014));
  CHECK(jaw_reads_m(worn, JawKind::Anvil, 0.089, 0.00635, 0.090) == Approx(0.0018));
  CHECK(jaw_reads_m(worn, JawKind::Blade, 0.082, 0.0, 0.090) == Approx(0.0018));
  CHECK(nominal_diameter_m(0.1598) == 0.160);
  CHECK(nominal_diameter_m(0.2024) == 0.203);
  CHECK(nominal_diameter_m(0.150) == 0.0);
}

TEST_CASE("scales show what the instrument holds") {
  CHECK(rc::check("scales", [] {
    const double value_m = 1e-5 * between(0, 2500);
    const MicrometerScale screw = micrometer_scale(value_m);
    RC_ASSERT(std::fabs(screw.sleeve_m + screw.thimble_1 * 1e-5 - value_m) < 1e-9);
    RC_ASSERT(screw.thimble_1 > -0.01);
    RC_ASSERT(screw.thimble_1 < 50.0);
    for (const double step_m : {1e-4, 5e-5, 2e-5}) {
      const double shown = quantise_m(value_m, step_m);
      const VernierScale vernier = vernier_scale(shown, step_m);
      RC_ASSERT(std::fabs(vernier.main_m + vernier.line * step_m - shown) < 1e-9);
      RC_ASSERT(vernier.line >= 0);
      RC_ASSERT(std::fabs(shown - value_m) <= step_m / 2.0 + 1e-9);
    }
    const double hand_rad = dial_hand_rad(value_m);
    RC_ASSERT(hand_rad >= 0.0 && hand_rad < base::kTwoPi);
  }));
  CHECK(shown_m(0.00178, 0.00001, 0.0, 0.00001) == Approx(0.00179));
  CHECK(squeeze_error_m(1.0) <= 0.00003);
}

TEST_CASE(
    "the table of sizes stands in the order of its names, each with a standing and a source where one is published") {
  for (std::size_t i = 0; i < kSizeCount; ++i) {
    const SizeRow& row = kSizes[i];
    INFO(std::string(row.name));
    CHECK(static_cast<std::size_t>(row.size) == i);
    CHECK(row.value_si > 0.0);
    CHECK_FALSE(row.name.empty());
    if (row.standing == Standing::Published) CHECK_FALSE(row.source.empty());
  }
  const TrackRadii radii = track_radii(0.160);
  CHECK(radii.inner_m == Approx(0.065));
  CHECK(radii.middle_m == Approx(0.072));
  CHECK(radii.lining_inner_m == Approx(0.0655));
  CHECK(radii.lining_outer_m == Approx(0.079));
  // closed form: a deeper tool is pushed out less
  RingTool deep;
  RingTool shallow = deep;
  shallow.depth_m = 0.002;
  CHECK(ring_push_out_n(deep, 40.0, 0.12) <= ring_push_out_n(shallow, 40.0, 0.12));
}

// Danger: torque is what the trainee feels, preload is what holds the brake; a slip between the two fools both.
#include <rapidcheck.h>

#include <cmath>

#include "sim/physics/bolt_strength.h"
#include "sim/physics/friction_condition.h"
#include "sim/physics/preload.h"
#include "sim/physics/prevailing.h"
#include "sim/physics/thread_shear.h"
#include "tests/support/catch.h"

using namespace proofstand;
using namespace proofstand::physics;

namespace {

const ThreadGeometry kM5 = compute_thread(0.005, 0.0008);

double between(int low, int high) { return static_cast<double>(*rc::gen::inRange(low, high)); }

TorqueLevers levers(double thread_1, double head_1) { return torque_levers(kM5, 0.0071, {thread_1, head_1}); }

}  // namespace

TEST_CASE("without friction torque is preload times pitch over two pi") {
  const TorqueLevers l = levers(0.0, 0.0);
  CHECK(torque_from_preload_nm(1000.0, l) == Approx(1000.0 * 0.0008 / 6.283185307179586));
  CHECK(loosening_torque_nm(1000.0, l) == 0.0);  // it would run off by itself
}

TEST_CASE("long form and short form say the same") {
  const TorqueLevers l = levers(0.17, 0.12);
  CHECK(short_form_preload_n(5.0, nut_factor_1(l, 0.005), 0.005) == Approx(preload_from_torque_n(5.0, l)));
}

TEST_CASE("preload grows with torque, falls with friction and with drag, and loosens for less") {
  CHECK(rc::check("monotone", [] {
    const double torque_nm = 0.1 * between(0, 120);
    const double friction_1 = 0.06 + 0.01 * between(0, 30);
    const double drag_nm = 0.1 * between(0, 20);
    const TorqueLevers l = levers(friction_1, friction_1);
    const double force_n = preload_from_torque_n(torque_nm, l, drag_nm);
    RC_ASSERT(force_n >= 0.0);
    RC_ASSERT(preload_from_torque_n(torque_nm + 0.1, l, drag_nm) >= force_n);
    RC_ASSERT(preload_from_torque_n(torque_nm, levers(friction_1 + 0.01, friction_1), drag_nm) <= force_n);
    RC_ASSERT(preload_from_torque_n(torque_nm, l, drag_nm + 0.1) <= force_n);
    RC_ASSERT(loosening_torque_nm(force_n, l) <= torque_from_preload_nm(force_n, l));
  }));
}

TEST_CASE("grease clamps a quarter harder than dry at the same torque") {
  const FrictionRow dry = friction_row(ThreadCondition::Dry);
  const FrictionRow grease = friction_row(ThreadCondition::Greased);
  const double dry_n = preload_from_torque_n(5.0, levers(dry.thread_1, dry.head_1));
  CHECK(preload_from_torque_n(5.0, levers(grease.thread_1, grease.head_1)) > 1.25 * dry_n);
}

TEST_CASE("sampled friction stays in its range, rises with its draw and has its mode in the middle") {
  for (int i = 0; i < kThreadConditionCount; ++i) {
    const ThreadCondition condition = static_cast<ThreadCondition>(i);
    const FrictionRow row = friction_row(condition);
    INFO(std::string(condition_words(condition)));
    CHECK(sample_friction(condition, 0.0).thread_1 == Approx(row.thread_1));
    CHECK_FALSE(row.standing.empty());
    double before_1 = 0.0;
    for (double z = -2.5; z <= 2.5; z += 0.25) {
      const BoltFriction f = sample_friction(condition, z);
      CHECK(f.thread_1 >= before_1);
      CHECK(f.thread_1 >= row.thread_low_1);
      CHECK(f.thread_1 <= row.thread_high_1);
      CHECK(f.head_1 >= row.head_low_1);
      CHECK(f.head_1 <= row.head_high_1);
      before_1 = f.thread_1;
    }
  }
  const BoltFriction half = mixed_friction({0.2, 0.2}, {0.1, 0.12}, 0.5);
  CHECK(half.thread_1 == Approx(0.15));
  CHECK(half.head_1 == Approx(0.16));
}

TEST_CASE("head friction does not twist the core, thread friction does") {
  const BoltStress plain = bolt_stress(5000.0, kM5, levers(0.14, 0.10), Torsion::Plastic);
  CHECK(bolt_stress(5000.0, kM5, levers(0.14, 0.30), Torsion::Plastic).combined_pa == plain.combined_pa);
  CHECK(bolt_stress(5000.0, kM5, levers(0.20, 0.10), Torsion::Plastic).combined_pa > plain.combined_pa);
  CHECK(yield_preload_n(640e6, kM5, levers(0.0, 0.0)) < 640e6 * kM5.stress_area_m2);
}

TEST_CASE("limits of other sizes come near the standard's tables") {
  // ISO 965-2, M8x1.25 and M10x1.5 (from memory), 0.01 mm
  const ThreadLimits m8 = thread_limits(0.008, 0.00125);
  CHECK(m8.internal_pitch_max_m == Approx(0.007348).margin(1.2e-5));
  CHECK(m8.external_major_min_m == Approx(0.007760).margin(1.2e-5));
  const ThreadLimits m10 = thread_limits(0.010, 0.0015);
  CHECK(m10.internal_minor_max_m == Approx(0.008676).margin(1.2e-5));
  CHECK(m10.external_pitch_min_m == Approx(0.008862).margin(1.2e-5));
  CHECK(flank_play_m(thread_limits(0.005, 0.0008)) == Approx(0.000122).margin(1e-6));
}

TEST_CASE("engaged length counts what bears and no more than the hole has") {
  CHECK(engaged_length_m(0.010, 0.0018, 0.0008, 0.010, 0.0) == Approx(0.0074));
  CHECK(engaged_length_m(0.016, 0.0018, 0.0008, 0.010, 0.0005) == Approx(0.00975));
  CHECK(engaged_length_m(0.002, 0.0018, 0.0008, 0.010, 0.0) == 0.0);
  ThreadHistory worn;
  worn.refits = 2;
  worn.crossed_deep = true;
  CHECK(thread_strength_left_1(worn) == Approx(0.98 * 0.98 * 0.5));
  CHECK(thread_strength_left_1({}) == 1.0);
}

TEST_CASE("a patch wears with every use, a locker only gains with time") {
  double before_nm = 10.0;
  for (int uses = 0; uses < 10; ++uses) {
    const double drag_nm = patch_drag_nm(kPatchIn_nm, uses);
    CHECK(drag_nm < before_nm);
    before_nm = drag_nm;
  }
  CHECK(patch_drag_nm(kPatchOut_nm, 10) < kPatchSpent_nm);
  CHECK(locker_cured_1(0.0) == 0.0);
  double cured_1 = 0.0;
  for (double hours = 1.0; hours < 48.0; hours += 1.0) {
    CHECK(locker_cured_1(hours * 3600.0) > cured_1);
    cured_1 = locker_cured_1(hours * 3600.0);
  }
  CHECK(cured_1 < 1.0);
  CHECK(old_locker_drag_nm(0.4, 4.0) < 0.06);
  CHECK(old_locker_drag_nm(0.4, 0.0) == 0.4);
  CHECK(locker_wetted_1(20e-9, kM5, 0.008, 0.0001) == 1.0);
  CHECK(locker_wetted_1(5e-9, kM5, 0.008, 0.0001) == Approx(0.444).margin(0.001));
  CHECK(wet_locker_drag_nm(1.0) < 0.2);
}

// Danger: a bolt that gains clamp from nothing, or forgets that it was stretched, marks good work bad and bad work
// good.
#include <rapidcheck.h>

#include <cmath>

#include "sim/base/math.h"
#include "sim/physics/bolt_curve.h"
#include "sim/physics/thread_shear.h"
#include "tests/support/catch.h"

using namespace proofstand;
using namespace proofstand::physics;

namespace {

const ThreadGeometry kM5 = compute_thread(0.005, 0.0008);
constexpr double kDrag_nm = 0.03;

BoltCurve joint(double friction_1 = 0.14, BoltClass grade = BoltClass::Steel8_8, double strip_n = 14000.0) {
  return make_curve(kM5, bolt_material(grade), {friction_1, friction_1}, 0.0071, 0.0018, strip_n);
}

double between(int low, int high) { return static_cast<double>(*rc::gen::inRange(low, high)); }

}  // namespace

TEST_CASE("without settling and gap the curve is the straight line of the elastic joint") {
  BoltCurve c = joint();
  c.settle_m = 0.0;
  for (const double force_n : {0.0, 100.0, 3000.0, 6285.0}) {
    CHECK(advance_for_preload_m(c, force_n) == Approx(force_n * c.compliance_m_n).margin(1e-15));
  }
  // 6285 N after 7.83 degrees: the closed form of the hard joint
  const BoltCurveStep step = turn_bolt(c, {}, base::radians(7.8343), 0.0);
  CHECK(step.state.preload_n == Approx(6285.0).epsilon(2e-3));
  CHECK(step.torque_nm == Approx(6.2).epsilon(2e-3));
}

TEST_CASE("advance and preload are inverse of each other, gap or not, beyond yield too") {
  CHECK(rc::check("inverse", [] {
    BoltCurve c = joint(0.08 + 0.01 * between(0, 20));
    c.gap_m = 1e-6 * between(0, 300);
    const double force_n = between(0, 9500);
    const double back_n = preload_for_advance_n(c, advance_for_preload_m(c, force_n));
    RC_ASSERT(std::fabs(back_n - force_n) <= 1e-6 + 1e-7 * force_n);
  }));
}

TEST_CASE("real joints need 15 to 30 degrees more than the elastic turn") {
  const BoltCurve c = joint();
  const double more_deg =
      base::degrees(base::kTwoPi * (advance_for_preload_m(c, 5068.0) - 5068.0 * c.compliance_m_n) / c.pitch_m);
  CHECK(more_deg > 15.0);
  CHECK(more_deg < 30.0);
}

TEST_CASE("preload never falls while a sound bolt is turned in") {
  CHECK(rc::check("monotone", [] {
    BoltCurve c = joint(0.08 + 0.01 * between(0, 20), BoltClass::StainlessA2_70, 1e9);
    c.break_stretch_m = 1.0;
    c.gap_m = 1e-6 * between(0, 100);
    BoltCurveState s;
    double torque_nm = 0.0;
    for (int i = 0; i < 60; ++i) {
      const BoltCurveStep step = turn_bolt(c, s, base::radians(0.1 * between(0, 40)), kDrag_nm);
      RC_ASSERT(step.state.preload_n >= s.preload_n);
      RC_ASSERT(step.torque_nm >= torque_nm);
      RC_ASSERT(step.state.stretch_m >= s.stretch_m);
      s = step.state;
      torque_nm = step.torque_nm;
    }
  }));
}

TEST_CASE("one large turn and many small ones come to the same") {
  const BoltCurve c = joint();
  const BoltCurveStep once = turn_bolt(c, {}, base::radians(40.0), kDrag_nm);
  BoltCurveState s;
  for (int i = 0; i < 400; ++i) s = turn_bolt(c, s, base::radians(0.1), kDrag_nm).state;
  CHECK(s.preload_n == Approx(once.state.preload_n).epsilon(1e-9));
  CHECK(s.stretch_m == Approx(once.state.stretch_m).margin(1e-12));
}

TEST_CASE("turned back it unloads elastically and comes back to the same force, not to more") {
  const BoltCurve c = joint();
  const BoltCurveState tight = turn_bolt_to_torque(c, {}, 5.0, 10.0, kDrag_nm).state;
  const BoltCurveState eased = turn_bolt(c, tight, base::radians(-3.0), kDrag_nm).state;
  CHECK(eased.preload_n < tight.preload_n);
  const BoltCurveState again = turn_bolt(c, eased, base::radians(3.0), kDrag_nm).state;
  CHECK(again.preload_n == Approx(tight.preload_n));
  const BoltCurveState loose = turn_bolt(c, tight, base::radians(-90.0), kDrag_nm).state;
  CHECK(loose.preload_n == 0.0);
  CHECK(turn_bolt(c, loose, base::radians(-90.0), kDrag_nm).torque_nm == Approx(kDrag_nm));
}

TEST_CASE("a hand of limited torque stops where the torque is reached, a short arm earlier") {
  const BoltCurve c = joint();
  const BoltCurveStep step = turn_bolt_to_torque(c, {}, 5.0, 10.0, 0.9);
  CHECK(step.torque_nm == Approx(5.0));
  CHECK(step.state.preload_n == Approx(preload_from_torque_n(5.0, c.levers, 0.9)));
  const BoltCurveStep limited = turn_bolt_to_torque(c, {}, 5.0, 0.01, 0.9);
  CHECK(limited.turned_rad == 0.01);
  CHECK(limited.torque_nm < 5.0);
  const BoltCurveStep none = turn_bolt_to_torque(c, step.state, 4.0, 1.0, 0.9);
  CHECK(none.turned_rad == 0.0);
}

TEST_CASE("beyond yield it stretches for good; under the load that yields it does not") {
  const BoltCurve c = joint(0.14, BoltClass::StainlessA2_70);
  // closed form: A2-70 yields at 5.40 N·m with friction 0.14
  CHECK(turn_bolt_to_torque(c, {}, 5.3, 10.0, 0.0).state.stretch_m == 0.0);
  const BoltCurveState pulled = turn_bolt_to_torque(c, {}, 5.6, 10.0, 0.0).state;
  CHECK(pulled.stretch_m > 0.0);
  const BoltCurveState off = turn_bolt(c, pulled, -1.0, 0.0).state;
  CHECK(off.stretch_m == pulled.stretch_m);
}

TEST_CASE("it breaks after half a turn and more beyond yield, at no more than its strength allows") {
  BoltCurve c = joint(0.11);
  c.strip_n = 1e9;
  BoltCurveState s;
  double turned_rad = 0.0;
  double most_n = 0.0;
  while (!s.broken && turned_rad < 30.0) {
    s = turn_bolt(c, s, base::radians(1.0), 0.0).state;
    turned_rad += base::radians(1.0);
    if (s.preload_n > most_n) most_n = s.preload_n;
  }
  CHECK(s.broken);
  CHECK(s.preload_n == 0.0);
  CHECK(turned_rad > base::kPi);
  CHECK(turned_rad < 2.0 * base::kTwoPi);
  CHECK(most_n <= ultimate_load_m5_n(BoltClass::Steel8_8));
  CHECK(most_n > c.yield_n);
  CHECK(turn_bolt(c, s, 1.0, kDrag_nm).torque_nm == kDrag_nm);
}

TEST_CASE("a hub thread that strips lets the torque fall while it turns and keeps under a tenth") {
  const ThreadLimits limits = thread_limits(0.005, 0.0008);
  const double strip_n =
      strip_load_n(thread_shear_strength_pa(kHubTensile_pa), internal_shear_area_m2(limits, 0.0008, 0.002));
  const BoltCurve c = joint(0.14, BoltClass::Steel12_9, strip_n);
  const BoltCurveStep before = turn_bolt_to_torque(c, {}, 3.0, 10.0, 0.0);
  CHECK_FALSE(before.state.stripped);
  const BoltCurveStep step = turn_bolt_to_torque(c, before.state, 9.0, base::radians(60.0), 0.0);
  CHECK(step.state.stripped);
  CHECK(step.stripped_now);
  CHECK(step.torque_nm < 3.0);
  const BoltCurveState on = turn_bolt(c, step.state, base::kTwoPi, 0.0).state;
  CHECK(on.preload_n < 0.1 * strip_n);
  CHECK(turn_bolt(c, on, -base::kTwoPi, 0.0).state.preload_n == 0.0);
}

TEST_CASE("a bolt that meets the bottom reaches its torque with its end, not with its head") {
  BoltCurve c = joint();
  c.bottoms = true;
  const BoltCurveStep step = turn_bolt_to_torque(c, {}, 5.0, 10.0, 0.0);
  CHECK(step.torque_nm == Approx(5.0));
  // less friction radius at the end than under the head: more axial force for the same torque
  CHECK(step.state.preload_n > preload_from_torque_n(5.0, c.levers));
}

TEST_CASE("a gap at the boss takes turns before the force rises, and its force is not lost") {
  BoltCurve c = joint();
  c.gap_m = 0.00005;
  const BoltCurve flat = joint();
  CHECK(advance_for_preload_m(c, 2000.0) > advance_for_preload_m(flat, 2000.0) + 0.00003);
  const BoltCurveState s = turn_bolt(c, {}, base::kTwoPi * 0.00005 / c.pitch_m, 0.0).state;
  CHECK(s.preload_n == Approx(350.0).epsilon(0.05));  // 0.05 mm at 7 kN/mm
}

TEST_CASE("settling takes embedding over compliance, never below nothing, and a second pull gives it back") {
  const BoltCurve c = joint();
  const BoltCurveState tight = turn_bolt_to_torque(c, {}, 5.0, 10.0, 0.0).state;
  const BoltCurveState settled = settle_bolt(c, tight, 1e-6);
  CHECK(tight.preload_n - settled.preload_n == Approx(1e-6 / kJointCompliance_m_n));
  CHECK(settle_bolt(c, tight, 1.0).preload_n == 0.0);
  CHECK(turn_bolt_to_torque(c, settled, 5.0, 10.0, 0.0).state.preload_n == Approx(tight.preload_n));
}

#include "sim/physics/bolt_curve.h"

#include "sim/base/assert.h"
#include "sim/base/math.h"

namespace proofstand::physics {
namespace {

double smaller(double a, double b) { return a < b ? a : b; }
double larger(double a, double b) { return a > b ? a : b; }

double per_newton_in_m(const BoltCurve& c) {
  return c.levers.pitch_m + c.levers.thread_m + (c.bottoms ? c.tip_lever_m : c.levers.head_m);
}
double per_newton_out_m(const BoltCurve& c) {
  return c.levers.thread_m + (c.bottoms ? c.tip_lever_m : c.levers.head_m) - c.levers.pitch_m;
}
// a bolt that stands on the bottom of its hole bends no rotor down
double gap_force_n(const BoltCurve& c) { return c.bottoms ? 0.0 : c.gap_stiffness_n_m * c.gap_m; }

// below yield: first the gap as a spring, then surfaces flattening as a hyperbola beside the elastic joint
double elastic_advance_m(const BoltCurve& c, double preload_n) {
  const double gap_n = gap_force_n(c);
  if (preload_n <= gap_n) return preload_n * (1.0 / c.gap_stiffness_n_m + c.compliance_m_n);
  const double rest_n = preload_n - gap_n;
  const double closed_m = gap_n * (1.0 / c.gap_stiffness_n_m + c.compliance_m_n);
  return closed_m + rest_n * c.compliance_m_n + c.settle_m * rest_n / (rest_n + c.settle_half_n);
}

double elastic_preload_n(const BoltCurve& c, double advance_m) {
  const double soft_m_n = 1.0 / c.gap_stiffness_n_m + c.compliance_m_n;
  const double gap_n = gap_force_n(c);
  const double closed_m = gap_n * soft_m_n;
  if (advance_m <= closed_m) return advance_m / soft_m_n;
  const double way_m = advance_m - closed_m;
  const double b_m = c.compliance_m_n * c.settle_half_n + c.settle_m - way_m;
  const double root_m = base::sqrt_1(b_m * b_m + 4.0 * c.compliance_m_n * way_m * c.settle_half_n);
  // the form without cancellation for either sign of b
  const double rest_n =
      b_m > 0.0 ? 2.0 * way_m * c.settle_half_n / (b_m + root_m) : (root_m - b_m) / (2.0 * c.compliance_m_n);
  return gap_n + rest_n;
}

// a stripped thread keeps a little force that dies down to a rest as it is turned on
void turn_stripped(const BoltCurve& c, BoltCurveState& s, double advance_m) {
  const double rest_n = kStrippedRest_1 * c.strip_n;
  if (advance_m > 0.0 && s.preload_n > rest_n) {
    s.preload_n = rest_n + (s.preload_n - rest_n) * base::exp_1(-advance_m / (c.pitch_m / 8.0));
  } else if (advance_m > 0.0) {
    s.preload_n = smaller(rest_n, s.preload_n + advance_m / c.compliance_m_n);
  } else {
    s.preload_n = larger(0.0, s.preload_n + advance_m / c.compliance_m_n);
  }
}

// on along the first-loading curve from the peak; returns nothing of the way unused unless the thread strips
double load_fresh(const BoltCurve& c, BoltCurveState& s, double way_m) {
  const double from_m = advance_for_preload_m(c, s.preload_n);
  const double strip_at_m = advance_for_preload_m(c, c.strip_n);
  const double to_m = smaller(from_m + way_m, strip_at_m);
  const double yield_at_m = elastic_advance_m(c, c.yield_n);
  const double before_n = s.preload_n;
  s.preload_n = larger(s.preload_n, preload_for_advance_n(c, to_m));
  s.peak_n = larger(s.peak_n, s.preload_n);
  const double beyond_m = to_m - larger(from_m, yield_at_m);
  if (beyond_m > 0.0) {
    const double elastic_m = (s.preload_n - larger(before_n, c.yield_n)) * c.compliance_m_n;
    s.stretch_m += larger(0.0, beyond_m - elastic_m);
  }
  if (from_m + way_m < strip_at_m) return 0.0;
  s.stripped = true;
  return from_m + way_m - to_m;
}

}  // namespace

BoltCurve make_curve(const ThreadGeometry& thread, const BoltMaterial& material, const BoltFriction& friction,
                     double bearing_m, double grip_m, double strip_load_n) {
  STAND_ASSERT(strip_load_n >= 0.0 && grip_m >= 0.0);
  BoltCurve c;
  c.pitch_m = thread.pitch_m;
  c.levers = torque_levers(thread, bearing_m, friction);
  c.yield_n = yield_preload_n(material.yield_pa, thread, c.levers);
  c.break_stretch_m = material.elongation_1 * free_length_m(grip_m, thread.pitch_m);
  const double rise_n = break_preload_n(material.tensile_pa, thread) - c.yield_n;
  c.plastic_n_m =
      base::clamp_1(rise_n / c.break_stretch_m, 1e-4 / c.compliance_m_n, kPlasticSlope_1 / c.compliance_m_n);
  c.strip_n = strip_load_n;
  // a flat end on a flat bottom: friction over two thirds of its radius
  c.tip_lever_m = friction.head_1 * thread.minor_external_m / 3.0;
  return c;
}

double advance_for_preload_m(const BoltCurve& curve, double preload_n) {
  if (preload_n <= 0.0) return 0.0;
  if (preload_n <= curve.yield_n) return elastic_advance_m(curve, preload_n);
  return elastic_advance_m(curve, curve.yield_n) + (preload_n - curve.yield_n) / curve.plastic_n_m;
}

double preload_for_advance_n(const BoltCurve& curve, double advance_m) {
  if (advance_m <= 0.0) return 0.0;
  const double yield_at_m = elastic_advance_m(curve, curve.yield_n);
  if (advance_m <= yield_at_m) return elastic_preload_n(curve, advance_m);
  return curve.yield_n + (advance_m - yield_at_m) * curve.plastic_n_m;
}

double torque_in_nm(const BoltCurve& curve, const BoltCurveState& state, double prevailing_nm) {
  return state.preload_n * per_newton_in_m(curve) + prevailing_nm;
}

double torque_out_nm(const BoltCurve& curve, const BoltCurveState& state, double prevailing_nm) {
  return larger(0.0, state.preload_n * per_newton_out_m(curve) + prevailing_nm);
}

BoltCurveStep turn_bolt(const BoltCurve& curve, const BoltCurveState& state, double turn_rad, double prevailing_nm) {
  BoltCurveStep step;
  step.state = state;
  step.turned_rad = turn_rad;
  BoltCurveState& s = step.state;
  if (s.broken) {
    s.preload_n = 0.0;
    step.torque_nm = prevailing_nm;
    return step;
  }
  double way_m = turn_rad / base::kTwoPi * curve.pitch_m;
  if (way_m < 0.0) {
    if (s.stripped) {
      turn_stripped(curve, s, way_m);
    } else {
      s.preload_n = larger(0.0, s.preload_n + way_m / curve.compliance_m_n);
    }
    step.torque_nm = torque_out_nm(curve, s, prevailing_nm);
    return step;
  }
  if (!s.stripped && s.preload_n < s.peak_n) {  // back up the elastic way
    const double room_m = (s.peak_n - s.preload_n) * curve.compliance_m_n;
    const double used_m = smaller(way_m, room_m);
    s.preload_n = used_m < room_m ? s.preload_n + used_m / curve.compliance_m_n : s.peak_n;
    way_m -= used_m;
  }
  if (!s.stripped && way_m > 0.0) {
    way_m = load_fresh(curve, s, way_m);
    step.stripped_now = s.stripped;
  }
  if (s.stripped && way_m > 0.0) turn_stripped(curve, s, way_m);
  if (s.stretch_m >= curve.break_stretch_m) {
    s.broken = true;
    s.preload_n = 0.0;
    step.broke_now = true;
  }
  step.torque_nm = torque_in_nm(curve, s, prevailing_nm);
  return step;
}

BoltCurveStep turn_bolt_to_torque(const BoltCurve& curve, const BoltCurveState& state, double torque_nm,
                                  double limit_rad, double prevailing_nm) {
  const double now_nm = torque_in_nm(curve, state, prevailing_nm);
  if (torque_nm <= now_nm || limit_rad <= 0.0) {
    BoltCurveStep still;
    still.state = state;
    still.torque_nm = now_nm;
    return still;
  }
  const double aim_n = (torque_nm - prevailing_nm) / per_newton_in_m(curve);
  // nothing holds a stripped or broken bolt, nor one that strips on the way
  if (state.stripped || state.broken || aim_n >= curve.strip_n) {
    return turn_bolt(curve, state, limit_rad, prevailing_nm);
  }
  double way_m = 0.0;
  if (aim_n <= state.peak_n) {
    way_m = (aim_n - state.preload_n) * curve.compliance_m_n;
  } else {
    const double top_n = larger(state.peak_n, state.preload_n);
    way_m = (top_n - state.preload_n) * curve.compliance_m_n + advance_for_preload_m(curve, aim_n) -
            advance_for_preload_m(curve, top_n);
  }
  return turn_bolt(curve, state, smaller(limit_rad, way_m / curve.pitch_m * base::kTwoPi), prevailing_nm);
}

double elastic_turn_rad(double preload_n, double compliance_m_n, double pitch_m) {
  STAND_ASSERT(pitch_m > 0.0);
  return base::kTwoPi * preload_n * compliance_m_n / pitch_m;
}

BoltCurveState settle_bolt(const BoltCurve& curve, const BoltCurveState& state, double embed_m) {
  BoltCurveState s = state;
  s.preload_n = larger(0.0, s.preload_n - embed_m / curve.compliance_m_n);
  return s;
}

}  // namespace proofstand::physics

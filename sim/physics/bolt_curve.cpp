#include "sim/physics/bolt_curve.h"

#include "sim/base/math.h"

namespace proofstand::physics {
namespace {

// force on the way up: x = δF + z F/(F + F0), solved for F
double force_on_first_pull_n(const BoltCurve& c, double x_m) {
  if (x_m <= 0.0) return 0.0;
  const double b = x_m - c.compliance_m_n * c.seat_force_n - c.seat_travel_m;
  const double root = base::sqrt_1(b * b + 4.0 * c.compliance_m_n * x_m * c.seat_force_n);
  return (b + root) / (2.0 * c.compliance_m_n);
}

double seat_spent_m(const BoltCurve& c, double force_n) {
  return c.seat_travel_m * force_n / (force_n + c.seat_force_n);
}

}  // namespace

BoltLoad load_at(const BoltCurve& c, const BoltLoad& before, double advance_m) {
  BoltLoad now = before;
  now.advance_m = advance_m;
  if (before.broken || advance_m <= 0.0) {
    now.preload_n = 0.0;
    return now;
  }
  const double x_m = advance_m - before.plastic_m;
  // along the elastic line with the seat as closed as it ever was, or closing it further
  double force_n = x_m > before.seated_m ? (x_m - before.seated_m) / c.compliance_m_n : 0.0;
  const double first_n = force_on_first_pull_n(c, x_m);
  if (first_n < force_n && seat_spent_m(c, first_n) > before.seated_m) {
    force_n = first_n;
    now.seated_m = seat_spent_m(c, first_n);
  }
  if (before.stripped) {
    now.preload_n = force_n < c.strip_n / 12.0 ? force_n : c.strip_n / 12.0;
    return now;
  }
  const double yield_now_n = c.yield_n + c.hardening_1 * before.plastic_m / c.compliance_m_n;
  if (force_n > yield_now_n) {
    // the part of the travel beyond yield goes into stretch but for the hardening's share
    const double beyond_m = (force_n - yield_now_n) * c.compliance_m_n;
    const double stretch_m = beyond_m / (1.0 + c.hardening_1);
    now.plastic_m += stretch_m;
    force_n = yield_now_n + c.hardening_1 * stretch_m / c.compliance_m_n;
  }
  if (now.plastic_m > c.break_stretch_m) {
    now.broken = true;
    force_n = 0.0;
  } else if (force_n > c.strip_n) {
    now.stripped = true;
    force_n = c.strip_n / 12.0;
  }
  now.preload_n = force_n;
  return now;
}

double turning_torque_nm(const BoltCurve& c, const BoltLoad& load) {
  return tightening_torque_nm(c.fastener, load.preload_n);
}

double advance_for_preload_m(const BoltCurve& c, const BoltLoad& from, double preload_n) {
  const double spent_m = seat_spent_m(c, preload_n);
  return from.plastic_m + c.compliance_m_n * preload_n + (spent_m > from.seated_m ? spent_m : from.seated_m);
}

double elastic_angle_rad(double preload_n, double compliance_m_n, double pitch_m) {
  return base::kTwoPi * preload_n * compliance_m_n / pitch_m;
}

}  // namespace proofstand::physics

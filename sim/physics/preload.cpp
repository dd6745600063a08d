#include "sim/physics/preload.h"

#include "sim/base/math.h"

namespace proofstand::physics {
namespace {

constexpr double kHalfOverCos30 = 0.5773502691896258;

double pitch_term_m(const Fastener& f) { return f.thread.pitch_m / base::kTwoPi; }
double thread_term_m(const Fastener& f) {
  return kHalfOverCos30 * thread_geometry(f.thread).pitch_diameter_m * f.friction.thread_1;
}
double head_term_m(const Fastener& f) { return 0.5 * f.friction.bearing_1 * f.bearing_diameter_m; }

}  // namespace

double bearing_diameter_m(Bearing bearing) { return 0.5 * (bearing.outer_m + bearing.hole_m); }

double bearing_diameter_uniform_m(Bearing bearing) {
  const double w = bearing.outer_m;
  const double h = bearing.hole_m;
  return (2.0 / 3.0) * (w * w * w - h * h * h) / (w * w - h * h);
}

double torque_per_newton_m(const Fastener& f) { return pitch_term_m(f) + thread_term_m(f) + head_term_m(f); }

double nut_factor_1(const Fastener& f) { return torque_per_newton_m(f) / f.thread.diameter_m; }

double preload_n(const Fastener& f, double torque_nm, double prevailing_nm) {
  const double left_nm = torque_nm - prevailing_nm;
  return left_nm > 0.0 ? left_nm / torque_per_newton_m(f) : 0.0;
}

double preload_from_nut_factor_n(double torque_nm, double nut_factor, double diameter_m) {
  return torque_nm / (nut_factor * diameter_m);
}

double tightening_torque_nm(const Fastener& f, double preload, double prevailing_nm) {
  return preload * torque_per_newton_m(f) + prevailing_nm;
}

double loosening_torque_nm(const Fastener& f, double preload, double lock_nm) {
  return preload * (thread_term_m(f) + head_term_m(f) - pitch_term_m(f)) + lock_nm;
}

double thread_torque_nm(const Fastener& f, double preload) { return preload * (pitch_term_m(f) + thread_term_m(f)); }

TorqueSplit torque_split(const Fastener& f) {
  const double whole = torque_per_newton_m(f);
  return {pitch_term_m(f) / whole, thread_term_m(f) / whole, head_term_m(f) / whole};
}

double handbook_torque_nm(double preload, double lead_m, double diameter_m, double friction_1) {
  return preload * (0.159 * lead_m + 1.156 * friction_1 * diameter_m);
}

}  // namespace proofstand::physics

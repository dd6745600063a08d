// Torque and preload of a bolt: long form with thread and head friction apart, short form, loosening, where it goes.
#pragma once

#include "sim/physics/thread_geometry.h"

namespace proofstand::physics {

/// Friction of one bolt while it turns: in its thread, and under its head.
struct BoltFriction {
  double thread_1 = 0.14;
  double head_1 = 0.14;
};

/// The lever arms of the long form: torque in N·m a newton of preload.
struct TorqueLevers {
  double pitch_m = 0.0;   ///< P/2 pi, what stretches the bolt
  double thread_m = 0.0;  ///< thread friction, mu d2/(2 cos 30)
  double head_m = 0.0;    ///< head friction, mu Db/2

  [[nodiscard]] double tighten_m() const { return pitch_m + thread_m + head_m; }
  [[nodiscard]] double loosen_m() const { return thread_m + head_m - pitch_m; }
};

/// Mean bearing diameter under a head, the simple mean of head and hole.
/// head_m, hole_m  [m] head > hole > 0
/// source          ISO 16047, VDI 2230 (from memory)
double bearing_diameter_m(double head_m, double hole_m);
/// The same for evenly spread pressure; about 2 % more. source: own derivation
double bearing_diameter_even_m(double head_m, double hole_m);

/// Levers of the long form T = F (P/2 pi + 0.577 d2 mu_th + mu_b Db/2).
/// bearing_m  [m] mean bearing diameter
/// friction   [1] 0..1 each
/// source     ISO 16047, VDI 2230; MIL-HDBK-60 Appendix B; NSTS 08307 Rev A 3.3
TorqueLevers torque_levers(const ThreadGeometry& thread, double bearing_m, const BoltFriction& friction);

/// Preload from the torque at the fastener; the prevailing torque is taken off first.
/// torque_nm      [N·m] >= 0
/// prevailing_nm  [N·m] >= 0, drag of patch, locker or dirt
/// returns        [N] >= 0
/// valid          below yield, thread free, tightened by hand in one direction
double preload_from_torque_n(double torque_nm, const TorqueLevers& levers, double prevailing_nm = 0.0);
/// Torque that reaches a preload. [N·m]
double torque_from_preload_nm(double preload_n, const TorqueLevers& levers, double prevailing_nm = 0.0);
/// Torque that turns it loose, break-loose of a lock included. [N·m], not below 0
/// source  mirror of the long form
double loosening_torque_nm(double preload_n, const TorqueLevers& levers, double lock_nm = 0.0);

/// The factor K of the short form T = K d F that says the same as the levers. [1]
double nut_factor_1(const TorqueLevers& levers, double diameter_m);
/// Short form T = K d F, either way. source: MIL-HDBK-60, NASA TM-106943
double short_form_preload_n(double torque_nm, double nut_factor_1, double diameter_m);
double short_form_torque_nm(double preload_n, double nut_factor_1, double diameter_m);
/// Handbook form with d2 as 0.92 d and the bearing at (1.5 d + d)/4: T = F (0.159 L + 1.156 mu d).
/// source  MIL-HDBK-60 100.5.2
double handbook_torque_nm(double preload_n, double lead_m, double diameter_m, double friction_1);

/// Preload of a requirement with scatter: c (1 + Gamma) F for the most; c (1 - Gamma/sqrt n) F for the least that n
/// bolts share (n = 1: separation); relaxation_1 taken off at the end.
/// source  NASA-STD-5020B 4.3, equations 3 to 5
double most_preload_n(double nominal_n, double torque_high_1, double scatter_1);
double least_preload_n(double nominal_n, double torque_low_1, double scatter_1, int sharing, double relaxation_1);

/// Root sum of squares of two independent relative uncertainties. [1]
/// source  ordinary propagation of uncertainty (JCGM 100)
double combined_uncertainty_1(double first_1, double second_1);

}  // namespace proofstand::physics

// From torque to preload and back, with thread and head friction apart; loosening; the short form beside it.
#pragma once

#include "sim/physics/thread_geometry.h"

namespace proofstand::physics {

/// Friction of one fastener.
struct Friction {
  double thread_1 = 0.14;
  double bearing_1 = 0.14;
};

/// Where the head bears.
struct Bearing {
  double outer_m = 0.009;  ///< bearing diameter of the head
  double hole_m = 0.0052;
};

/// Effective bearing diameter [m], simple mean (dw + dh)/2. source: ISO 16047, VDI 2230
double bearing_diameter_m(Bearing bearing);
/// The same for uniform pressure, (2/3)(dw³ − dh³)/(dw² − dh²). source: own derivation (from memory of handbooks)
double bearing_diameter_uniform_m(Bearing bearing);

/// A fastener as torque sees it.
struct Fastener {
  Thread thread;
  Friction friction;
  double bearing_diameter_m = 0.0071;
};

/// Torque per newton of preload [N·m/N] while tightening: P/2π + d2 µ/(2 cos 30°) + µ Db/2.
/// source: ISO 16047; VDI 2230; NSTS 08307 rev A 3.3
double torque_per_newton_m(const Fastener& fastener);
/// Nut factor K [1] = the above over d. source: T = K F d, the same standards
double nut_factor_1(const Fastener& fastener);
/// Preload [N] from the torque on the head [N·m] less prevailing torque; 0 when that is not overcome. valid: below
/// yield
double preload_n(const Fastener& fastener, double torque_nm, double prevailing_nm = 0.0);
/// Short form: F = T/(K d). source: textbook form, T = K F d
double preload_from_nut_factor_n(double torque_nm, double nut_factor, double diameter_m);
/// Torque [N·m] that gives a preload [N], plus prevailing torque.
double tightening_torque_nm(const Fastener& fastener, double preload_n, double prevailing_nm = 0.0);
/// Torque [N·m] that just loosens: thread and head friction less the pitch term, plus what locks the thread.
/// source: mirror of the long form (from memory)
double loosening_torque_nm(const Fastener& fastener, double preload_n, double lock_nm = 0.0);
/// Torque [N·m] in the thread alone at a preload [N]: what twists the shank. source: VDI 2230
double thread_torque_nm(const Fastener& fastener, double preload_n);

/// Shares of the tightening torque [1], together 1.
struct TorqueSplit {
  double stretch_1 = 0.0;
  double thread_1 = 0.0;
  double head_1 = 0.0;
};
TorqueSplit torque_split(const Fastener& fastener);

/// Handbook form T = F (0.159 L + 1.156 µ d) [N·m], one friction for both. source: MIL-HDBK-60 100.5.2
double handbook_torque_nm(double preload_n, double lead_m, double diameter_m, double friction_1);

}  // namespace proofstand::physics

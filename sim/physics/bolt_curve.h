// A bolt's force over its turning: run down, snug, elastic, yield, break; or the hub's thread strips first. Cheap
// enough for every tick.
#pragma once

#include "sim/physics/bolt_strength.h"

namespace proofstand::physics {

/// What the curve of one bolt in one hole depends on. SI.
struct BoltCurve {
  Fastener fastener;
  double compliance_m_n = 3.0e-9;  ///< elastic compliance of bolt, thread and plates; 2.8e-9 to 3.65e-9 (own finite
                                   ///< elements; VDI 2230 cylinders)
  double seat_travel_m =
      30e-6;  ///< travel spent on closing rough faces on the first pull (13.5° of M5); common practice, no source
  double seat_force_n = 1500.0;     ///< force at which half of it is spent
  double yield_n = 8000.0;          ///< preload at which permanent stretch begins while turning
  double hardening_1 = 0.03;        ///< stiffness beyond yield, of the elastic (own simplification, from memory)
  double break_stretch_m = 0.0004;  ///< permanent stretch at which it breaks
  double strip_n = 14000.0;         ///< axial load that strips the hub's thread
};

/// What a bolt has been through.
struct BoltLoad {
  double advance_m =
      0.0;  ///< head travel since it touched, i.e. turns past contact times pitch; negative: gap under the head
  double seated_m = 0.0;   ///< seat travel spent for good (the faces stay closed on the next pull)
  double plastic_m = 0.0;  ///< permanent stretch
  double preload_n = 0.0;
  bool stripped = false;
  bool broken = false;
};

/// The load after the head has travelled to an advance [m], from the load before. Unloading and loading again run along
/// the elastic line; seat travel and stretch stay. After stripping, a twelfth of the strip load is left as drag's
/// companion and the thread carries nothing beyond it.
BoltLoad load_at(const BoltCurve& curve, const BoltLoad& before, double advance_m);

/// Torque [N·m] to turn on at this load, without prevailing torque.
double turning_torque_nm(const BoltCurve& curve, const BoltLoad& load);
/// Advance [m] at which a preload [N] is reached from a load, elastic and seat travel together; valid below yield.
double advance_for_preload_m(const BoltCurve& curve, const BoltLoad& from, double preload_n);
/// Turn angle [rad] from snug to a preload by elasticity alone: 2π F δ/P. source: geometry of the joint (ISO 5393's
/// hard joint)
double elastic_angle_rad(double preload_n, double compliance_m_n, double pitch_m);

}  // namespace proofstand::physics

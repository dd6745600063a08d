// Torque over angle of one bolt: run-down, snug, closing its gap, elastic, yield, break, strip, bottoming. Pure
// functions of a joint's parameters and a small state, cheap enough for every tick.
#pragma once

#include "sim/physics/bolt_strength.h"
#include "sim/physics/preload.h"

namespace proofstand::physics {

/// Axial compliance of bolt, thread and clamped parts [m/N], threads engaged in aluminium over a grip of 1.8 mm.
/// source: own finite-element result 2.74e-9..2.79e-9; VDI 2230 formulas give 3.65e-9 (from memory)
inline constexpr double kJointCompliance_m_n = 2.77e-9;
/// Turn that flattening surfaces take beyond the elastic turn [m of advance]: 20 degrees of M5x0.8. common practice,
/// no source (15 to 30 degrees)
inline constexpr double kSettleAdvance_m = 44e-6;
/// Preload at which half of that has gone [N]. common practice, no source
inline constexpr double kSettleHalf_n = 900.0;
/// Tangent stiffness beyond yield, share of the elastic one, at most: the force at break is never passed. own
inline constexpr double kPlasticSlope_1 = 0.03;
/// Static over sliding friction: what it takes to set a bolt going. common practice, no source
inline constexpr double kBreakaway_1 = 1.08;
/// Preload that a stripped thread still gives, of its strip load. common practice, no source
inline constexpr double kStrippedRest_1 = 0.08;

/// Everything the curve needs; made by make_curve, then adjusted where the bench knows better.
struct BoltCurve {
  double pitch_m = 0.0008;
  TorqueLevers levers;  ///< of this pull's friction
  double compliance_m_n = kJointCompliance_m_n;
  double settle_m = kSettleAdvance_m;
  double settle_half_n = kSettleHalf_n;
  double gap_m = 0.0;              ///< between rotor and boss when the head comes to bear
  double gap_stiffness_n_m = 7e6;  ///< force that closes it
  double yield_n = 1e9;
  double plastic_n_m = 1e7;      ///< stiffness beyond yield
  double break_stretch_m = 1e9;  ///< permanent stretch at which it breaks
  double strip_n = 1e9;          ///< load that strips the hub's thread now
  bool bottoms = false;          ///< its end meets the bottom before its head bears
  double tip_lever_m = 0.0;      ///< friction of the end on the bottom, used instead of the head's
};

/// What the curve remembers of a bolt.
struct BoltCurveState {
  double preload_n = 0.0;  ///< axial force now
  double peak_n = 0.0;     ///< largest since its surfaces last met fresh: below it the way is purely elastic
  double stretch_m = 0.0;  ///< permanent
  bool stripped = false;
  bool broken = false;
};

/// One way along the curve.
struct BoltCurveStep {
  BoltCurveState state;
  double turned_rad = 0.0;  ///< actually turned, positive in
  double torque_nm = 0.0;   ///< at the fastener at the end, positive against the turning
  bool stripped_now = false;
  bool broke_now = false;
};

/// Parameters of a joint.
/// engaged_m     [m] full thread engaged
/// grip_m        [m] clamped between head and hub
/// strip_load_n  [N] load that strips the hub now
/// bearing_m     [m] mean bearing diameter under the head
BoltCurve make_curve(const ThreadGeometry& thread, const BoltMaterial& material, const BoltFriction& friction,
                     double bearing_m, double grip_m, double strip_load_n);

/// Advance past bearing that gives a preload on first loading, gap included; and its inverse.
/// preload_n [N] >= 0, advance_m [m] >= 0
/// source  linear joint, settling as a hyperbola, gap as a spring: own derivation
double advance_for_preload_m(const BoltCurve& curve, double preload_n);
double preload_for_advance_n(const BoltCurve& curve, double advance_m);

/// Torque that keeps the bolt turning in, and out. prevailing_nm [N·m] drag of thread, patch or locker now.
double torque_in_nm(const BoltCurve& curve, const BoltCurveState& state, double prevailing_nm);
double torque_out_nm(const BoltCurve& curve, const BoltCurveState& state, double prevailing_nm);

/// Turns a bolt whose head bears by an angle. Unloading and re-loading below the peak are elastic; beyond the yield
/// load the stretch stays; at the strip load the thread goes and torque falls while it turns; at the breaking stretch
/// it breaks. turn_rad  [rad] positive in; out stops having an effect at zero preload
BoltCurveStep turn_bolt(const BoltCurve& curve, const BoltCurveState& state, double turn_rad, double prevailing_nm);
/// Turns it in until the torque is reached, at most limit_rad: what a hand of limited force does in a tick.
/// torque_nm  [N·m] > 0, at the fastener
/// limit_rad  [rad] >= 0
BoltCurveStep turn_bolt_to_torque(const BoltCurve& curve, const BoltCurveState& state, double torque_nm,
                                  double limit_rad, double prevailing_nm);
/// Joint hardness: turn from bearing to a preload of the purely elastic joint. [rad]
/// source  ISO 5393 meaning of hard and soft; own derivation
double elastic_turn_rad(double preload_n, double compliance_m_n, double pitch_m);
/// Settling took this much of the length under load: preload falls by embed/compliance, not below 0.
BoltCurveState settle_bolt(const BoltCurve& curve, const BoltCurveState& state, double embed_m);

}  // namespace proofstand::physics

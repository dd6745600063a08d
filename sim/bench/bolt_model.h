// What turning one bolt meets, put together from the physics floor for the bolt, the hole and the films as they are.
#pragma once

#include "sim/bench/world.h"
#include "sim/physics/bolt_strength.h"

namespace proofstand::bench {

/// Figures of one fastener in its hole for one visit; forces and torques follow from them by plain arithmetic.
struct BoltModel {
  double pitch_m = 0.0;
  double in_nm_per_n = 0.0;      ///< torque a newton of preload asks for, tightening
  double out_nm_per_n = 0.0;     ///< the same, loosening
  double rest_gain_1 = 1.0;      ///< torque that starts it from rest, of the torque that keeps it moving
  double bolt_n_per_m = 0.0;     ///< bolt and clamped parts together
  double seat_n_per_m = 0.0;     ///< rotor pressed down at this boss against the others
  double yield_n = 0.0;          ///< preload at which it begins to stretch for good
  double most_n = 0.0;           ///< preload that it never exceeds
  double strip_n = 0.0;          ///< preload at which the hub's thread shears off
  double break_stretch_m = 0.0;  ///< permanent stretch at which it breaks
  double bears_turns_1 = 0.0;    ///< turns in at which the head meets the rotor, or the hub without one
  double bottom_turns_1 = 0.0;   ///< turns in at which its end or last thread stands
  double lock_nm = 0.0;          ///< cured locker that must shear before it moves, loosening
  double drag_nm = 0.0;          ///< even drag of wet locker, old locker and dirt on the fully engaged thread
  double patch_in_nm = 0.0;      ///< of its patch, fully engaged
  double patch_out_nm = 0.0;
};

/// The model of the bolt in that hole (there must be one).
/// friction_z_1 [1] -2.5..2.5, this visit's place in the scatter of friction
BoltModel bolt_model(const World& world, BoltId bolt, double friction_z_1);

/// Torque of thread and patch alone, without preload [N·m].
double drag_in_nm(const BoltModel& model, const HoleState& hole, double turns_1);
double drag_out_nm(const BoltModel& model, const HoleState& hole, double turns_1);

/// Preload at a number of turns, and turns at a preload, on the present line of this hole: slack below snug_turns_1,
/// then the seat's gap closing and fresh faces flattening (once: up to the largest preload so far), the elastic line,
/// yield. At no preload: where the head meets the rotor.
double preload_at_n(const BoltModel& model, const HoleState& hole, double turns_1);
double turns_at_1(const BoltModel& model, const HoleState& hole, double preload_n);

/// Friction draw of a visit: mostly the bolt's own, a little the visit's.
double draw_friction_z_1(const World& world, BoltId bolt);

/// The same class on the physics floor.
physics::BoltClass class_of(BoltGrade grade);
/// The bolt part and state in a hole; the hole must hold one.
const BoltPart& bolt_part(const World& world, BoltId bolt);
BoltState& bolt_state(const World& world, BoltId bolt);
inline HoleState& hole_of(const World& world, BoltId bolt) { return world.state.holes[event::index_of(bolt)]; }
/// Length of full thread engaged [m].
double engaged_thread_m(const World& world, BoltId bolt);
/// Thickness of what the bolts clamp [m]; 0 with no rotor on.
double carrier_m(const World& world);

/// Preload from which a bolt holds the rotor where it is [N]. common practice, no source
inline constexpr double kHolding_n = 400.0;

}  // namespace proofstand::bench

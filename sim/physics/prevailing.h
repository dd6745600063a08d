// What drags or locks a thread besides clamp: patches and their decay, liquid locker and its cure, old residue.
#pragma once

#include "sim/physics/thread_geometry.h"

namespace proofstand::physics {

/// New polymer patch on M5, screwing in [N·m]. source: common practice, no source (0.5 to 1.5)
inline constexpr double kNewPatch_nm = 0.9;
/// Share of it when screwing out. source: common practice, no source
inline constexpr double kPatchOutShare_1 = 0.5;
/// What is left from one use to the next: 0.29 N·m at the first removal, 0.20 at the fifth. source: ISO 2320, from
/// memory
inline constexpr double kPatchDecay_1 = 0.911;
/// Below this drag a patch or locking nut no longer counts as locking [N·m]. source: US Army technical manual, locknut
/// table
inline constexpr double kPatchSpent_nm = 0.23;

/// Drag of a patch [N·m] at its n-th screwing in (0: new). source: decay as above
double patch_torque_nm(double new_nm, int uses_before);
/// Does it still lock? Judged by what it would drag on the way out.
bool patch_locks(double new_nm, int uses_before);

/// Drag [N·m] after so many turns from the thread's start: nothing for 2.5 turns, then up over 2 turns.
/// source: common practice, no source
double patch_drag_nm(double full_nm, double turns_1);
/// Of a crossed start in aluminium [N·m]: stiff from the first quarter turn, capped at 4. source: own estimate, from
/// memory
double crossed_drag_nm(double turns_1);
/// Of a clean one [N·m].
inline constexpr double kFreeDrag_nm = 0.03;

/// Share of full strength after a time [1] at room temperature: 1 − exp(−t/8 h), 95 % in a day.
/// source: "normally within 24 h", published text on locking adhesives; time constant fitted
double cure_1(double time_s);
/// Time within which re-adjusting a wet joint is harmless [s]. source: common practice, no source
inline constexpr double kGelTime_s = 420.0;
/// Cured shear strength of a medium locker on steel [Pa]. source: ISO 10123 classes, from memory
inline constexpr double kLockerShear_pa = 10e6;
/// Factor on passive metals. source: direction published (stainless and zinc cure poorly), size from memory
inline constexpr double kLockerPassive_1 = 0.5;
/// Torque that breaks a cured film [N·m]: τ π d2 L d2/2, times the cured share. source: shear over the wetted cylinder
double locker_break_nm(Thread thread, double engagement_m, double shear_pa, double cured_1);

/// Volume [m³] a joint holds: pi d2 L gap. source: geometry
double locker_held_m3(Thread thread, double engagement_m, double gap_m);
/// Drop surplus [m³], never negative.
double locker_surplus_m3(double applied_m3, Thread thread, double engagement_m, double gap_m);
/// How far a wet film creeps into a gap [m]: sqrt(γ gap t / (3 µ)). source: capillary flow between plates, from memory
double crevice_creep_m(double surface_tension_n_m, double gap_m, double viscosity_pa_s, double time_s);
/// Least volume [m³] of locker that wets enough of an M5 thread to lock it: a third of what the flanks hold.
/// source: common practice, no source
inline constexpr double kLeastLocker_m3 = 3e-9;

}  // namespace proofstand::physics

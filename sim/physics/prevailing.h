// Torque that a thread asks for before any clamp: patches and their wear, locker wet, setting and set, old residue.
#pragma once

#include "sim/physics/thread_geometry.h"

namespace proofstand::physics {

/// Drag of a new M5 patch bolt going in [N·m]; 0.5 to 1.5. common practice, no source
inline constexpr double kPatchIn_nm = 0.9;
/// Drag on the first way out [N·m]. common practice, no source
inline constexpr double kPatchOut_nm = 0.45;
/// What a patch keeps of its drag in each further cycle. ISO 2320, least first and fifth removal torque (from memory)
inline constexpr double kPatchDecay_1 = 0.911;
/// Below this drag on removal a patch no longer locks [N·m]. ISO 2320 least fifth removal, M5 (from memory); a
/// published US Army table discards a 4.8 mm locking nut below 0.23
inline constexpr double kPatchSpent_nm = 0.20;
/// Turns with hardly any drag before the patch enters, and turns over which it rises. common practice, no source
inline constexpr double kPatchStart_turns_1 = 2.5;
inline constexpr double kPatchRise_turns_1 = 2.0;
/// Drag of a free thread spun in [N·m]. common practice, no source
inline constexpr double kFreeThread_nm = 0.03;
/// Shear strength of a fully set medium locker on steel [Pa]; 5 to 15 MPa. order of ISO 10123 classes (from memory)
inline constexpr double kLockerShear_pa = 10e6;
/// Share of that on stainless, zinc or anodised metal, where the locker is slow. direction published, size from memory
inline constexpr double kLockerPassive_1 = 0.5;
/// Time constant of curing [s], so that 95 % is reached in a day. "normally within 24 h" published, fit own
inline constexpr double kLockerCure_s = 8.0 * 3600.0;
/// Until then moving the bolt does no harm [s]; 5 to 10 min. common practice, no source
inline constexpr double kLockerOpen_s = 7.5 * 60.0;

/// Full drag of a patch that has been screwed in this many times before. uses >= 0, 0: new.
/// full_nm  [N·m] drag of the first time
/// returns  [N·m]
double patch_drag_nm(double full_nm, int uses);
/// Drag of a patch while turning in: free, then rising over two turns, then flat.
/// turns_1  [1] turns since the thread caught
/// full_nm  [N·m] as patch_drag_nm gives it
double patch_drag_at_nm(double full_nm, double turns_1);

/// How far a locker has set. seconds since the parts came together. returns [1] 0..1
double locker_cured_1(double age_s);
/// Torque that breaks a set locker loose: shear strength over the wetted flank cylinder.
/// engaged_m   [m] wetted length
/// strength_1  [1] cure x surface x share wetted, 0..1
/// returns     [N·m]; 2.5 for 8 mm of M5 fully cured
/// source      own derivation
double locker_breakloose_nm(const ThreadGeometry& thread, double engaged_m, double strength_1);
/// Thread friction is up by a fifth, and the preload not to be trusted, when a set joint is tightened on. [1]
/// source  effect published, size common practice, no source
inline constexpr double kSetLockerFriction_1 = 1.2;
/// Drag of wet locker while turning, by how much of the thread it fills. wetted_1 [1] 0..1
/// returns [N·m]; source common practice, no source
double wet_locker_drag_nm(double wetted_1);
/// Drag of old cured locker left in a thread: grainy, eases as the bolt goes to and fro.
/// full_nm   [N·m] 0.2..0.6
/// worked_1  [1] turns worked to and fro so far
/// source    common practice, no source
double old_locker_drag_nm(double full_nm, double worked_1);

/// Liquid that does not fit the gap between bolt and hole of this length. [m3] >= 0
/// drop_m3, engaged_m; gap_m [m] mean radial gap at the flanks, about 0.1 mm
/// source  geometry
double locker_surplus_m3(double drop_m3, const ThreadGeometry& thread, double engaged_m, double gap_m);
/// Share of the engaged thread that this much locker wets. [1] 0..1
double locker_wetted_1(double locker_m3, const ThreadGeometry& thread, double engaged_m, double gap_m);
/// How far liquid creeps into a gap between plates: x = sqrt(gamma gap t/(3 mu)).
/// tension_n_m [N/m], gap_m, time_s, viscosity_pa_s via name: Pa·s
/// source  capillary flow between parallel plates, ordinary fluid mechanics (from memory)
double capillary_creep_m(double tension_n_m, double gap_m, double time_s, double viscosity_pa_s);

}  // namespace proofstand::physics

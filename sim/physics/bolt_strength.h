// When a bolt yields and when it breaks: property classes, tension and torsion together.
#pragma once

#include <string_view>

#include "sim/physics/preload.h"
#include "sim/physics/thread_geometry.h"

namespace proofstand::physics {

/// Property class of a bolt.
enum class BoltClass : unsigned char { Steel8_8, Steel10_9, Steel12_9, StainlessA2_70 };

/// Figures of a class.
struct BoltMaterial {
  std::string_view name;
  double tensile_pa = 0.0;  ///< Rm, least
  double yield_pa = 0.0;    ///< Rp0.2, least
  double modulus_pa = 0.0;
  double elongation_1 = 0.0;      ///< after fracture, least
  double torsion_factor_1 = 0.0;  ///< breaking torque test, share of Rm; 0 where the standard gives none
};
/// source  ISO 898-1 and ISO 3506-1 (from memory), torsion factor ISO 898-7 (from memory)
const BoltMaterial& bolt_material(BoltClass bolt_class);

/// Proof load and least ultimate load of the standard's table for M5, 0 where it has none. [N]
/// source  ISO 898-1, tables for M5
double proof_load_m5_n(BoltClass bolt_class);
double ultimate_load_m5_n(BoltClass bolt_class);

/// Which distribution of shear over the core is meant.
enum class Torsion : unsigned char {
  Elastic,  ///< 16 M/(pi d^3), first yield at the rim
  Plastic,  ///< 12 M/(pi d^3), whole section
};

/// Stresses in the thread while the bolt is being turned.
struct BoltStress {
  double axial_pa = 0.0;
  double shear_pa = 0.0;
  double combined_pa = 0.0;  ///< sqrt(axial^2 + 3 shear^2)
};
/// preload_n  [N]; levers of the friction in play
/// source     MIL-HDBK-60 5.5.1 for the combination; VDI 2230 for the plastic form (from memory)
BoltStress bolt_stress(double preload_n, const ThreadGeometry& thread, const TorqueLevers& levers, Torsion torsion);

/// Preload at which the bolt starts to stretch for good while being turned.
/// yield_pa  [Pa]; used_1 [1] share of the yield stress used, 1 or 0.9
/// source    VDI 2230 (from memory)
double yield_preload_n(double yield_pa, const ThreadGeometry& thread, const TorqueLevers& levers, double used_1 = 1.0);
/// Largest preload of the post-yield branch: Rm As/1.15 in torsion and tension. [N]
/// source  own simplification
double break_preload_n(double tensile_pa, const ThreadGeometry& thread);
/// Torque that twists a bolt off without head friction: factor Rm pi/16 d3min^3.
/// source  ISO 898-7 (from memory)
double torsional_break_nm(const BoltMaterial& material, double least_minor_m);
/// Least core of M5 in that test [m]. ISO 898-7 (from memory)
inline constexpr double kTorsionTestMinorM5_m = 0.003869;
/// Length that stretches: grip and two pitches. [m] source: own simplification
double free_length_m(double grip_m, double pitch_m);

}  // namespace proofstand::physics

// What a bolt bears: proof, yield under tension with torsion, breaking.
#pragma once

#include <cstdint>

#include "sim/physics/preload.h"

namespace proofstand::physics {

enum class Grade : std::uint8_t { Steel8_8, Steel10_9, Steel12_9, StainlessA2_70 };

/// Least properties. Sources: proof and ultimate loads from published tables of ISO 898-1; the others from memory of
/// ISO 898-1, ISO 3506-1 and ISO 898-7.
struct GradeRow {
  double tensile_pa = 0.0;
  double yield_pa = 0.0;
  double modulus_pa = 0.0;
  double elongation_1 = 0.0;
  double proof_m5_n = 0.0;  ///< 0: none printed
  double ultimate_m5_n = 0.0;
  double torsion_factor_1 = 0.0;  ///< of the torsional breaking test
};
const GradeRow& grade_row(Grade grade);

/// Axial stress [Pa] of a preload [N] on the stress area.
double axial_stress_pa(Thread thread, double preload_n);
/// Combined stress [Pa] while pulled: sqrt(σ² + 3 τ²), τ = 16 M/(π ds³) at first yield of the rim, 12 M/(π ds³) fully
/// plastic. source: MIL-HDBK-60 5.5.1 form; plastic torsion VDI 2230
double combined_stress_pa(const Fastener& fastener, double preload_n, bool plastic);
/// Preload [N] at which a bolt begins to stretch for good while being turned, plastic form; share of yield 0..1.
/// source: VDI 2230, from memory
double yield_preload_n(const Fastener& fastener, Grade grade, double share_1 = 1.0);
/// Torque [N·m] that reaches it, without prevailing torque.
double yield_torque_nm(const Fastener& fastener, Grade grade);
/// Torque [N·m] that twists an M5 off without head friction. source: ISO 898-7, factors from memory
double torsional_break_nm(Grade grade, double minor_min_m);
/// Largest force a bolt bears while turned [N]: Rm As/1.15. source: own simplification, from memory
double break_preload_n(Thread thread, Grade grade);
/// Plastic stretch at which it breaks [m]: elongation × (grip + 2 P). source: own simplification, from memory
double break_stretch_m(Thread thread, Grade grade, double grip_m);

}  // namespace proofstand::physics

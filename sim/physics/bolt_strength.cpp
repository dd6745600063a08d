#include "sim/physics/bolt_strength.h"

#include <array>

#include "sim/base/assert.h"
#include "sim/base/math.h"

namespace proofstand::physics {
namespace {

constexpr std::array<BoltMaterial, 4> kMaterials = {{
    {"8.8", 800e6, 640e6, 205e9, 0.12, 0.84},
    {"10.9", 1040e6, 940e6, 205e9, 0.09, 0.79},
    {"12.9", 1220e6, 1100e6, 205e9, 0.08, 0.75},
    {"A2-70", 700e6, 450e6, 193e9, 0.20, 0.0},
}};
constexpr std::array<double, 4> kProofM5_n = {8230.0, 11800.0, 13800.0, 0.0};
constexpr std::array<double, 4> kUltimateM5_n = {11350.0, 14800.0, 17300.0, 0.0};

std::size_t index(BoltClass bolt_class) { return static_cast<std::size_t>(bolt_class); }

}  // namespace

const BoltMaterial& bolt_material(BoltClass bolt_class) { return kMaterials[index(bolt_class)]; }
double proof_load_m5_n(BoltClass bolt_class) { return kProofM5_n[index(bolt_class)]; }
double ultimate_load_m5_n(BoltClass bolt_class) { return kUltimateM5_n[index(bolt_class)]; }

BoltStress bolt_stress(double preload_n, const ThreadGeometry& thread, const TorqueLevers& levers, Torsion torsion) {
  const double d = thread.stress_diameter_m;
  // the head's friction is spent above the thread: only pitch and thread friction twist the core
  const double twist_nm = preload_n * (levers.pitch_m + levers.thread_m);
  BoltStress stress;
  stress.axial_pa = preload_n / thread.stress_area_m2;
  stress.shear_pa = (torsion == Torsion::Elastic ? 16.0 : 12.0) * twist_nm / (base::kPi * d * d * d);
  stress.combined_pa = base::sqrt_1(stress.axial_pa * stress.axial_pa + 3.0 * stress.shear_pa * stress.shear_pa);
  return stress;
}

double yield_preload_n(double yield_pa, const ThreadGeometry& thread, const TorqueLevers& levers, double used_1) {
  const BoltStress unit = bolt_stress(1.0, thread, levers, Torsion::Plastic);
  return used_1 * yield_pa / unit.combined_pa;
}

double break_preload_n(double tensile_pa, const ThreadGeometry& thread) {
  return tensile_pa * thread.stress_area_m2 / 1.15;
}

double torsional_break_nm(const BoltMaterial& material, double least_minor_m) {
  STAND_ASSERT(least_minor_m > 0.0);
  return material.torsion_factor_1 * material.tensile_pa * base::kPi / 16.0 * least_minor_m * least_minor_m *
         least_minor_m;
}

double free_length_m(double grip_m, double pitch_m) { return grip_m + 2.0 * pitch_m; }

}  // namespace proofstand::physics

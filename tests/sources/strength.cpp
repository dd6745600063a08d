// Yield, breaking, stripping, and the turn of a hard joint.
#include "sim/base/math.h"
#include "sim/physics/bolt_curve.h"
#include "sim/physics/bolt_strength.h"
#include "sim/physics/thread_shear.h"
#include "tests/sources/cases.h"

namespace proofstand::sources {
namespace {

using namespace physics;

const ThreadGeometry kM5 = compute_thread(0.005, 0.0008);

TorqueLevers levers(double friction_1) { return torque_levers(kM5, 0.0071, {friction_1, friction_1}); }

double yield_n(BoltClass grade, double friction_1, double used_1 = 1.0) {
  return yield_preload_n(bolt_material(grade).yield_pa, kM5, levers(friction_1), used_1);
}
double yield_torque_nm(BoltClass grade, double friction_1) {
  return torque_from_preload_nm(yield_n(grade, friction_1), levers(friction_1));
}

void add_bolts(Table& t) {
  t.open("19", "VDI 2230 table A1 (from memory)", kMemory);
  t.check("8.8 at 90 % of yield, 0.12", yield_n(BoltClass::Steel8_8, 0.12, 0.9), 7202.0, 5.0, "N");
  t.open("20", "VDI 2230 form (from memory)", kMemory);
  t.check("8.8 yields, 0.11", yield_n(BoltClass::Steel8_8, 0.11), 8107.0, 5.0, "N");
  t.check("10.9 yields, 0.11", yield_n(BoltClass::Steel10_9, 0.11), 11907.0, 5.0, "N");
  t.check("A2-70 yields, 0.14", yield_n(BoltClass::StainlessA2_70, 0.14), 5476.0, 5.0, "N");
  t.open("21", "VDI 2230 form (from memory)", kMemory);
  t.check("torque to yield, 8.8 greased", yield_torque_nm(BoltClass::Steel8_8, 0.11), 6.505, 0.005, "N·m");
  t.check("torque to yield, 8.8 at 0.14", yield_torque_nm(BoltClass::Steel8_8, 0.14), 7.683, 0.005, "N·m");
  t.check("torque to yield, A2-70 at 0.14", yield_torque_nm(BoltClass::StainlessA2_70, 0.14), 5.402, 0.005, "N·m");
  t.open("22", "MIL-HDBK-60 5.5.1 form", kPublished);
  const double greased_n = preload_from_torque_n(6.2, levers(0.11));
  t.check("axial stress, greased at 6.2 N·m",
          bolt_stress(greased_n, kM5, levers(0.11), Torsion::Elastic).axial_pa / 1e6, 544.8, 0.5, "MPa");
  t.check("combined, elastic", bolt_stress(greased_n, kM5, levers(0.11), Torsion::Elastic).combined_pa / 1e6, 656.3,
          0.5, "MPa");
  t.check("combined, plastic", bolt_stress(greased_n, kM5, levers(0.11), Torsion::Plastic).combined_pa / 1e6, 610.0,
          0.5, "MPa");
  t.open("22a", "FED-STD-H28/2B 70.6: about 20 % above axial", kPublished);
  const BoltStress plastic = bolt_stress(6285.0, kM5, levers(0.14), Torsion::Plastic);
  t.check("combined over axial at 0.14, plastic", plastic.combined_pa / plastic.axial_pa, 1.20, 0.05, "1");
  t.open("23", "ISO 898-7 (from memory)", kMemory);
  t.check("torsional breaking torque, 8.8",
          torsional_break_nm(bolt_material(BoltClass::Steel8_8), kTorsionTestMinorM5_m), 7.642, 0.01, "N·m");
  t.open("24", "ISO 898-1 tables for M5", kPublished);
  t.check("proof load 8.8", proof_load_m5_n(BoltClass::Steel8_8), 8230.0, 0.0, "N");
  t.check("least ultimate load 8.8", ultimate_load_m5_n(BoltClass::Steel8_8), 11350.0, 0.0, "N");
  t.check("ultimate load from the stress area", bolt_material(BoltClass::Steel8_8).tensile_pa * kM5.stress_area_m2,
          11350.0, 30.0, "N");
  t.open("34", "own derivation", kMemory);
  t.check("turn to 6285 N of the elastic joint", base::degrees(elastic_turn_rad(6285.0, kJointCompliance_m_n, 0.0008)),
          7.83, 0.02, "deg");
  t.open("34a", "ISO 5393: hard means at most 27 degrees", kPublished);
  t.verdict("is it a hard joint?", base::degrees(elastic_turn_rad(6285.0, kJointCompliance_m_n, 0.0008)) <= 27.0, true);
}

void add_threads(Table& t) {
  const ThreadLimits limits = thread_limits(0.005, 0.0008);
  t.open("25", "FED-STD-H28/2B table II.B.1 equation 2a", kPublished);
  t.check("shear area of the hole, a millimetre", internal_shear_area_m2(limits, 0.0008, 0.001) * 1e6, 9.9988, 1e-3,
          "mm2");
  t.open("26", "FED-STD-H28/2B table II.B.1 equation 4a", kPublished);
  t.check("shear area of the bolt, a millimetre", external_shear_area_m2(limits, 0.0008, 0.001) * 1e6, 7.0731, 1e-3,
          "mm2");
  t.open("27", "FED-STD-H28/2B equations 3, 5, 7", kPublished);
  t.check("short form, hole", internal_shear_area_short_m2(kM5.pitch_diameter_m, 0.001) * 1e6, 10.5567, 1e-3, "mm2");
  t.check("short form, bolt", external_shear_area_short_m2(kM5.pitch_diameter_m, 0.001) * 1e6, 8.7972, 1e-3, "mm2");
  t.check("short form, both", combined_shear_area_m2(kM5.pitch_diameter_m, 0.001) * 1e6, 7.0378, 1e-3, "mm2");
  const double nominal_pa = thread_shear_strength_pa(kHubTensile_pa);
  t.open("28", "equation 2a with the table strength of 6061-T6", kPublished);
  t.check("strips, 207 MPa, 4 mm", strip_load_n(kHubShear_pa, internal_shear_area_m2(limits, 0.0008, 0.004)), 8279.0,
          5.0, "N");
  t.check("strips, 207 MPa, 8 mm", strip_load_n(kHubShear_pa, internal_shear_area_m2(limits, 0.0008, 0.008)), 16558.0,
          5.0, "N");
  t.open("29", "FED-STD-H28/2B 70.7.1, ratio 1.7", kPublished);
  t.check("strips, nominal, 4 mm", strip_load_n(nominal_pa, internal_shear_area_m2(limits, 0.0008, 0.004)), 7293.0, 5.0,
          "N");
  t.check("strips, nominal, 8 mm", strip_load_n(nominal_pa, internal_shear_area_m2(limits, 0.0008, 0.008)), 14586.0,
          5.0, "N");
  t.open("30", "FED-STD-H28/2B and ISO 898-1", kPublished);
  t.check("engagement that breaks an 8.8 bolt first",
          engagement_for_load_m(limits, 0.0008, nominal_pa, ultimate_load_m5_n(BoltClass::Steel8_8)) * 1e3, 6.225, 0.01,
          "mm");
  t.open("30b", "worked example, handbook of bolted joints", kPublished);
  const ThreadLimits m10{0.009206, 0.0, 0.0, 0.009968, 0.0, 0.0};
  t.check("M10x1.5, 69.6 kN, 130 MPa", engagement_for_load_m(m10, 0.0015, 130e6, 69600.0) * 1e3, 21.55, 0.02, "mm");
}

}  // namespace

void add_strength_cases(Table& table) {
  add_bolts(table);
  add_threads(table);
}

}  // namespace proofstand::sources

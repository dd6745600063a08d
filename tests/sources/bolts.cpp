// Threads, torque and preload.
#include "sim/base/math.h"
#include "sim/physics/friction_condition.h"
#include "sim/physics/preload.h"
#include "sim/physics/prevailing.h"
#include "sim/physics/settling.h"
#include "sim/physics/torque_tool.h"
#include "tests/sources/cases.h"

namespace proofstand::sources {
namespace {

using namespace physics;

const ThreadGeometry kM5 = compute_thread(0.005, 0.0008);
constexpr double kBearing_m = 0.0071;

TorqueLevers levers(double thread_1, double head_1) { return torque_levers(kM5, kBearing_m, {thread_1, head_1}); }

void add_threads(Table& t) {
  t.open("1", "ISO 68-1, ISO 724", kPublished);
  t.check("M5x0.8, height of the triangle", kM5.triangle_height_m * 1e3, 0.69282, 1e-4, "mm");
  t.check("M5x0.8, pitch diameter", kM5.pitch_diameter_m * 1e3, 4.48038, 1e-4, "mm");
  t.check("M5x0.8, minor diameter of the hole", kM5.minor_internal_m * 1e3, 4.13397, 1e-4, "mm");
  t.check("M5x0.8, minor diameter of the bolt", kM5.minor_external_m * 1e3, 4.01850, 1e-4, "mm");
  t.check("M5x0.8, pitch diameter, table", kM5.pitch_diameter_m * 1e3, 4.480, 6e-4, "mm");
  const ThreadGeometry m6 = compute_thread(0.006, 0.001);
  t.open("1a", "ISO 724 table for M6 (from memory)", kMemory);
  t.check("M6x1, pitch diameter", m6.pitch_diameter_m * 1e3, 5.350, 6e-4, "mm");
  t.check("M6x1, minor diameter of the hole", m6.minor_internal_m * 1e3, 4.917, 6e-4, "mm");
  t.open("2", "ISO 898-1", kPublished);
  t.check("M5x0.8, stress area", kM5.stress_area_m2 * 1e6, 14.1825, 0.01, "mm2");
  t.check("M5x0.8, stress area, table", kM5.stress_area_m2 * 1e6, 14.2, 0.05, "mm2");
  t.open("2a", "ISO 898-1 table for M6 (from memory)", kMemory);
  t.check("M6x1, stress area, table", m6.stress_area_m2 * 1e6, 20.1, 0.05, "mm2");
  t.open("3", "geometry", kMemory);
  t.check("M5x0.8, lead angle", base::degrees(kM5.lead_angle_rad), 3.2530, 0.001, "deg");
}

void add_preloads(Table& t) {
  const char* kLong = "long form, NSTS 08307 Rev A 3.3, MIL-HDBK-60 App. B";
  const TorqueLevers plain = levers(0.14, 0.14);
  t.open("4", kLong, kPublished);
  t.check("nut factor at 0.14", nut_factor_1(plain, 0.005), 0.19729, 1e-4, "1");
  t.open("5", kLong, kPublished);
  t.check("preload of 6.2 N·m at 0.14", preload_from_torque_n(6.2, plain), 6285.0, 0.5, "N");
  t.open("6", "short form T = K d F", kPublished);
  t.check("preload of 6.2 N·m at K 0.20", short_form_preload_n(6.2, 0.20, 0.005), 6200.0, 0.1, "N");
  t.open("7", "worked example of a machine design textbook, No. 10 screw", kPublished);
  t.check("torque at K 0.3, 1275 lbf",
          short_form_torque_nm(1275.0 * kPoundForce_n, 0.3, 0.190 * kInch_m) / (kPoundForce_n * kInch_m), 72.7, 0.05,
          "lbf·in");
  t.open("8", "published test report, 7/8 in bolt at 400 lbf·ft", kPublished);
  t.check("torque back from that factor",
          short_form_torque_nm(30000.0 * kPoundForce_n, 0.182857, 0.875 * kInch_m) / (12.0 * kPoundForce_n * kInch_m),
          400.0, 0.05, "lbf·ft");
  struct Preset {
    const char* number;
    const char* model;
    ThreadCondition condition;
    double preload_n;
    double factor_1;
  };
  const Preset presets[] = {{"9", "dry thread, 6.2 N·m", ThreadCondition::Dry, 4576.7, 0.27093},
                            {"10", "wet locker, 6.2 N·m", ThreadCondition::LockerWet, 5541.5, 0.22377},
                            {"11", "greased thread, 6.2 N·m", ThreadCondition::Greased, 7727.1, 0.16047}};
  for (const Preset& preset : presets) {
    const FrictionRow row = friction_row(preset.condition);
    const TorqueLevers l = levers(row.thread_1, row.head_1);
    t.open(preset.number, kLong, kPublished);
    t.check(std::string(preset.model) + ", preload", preload_from_torque_n(6.2, l), preset.preload_n, 0.5, "N");
    t.check(std::string(preset.model) + ", nut factor", nut_factor_1(l, 0.005), preset.factor_1, 1e-4, "1");
  }
  t.open("12", kLong, kPublished);
  t.check("share that stretches the bolt", 100.0 * plain.pitch_m / plain.tighten_m(), 12.907, 0.01, "%");
  t.check("share of thread friction", 100.0 * plain.thread_m / plain.tighten_m(), 36.711, 0.01, "%");
  t.check("share of head friction", 100.0 * plain.head_m / plain.tighten_m(), 50.382, 0.01, "%");
  t.open("13", "MIL-HDBK-60 100.5.2", kPublished);
  t.check("torque by the handbook form", handbook_torque_nm(6285.0, 0.0008, 0.005, 0.14), 5.885, 0.002, "N·m");
  t.open("14", "mirror of the long form", kMemory);
  t.check("loosening torque", loosening_torque_nm(6285.0, plain), 4.600, 0.002, "N·m");
  t.open("15", "own derivation; shear strength order of ISO 10123", kMemory);
  t.check("cured locker, 8 mm", locker_breakloose_nm(kM5, 0.008, 1.0), 2.523, 0.002, "N·m");
  t.check("loosening with it", loosening_torque_nm(6285.0, plain, locker_breakloose_nm(kM5, 0.008, 1.0)), 7.122, 0.002,
          "N·m");
}

void add_scatter(Table& t) {
  t.open("16", "NASA-STD-5020B equation 3", kPublished);
  t.check("most preload", most_preload_n(6285.0, 1.06, 0.25), 8328.0, 1.0, "N");
  t.open("17", "NASA-STD-5020B equation 4", kPublished);
  t.check("least preload, separation", least_preload_n(6285.0, 0.94, 0.25, 1, 0.0), 4431.0, 1.0, "N");
  t.open("18", "NASA-STD-5020B equation 5 and table 1", kPublished);
  t.check("least preload, six share", least_preload_n(6285.0, 0.94, 0.25, 6, 0.0), 5305.0, 1.0, "N");
  t.check("same, relaxed", least_preload_n(6285.0, 0.94, 0.25, 6, kRelaxation_1), 5040.0, 1.0, "N");
  t.open("18a", "NASA-STD-5020B table 3", kPublished);
  t.check("scatter, greased", friction_row(ThreadCondition::Greased).scatter_1, 0.25, 0.0, "1");
  t.check("scatter, dry", friction_row(ThreadCondition::Dry).scatter_1, 0.35, 0.0, "1");
  t.open("18b", "MIL-HDBK-60 Appendix B table II", kPublished);
  t.check("friction, machine oil", friction_row(ThreadCondition::AsReceived).thread_1, 0.15, 0.0, "1");
  t.check("friction, molybdenum grease", friction_row(ThreadCondition::Greased).thread_1, 0.11, 0.0, "1");
  t.open("75", "root sum of squares (JCGM 100)", kMemory);
  t.check("tool 6 % and scatter 25 %, both two sigma", 100.0 * combined_uncertainty_1(0.03, 0.125), 12.85, 0.01, "%");
}

void add_prevailing(Table& t) {
  t.open("121", "patch bolt as felt", kPractice);
  const double patch_nm[] = {0.030, 0.030, 0.255, 0.705};
  for (int turn = 1; turn <= 4; ++turn) {
    t.check("drag of a patch at turn " + std::to_string(turn), patch_drag_at_nm(0.9, turn), patch_nm[turn - 1], 1e-12,
            "N·m");
  }
  t.open("122", "decay fitted to ISO 2320 (from memory)", kMemory);
  t.check("drag in the third cycle", patch_drag_nm(0.45, 2), 0.3735, 1e-4, "N·m");
  t.check("drag in the fifth cycle", patch_drag_nm(0.45, 4), 0.3099, 1e-4, "N·m");
  t.open("123", "long form, patch taken off first", kMemory);
  t.check("preload of 6.2 N·m with a patch", preload_from_torque_n(6.2, levers(0.14, 0.14), 0.9), 5372.7, 0.5, "N");
  t.open("123a", "normally within 24 h (published text), 95 % own", kMemory);
  t.check("locker after a day", locker_cured_1(24.0 * 3600.0), 0.95, 0.002, "1");
  t.open("147", "capillary flow between plates", kMemory);
  t.check("creep of wet locker in a minute", capillary_creep_m(0.035, 20e-6, 60.0, 1.0) * 1e3, 3.742, 1e-3, "mm");
  t.open("148", "geometry", kMemory);
  t.check("surplus of a 20 mm3 drop", locker_surplus_m3(20e-9, kM5, 0.008, 0.0001) * 1e9, 8.74, 0.01, "mm3");
}

}  // namespace

void add_bolt_cases(Table& table) {
  add_threads(table);
  add_preloads(table);
  add_scatter(table);
  add_prevailing(table);
}

}  // namespace proofstand::sources

// Torque tools, hands, measuring.
#include "sim/base/math.h"
#include "sim/physics/hand_strength.h"
#include "sim/physics/hard_stop.h"
#include "sim/physics/instrument.h"
#include "sim/physics/torque_tool.h"
#include "sim/physics/wear_profile.h"
#include "tests/sources/cases.h"

namespace proofstand::sources {

using namespace physics;

void add_tool_cases(Table& t) {
  t.open("43", "published calculator for wrench extensions", kPublished);
  t.check("setting for 6.2 N·m with an adapter", setting_for_extension_nm(6.2, 0.200, 0.030, 0.0), 5.391, 0.002, "N·m");
  t.check("uncorrected", torque_with_extension_nm(6.2, 0.200, 0.030, 0.0), 7.130, 0.002, "N·m");
  t.check("uncorrected, at 45 degrees", torque_with_extension_nm(6.2, 0.200, 0.030, base::radians(45.0)), 6.858, 0.002,
          "N·m");
  t.open("44", "published example, 80 N·m, 400 mm, 50 mm", kPublished);
  t.check("setting", setting_for_extension_nm(80.0, 0.400, 0.050, 0.0), 71.11, 0.01, "N·m");
  t.open("45", "ISO 6789 class A", kPublished);
  t.check("small tool set to 6.2, least", click_torque_nm(6.2, tool_error(kToolClassSmall_1, -9.0, -9.0)), 5.828, 1e-3,
          "N·m");
  t.check("small tool set to 6.2, most", click_torque_nm(6.2, tool_error(kToolClassSmall_1, 9.0, 9.0)), 6.572, 1e-3,
          "N·m");
  t.check("large tool set to 40, least", click_torque_nm(40.0, tool_error(kToolClassLarge_1, -9.0, -9.0)), 38.4, 1e-3,
          "N·m");
  t.check("large tool set to 40, most", click_torque_nm(40.0, tool_error(kToolClassLarge_1, 9.0, 9.0)), 41.6, 1e-3,
          "N·m");
  t.open("45a", "force at a distance, as workshops quote it", kPractice);
  t.check("11 lbf at 4 in", lever_torque_nm(11.0 * kPoundForce_n, 4.0 * kInch_m, base::kPi / 2.0), 4.97, 0.005, "N·m");
  t.check("44 lbf at 8 in", lever_torque_nm(44.0 * kPoundForce_n, 8.0 * kInch_m, base::kPi / 2.0), 39.8, 0.05, "N·m");
  t.open("136", "published dynamometer study, 231 +- 67.7 N, normal law", kPublished);
  t.check("grip, 5th percentile", normal_percentile_si(231.0, 67.7, 0.05), 119.6, 0.1, "N");
  t.check("grip, 95th percentile", normal_percentile_si(231.0, 67.7, 0.95), 342.4, 0.1, "N");
  t.check("grip in the table, 5th", effort_at_si(HandEffort::PowerGrip, 0.05), 119.6, 0.6, "N");
  t.check("grip in the table, 95th", effort_at_si(HandEffort::PowerGrip, 0.95), 342.4, 0.6, "N");
  t.open("136a", "Ergonomics 50 (2007) 1404-1418: 4.7 to 5.9 of 12 men", kPublished);
  t.verdict("a median hand on a straight driver stays below it", effort_at_si(HandEffort::DriverTwist, 0.5) < 4.7,
            true);
  t.open("137", "Arch. Neurol. 39 (1982) 358-362: 0.01 g at 7 Hz", kPublished);
  t.check("tremor", tremor_m(0.01 * kGravity_m_s2, 7.0) * 1e3, 0.05069, 1e-4, "mm");
  t.open("138", "statics; pinch from memory", kMemory);
  t.check("two fingers on a 9 mm head, weak", finger_torque_nm(25.0, 0.5, 0.009), 0.1125, 1e-12, "N·m");
  t.check("two fingers, median", finger_torque_nm(50.0, 0.5, 0.009), 0.2250, 1e-12, "N·m");
  t.check("two fingers, strong", finger_torque_nm(90.0, 0.5, 0.009), 0.4050, 1e-12, "N·m");
  t.open("139", "statics", kMemory);
  t.check("force for 6.2 N·m at 90 mm", hand_force_n(6.2, 0.090), 68.89, 0.01, "N");
  t.open("140", "stop after a click; figures of hands", kPractice);
  const double rates_deg[] = {10.0, 20.0, 40.0};
  const double reactions_s[] = {0.15, 0.25, 0.30};
  const double stops_deg[] = {1.583, 5.333, 13.333};
  const double over_nm[] = {0.0, 1.167, 5.167};
  for (int i = 0; i < 3; ++i) {
    const double stop_rad = stop_after_click_rad(base::radians(rates_deg[i]), reactions_s[i], base::radians(600.0));
    t.check("goes on after the click", base::degrees(stop_rad), stops_deg[i], 1e-3, "deg");
    t.check("torque beyond the click", over_pull_nm(stop_rad, base::radians(3.0), base::degrees(0.5)), over_nm[i], 1e-3,
            "N·m");
  }
}

void add_measure_cases(Table& t) {
  const WearProfile worn = make_wear_profile(0.160, 0.00180, 0.00032);
  t.open("46", "geometry of the lip", kMemory);
  t.check("jaws across the rim", shown_m(jaw_reads_m(worn, JawKind::Blade, 0.072, 0.0, 0.080), 0.0, 0.0, 0.00002) * 1e3,
          1.80, 1e-9, "mm");
  t.check("tips inside the lip",
          shown_m(jaw_reads_m(worn, JawKind::Point, 0.072, 0.001, 0.080), 0.0, 0.0, 0.00002) * 1e3, 1.48, 1e-9, "mm");
  t.open("46a", "published note on measuring inside the lip", kPublished);
  t.check("6.35 mm anvil in the worn track",
          jaw_reads_m(worn, JawKind::Anvil, 0.072, size_m(Size::AnvilDiameter), 0.080) * 1e3, 1.48, 1e-9, "mm");
  t.open("47", "ISO 14253-1 idea (from memory)", kMemory);
  t.verdict("1.53 proven against 1.50", proven_above(0.00153, 0.00002, 0.0015), true);
  t.verdict("1.51 proven against 1.50", proven_above(0.00151, 0.00002, 0.0015), false);
  t.open("48", "geometry", kMemory);
  t.check("scale 30 mm off, 0.05 degrees", abbe_error_m(0.030, base::radians(0.05)) * 1e3, 0.0262, 1e-4, "mm");
  t.open("48a", "ordinary 0.5 mm screw with 50 divisions", kPublished);
  t.check("1.78 on a micrometer, sleeve", micrometer_scale(0.00178).sleeve_m * 1e3, 1.5, 1e-9, "mm");
  t.check("1.78 on a micrometer, thimble", micrometer_scale(0.00178).thimble_1, 28.0, 1e-6, "1");
  t.open("152", "own back-calculation", kPractice);
  const double swept_m2 = swept_area_m2(0.065, 0.080, 0.15);
  t.check("swept area of a 160 mm rotor", swept_m2 * 1e6, 5808.0, 0.2, "mm2");
  t.check("wear by 10 MJ", wear_from_energy_m(10e6, swept_m2) * 1e3, 0.1205, 1e-3, "mm");
  t.open("154", "own shape", kMemory);
  const WearProfile profile = make_wear_profile(0.160, 0.0018, 0.0003);
  t.check("thickness in the middle", thickness_at_m(profile, 0.072) * 1e3, 1.5, 1e-9, "mm");
  t.check("thickness at the edge of the pad", thickness_at_m(profile, 0.07875) * 1e3, 1.65, 1e-9, "mm");
  t.check("thickness of the lip", thickness_at_m(profile, 0.0795) * 1e3, 1.8, 1e-9, "mm");
}

}  // namespace proofstand::sources

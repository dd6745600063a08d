// Drive recess, starting a thread, lockring.
#include "sim/base/math.h"
#include "sim/physics/drive_recess.h"
#include "sim/physics/hard_stop.h"
#include "sim/physics/lockring.h"
#include "sim/physics/thread_start.h"
#include "tests/sources/cases.h"

namespace proofstand::sources {
namespace {

using namespace physics;

DriveFit fit_of(DriveTool tool, double depth_m, double tilt_deg) {
  DriveFit fit;
  fit.tool = tool;
  fit.depth_m = depth_m;
  fit.tilt_rad = base::radians(tilt_deg);
  return fit;
}

void add_recess(Table& t) {
  t.open("31", "own model on ISO 10664 sizes", kMemory);
  const DriveFit full = fit_of(DriveTool::Hexalobular25, 0.00152, 0.0);
  t.check("capacity at full depth", drive_capacity_nm(full), 8.835, 0.005, "N·m");
  t.open("32", "own model on ISO 10664 sizes", kMemory);
  t.check("half inserted", drive_capacity_nm(fit_of(DriveTool::Hexalobular25, 0.0007, 0.0)), 4.069, 0.005, "N·m");
  t.check("depth for 6.2 N·m", drive_depth_for_torque_m(full, 6.2) * 1e3, 1.0667, 1e-3, "mm");
  t.check("tilted 5 degrees", drive_capacity_nm(fit_of(DriveTool::Hexalobular25, 0.00152, 5.0)), 7.691, 0.005, "N·m");
  t.open("33", "own model on ISO 10664 sizes", kMemory);
  t.check("size 20 in the recess", drive_capacity_nm(fit_of(DriveTool::Hexalobular20, 0.0015, 0.0)), 4.536, 0.005,
          "N·m");
  t.open("33a", "ISO 10664 table", kPublished);
  t.check("size 25 across the points", size_m(Size::RecessPoint) * 1e3, 4.50, 0.0, "mm");
  t.check("size 25 across the hollows", size_m(Size::RecessFlat) * 1e3, 3.25, 0.0, "mm");
}

void add_ring(Table& t) {
  const char* kLong = "long form, NSTS 08307 Rev A 3.3; inputs common practice";
  const TorqueLevers usual = ring_levers(kRingDiameter_m, kRingPitch_m, kRingBearing_m, kRingFriction_1);
  t.open("36", kLong, kPublished);
  t.check("lockring at 40 N·m", preload_from_torque_n(40.0, usual), 7617.6, 0.5, "N");
  t.check("its nut factor", nut_factor_1(usual, kRingDiameter_m), 0.17503, 1e-4, "1");
  t.open("37", kLong, kPublished);
  t.check("at 0.11", preload_from_torque_n(40.0, ring_levers(kRingDiameter_m, kRingPitch_m, kRingBearing_m, 0.11)),
          10274.0, 1.0, "N");
  t.check("at 0.20", preload_from_torque_n(40.0, ring_levers(kRingDiameter_m, kRingPitch_m, kRingBearing_m, 0.20)),
          5757.0, 1.0, "N");
  t.check("10 N·m at 0.15", preload_from_torque_n(10.0, usual), 1904.0, 1.0, "N");
  t.open("38", "mirror of the long form", kMemory);
  t.check("lockring loosens", loosening_torque_nm(preload_from_torque_n(40.0, usual), usual), 37.58, 0.02, "N·m");

  RingTool spline;
  spline.draft_rad = base::radians(1.0);
  RingTool notch{0.022, 0.0004, 0.004, base::radians(3.0)};
  t.open("124", "statics; sizes common practice", kMemory);
  t.check("spline tool, rock at 8 mm", base::degrees(ring_tool_rock_rad(spline)), 2.432, 1e-3, "deg");
  t.check("spline tool, push-out at 8 mm", ring_push_out_n(spline, 40.0, 0.12), 0.0, 0.0, "N");
  spline.depth_m = 0.0015;
  t.check("spline tool, rock at 1.5 mm", base::degrees(ring_tool_rock_rad(spline)), 8.595, 1e-3, "deg");
  t.check("spline tool, push-out at 1.5 mm", ring_push_out_n(spline, 40.0, 0.12), 106.5, 0.1, "N");
  t.open("125", "statics; sizes common practice", kMemory);
  t.check("notch tool, push-out at 4 mm", ring_push_out_n(notch, 40.0, 0.12), 60.38, 0.05, "N");
  notch.depth_m = 0.002;
  t.check("notch tool, push-out at 2 mm", ring_push_out_n(notch, 40.0, 0.12), 245.60, 0.05, "N");
  t.open("126", "statics; sizes common practice", kMemory);
  t.check("spline tool, safe depth", ring_safe_depth_m(spline, 0.12) * 1e3, 1.954, 1e-3, "mm");
  t.check("notch tool, safe depth", ring_safe_depth_m(notch, 0.12) * 1e3, 5.955, 1e-3, "mm");
  t.open("127", "statics", kMemory);
  t.check("notches, sixteen bear", ring_flank_pressure_pa(40.0, 0.022, 6e-6, 16) / 1e6, 18.94, 0.01, "MPa");
  t.check("notches, two bear", ring_flank_pressure_pa(40.0, 0.022, 6e-6, 2) / 1e6, 151.52, 0.01, "MPa");
  t.open("128", "statics", kMemory);
  t.check("held at the tyre", hold_at_tyre_n(40.0, 0.34), 117.65, 0.01, "N");
  t.check("a standing wheel holds", floor_hold_nm(2.0, 0.7, 0.34, kGravity_m_s2), 4.670, 0.01, "N·m");
}

}  // namespace

void add_drive_cases(Table& table) {
  add_recess(table);
  add_ring(table);
}

void add_thread_start_cases(Table& t) {
  struct Row {
    const char* name;
    double diameter_m;
    double pitch_m;
    double tilt_deg;
  };
  const Row rows[] = {{"M5x0.8", 0.005, 0.0008, 5.102},
                      {"M6x1", 0.006, 0.001, 5.339},
                      {"M12x1.5", 0.012, 0.0015, 3.891},
                      {"M30x1", 0.030, 0.001, 0.976},
                      {"M44x1", 0.044, 0.001, 0.661}};
  t.open("117", "geometry", kMemory);
  for (const Row& row : rows) {
    const double middle_m = compute_thread(row.diameter_m, row.pitch_m).pitch_diameter_m;
    t.check(std::string(row.name) + ", half-pitch tilt", base::degrees(half_pitch_tilt_rad(row.pitch_m, middle_m)),
            row.tilt_deg, 1e-3, "deg");
  }
  const double m5_m = compute_thread(0.005, 0.0008).pitch_diameter_m;
  const double m30_m = compute_thread(0.030, 0.001).pitch_diameter_m;
  const auto start = [](double tilt_deg, double phase_1, bool back) {
    StartAttempt s;
    s.tilt_rad = base::radians(tilt_deg);
    s.phase_1 = phase_1;
    s.turned_back = back;
    return s;
  };
  t.open("118", "own geometric argument", kMemory);
  t.check("M5, misregistration at 3 degrees", start_misregistration_1(start(3.0, 0.8, false), 0.0008, m5_m), 0.5870,
          1e-4, "1");
  t.check("M5, misregistration at 2 degrees", start_misregistration_1(start(2.0, 0.8, false), 0.0008, m5_m), 0.3911,
          1e-4, "1");
  t.check("M5, misregistration at 5 degrees", start_misregistration_1(start(5.0, 0.8, false), 0.0008, m5_m), 0.9800,
          1e-4, "1");
  t.verdict("M5, 3 degrees, not turned back: crosses", start_crosses(start(3.0, 0.8, false), 0.0008, m5_m), true);
  t.verdict("M5, 3 degrees, turned back: crosses", start_crosses(start(3.0, 0.8, true), 0.0008, m5_m), false);
  t.verdict("M5, 2 degrees, not turned back: crosses", start_crosses(start(2.0, 0.99, false), 0.0008, m5_m), false);
  t.verdict("M5, 5 degrees, turned back: crosses", start_crosses(start(5.0, 0.0, true), 0.0008, m5_m), true);
  t.open("119", "own geometric argument", kMemory);
  t.check("M30x1, misregistration at 0.6 degrees", start_misregistration_1(start(0.6, 0.7, false), 0.001, m30_m),
          0.6147, 1e-4, "1");
  t.verdict("M30x1, not turned back: crosses", start_crosses(start(0.6, 0.7, false), 0.001, m30_m), true);
  t.verdict("M30x1, turned back: crosses", start_crosses(start(0.6, 0.7, true), 0.001, m30_m), false);
  t.open("120", "geometry", kMemory);
  const double free_deg[] = {8.881, 4.467, 2.981, 1.790};
  const int turns[] = {1, 2, 3, 5};
  for (int i = 0; i < 4; ++i) {
    t.check("free tilt after " + std::to_string(turns[i]) + " turns",
            base::degrees(free_tilt_rad(0.000125, 0.0008, turns[i])), free_deg[i], 1e-3, "deg");
  }
  t.open("121", "crossed start in aluminium", kPractice);
  const double crossed_nm[] = {1.155, 2.655, 4.0, 4.0};
  for (int turn = 1; turn <= 4; ++turn) {
    t.check("crossed torque at turn " + std::to_string(turn), crossed_torque_nm(turn), crossed_nm[turn - 1], 1e-12,
            "N·m");
  }
}

}  // namespace proofstand::sources

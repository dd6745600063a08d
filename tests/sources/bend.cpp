// Bending of a rotor. All of it rests on own finite-element results and own derivations: nothing published was found.
#include "sim/base/math.h"
#include "sim/physics/rotor_bend.h"
#include "sim/physics/runout.h"
#include "tests/sources/cases.h"

namespace proofstand::sources {
namespace {

using namespace physics;

constexpr char kFit[] = "fit to own finite-element results";
constexpr double kBetween_rad = base::kPi / 6.0;

RotorPlate plate(double middle_m) {
  RotorPlate p;
  p.middle_radius_m = middle_m;
  return p;
}

double runout_mm(const RotorShape& shape) { return total_runout_m(shape, 0.072, 360) * 1e3; }

// a wobble of 0.25 mm amplitude with these sets, in mm, at 0 and at 180 degrees
RotorShape wobble(double first_mm, double second_mm) {
  RotorShape shape;
  shape.seat = {0.00025 / 0.072, 0.0, 0.0};
  shape.humps.push_back({0.0, first_mm * 1e-3, 0.0});
  if (second_mm > 0.0 || second_mm < 0.0) shape.humps.push_back({base::kPi, second_mm * 1e-3, 0.0});
  return shape;
}

void add_pulls(Table& t) {
  const RotorPlate small = plate(0.072);
  const RotorPlate large = plate(0.082);
  RotorPlate worn = small;
  worn.thickness_m = 0.0015;
  RotorPlate slotted = small;
  slotted.slotted_1 = 0.9;
  RotorPlate soft = small;
  soft.yield_pa = 275e6;
  t.open("76", kFit, kMemory);
  t.check("stiffness, 160", rotor_stiffness_n_m(small) / 1e3, 59.20, 0.02, "N/mm");
  t.check("stiffness, 180", rotor_stiffness_n_m(large) / 1e3, 33.98, 0.02, "N/mm");
  t.check("stiffness, 160 worn to 1.5", rotor_stiffness_n_m(worn) / 1e3, 34.45, 0.02, "N/mm");
  t.check("stiffness, 160 slotted", rotor_stiffness_n_m(slotted) / 1e3, 53.28, 0.02, "N/mm");
  t.open("77", kFit, kMemory);
  t.check("yields at, 160 at an arm", first_yield_stroke_m(small, 0.0) * 1e3, 3.423, 0.002, "mm");
  t.check("yields at, 160 between", first_yield_stroke_m(small, kBetween_rad) * 1e3, 4.449, 0.002, "mm");
  t.check("yields at, 180 at an arm", first_yield_stroke_m(large, 0.0) * 1e3, 5.247, 0.002, "mm");
  t.check("yields at, annealed", first_yield_stroke_m(soft, 0.0) * 1e3, 0.856, 0.002, "mm");
  const double yield_m = first_yield_stroke_m(small, 0.0);
  t.open("82", kFit, kMemory);
  const double factors[] = {1.0, 1.5, 2.0, 3.0};
  const double sets_mm[] = {0.0, 0.0314, 0.5545, 2.0947};
  for (int i = 0; i < 4; ++i) {
    t.check("set after a pull, 160 at an arm", set_after_stroke_m(small, 0.0, factors[i] * yield_m) * 1e3, sets_mm[i],
            1e-3, "mm");
  }
  t.open("83", kFit, kMemory);
  t.check("set, 180 at an arm", set_after_stroke_m(large, 0.0, 2.0 * first_yield_stroke_m(large, 0.0)) * 1e3, 1.1026,
          1e-3, "mm");
  t.check("set, 160 between",
          set_after_stroke_m(small, kBetween_rad, 2.0 * first_yield_stroke_m(small, kBetween_rad)) * 1e3, 0.8493, 1e-3,
          "mm");
  RotorPlate softer = small;
  softer.yield_pa = 900e6;
  t.open("84", kFit, kMemory);
  t.check("5 mm at 900 MPa", set_after_stroke_m(softer, 0.0, 0.005) * 1e3, 0.2072, 1e-3, "mm");
  t.check("5 mm at 1100 MPa", set_after_stroke_m(small, 0.0, 0.005) * 1e3, 0.0175, 1e-3, "mm");
  t.open("85", "own finite-element result, isotropic hardening", kMemory);
  const double once_m = set_after_pull_m(small, 0.0, 0.0, 0.0056, 0.0);
  const double again_m = set_after_pull_m(small, 0.0, once_m, 0.0056 - once_m, 0.0);
  const double back_m = set_after_pull_m(small, 0.0, again_m, -0.0056, 0.0);
  t.check("first pull", once_m * 1e3, 0.1107, 1e-3, "mm");
  t.check("same peak again", again_m * 1e3, 0.1107, 1e-3, "mm");
  t.check("pulled back", back_m * 1e3, -0.0546, 1e-3, "mm");
  t.open("87", kFit, kMemory);
  t.check("set with the tool", set_after_stroke_m(small, 0.0, 0.00824, 1.28) * 1e3, 0.4797, 1e-3, "mm");
  t.open("88", kFit, kMemory);
  const ToolBend tool_small = tool_bend(small, 50.0, 0.120, 0.080);
  const ToolBend tool_large = tool_bend(large, 50.0, 0.120, 0.090);
  t.check("tool, track 160", tool_small.track_m * 1e3, 3.766, 0.01, "mm");
  t.check("tool, handle 160", tool_small.handle_m * 1e3, 21.34, 0.01, "mm");
  t.check("tool, track 180", tool_large.track_m * 1e3, 5.658, 0.01, "mm");
  t.check("tool, handle 180", tool_large.handle_m * 1e3, 27.11, 0.01, "mm");
  t.open("92", kFit, kMemory);
  t.check("plastic strain at 2 yield strokes", plastic_strain_1(2.0), 0.0095, 1e-4, "1");
  t.check("plastic strain at 3 yield strokes", plastic_strain_1(3.0), 0.0288, 1e-4, "1");
  t.open("93", "strain-life power law", kMemory);
  t.check("cycles at a range of 0.02", cycles_to_crack_1(0.02, 0.30), 144.8, 0.1, "1");
  t.check("cycles at a range of 0.06", cycles_to_crack_1(0.06, 0.30), 23.2, 0.1, "1");
}

void add_shapes(Table& t) {
  t.open("78", kFit, kMemory);
  const double arm_deg[] = {0, 30, 60, 90, 120, 180};
  const double arm[] = {1.0, 0.7175, 0.2680, 0.0130, -0.0770, -0.0620};
  for (int i = 0; i < 6; ++i) {
    t.check("shape at an arm, " + std::to_string(static_cast<int>(arm_deg[i])) + " degrees",
            bend_shape_1(base::radians(arm_deg[i]), 0.0), arm[i], 1e-4, "1");
  }
  t.open("86", kFit, kMemory);
  const double gap_deg[] = {0, 45, 90, 180};
  const double gap[] = {1.0, 0.6230, 0.0680, -0.0880};
  for (int i = 0; i < 4; ++i) {
    t.check("shape between arms, " + std::to_string(static_cast<int>(gap_deg[i])) + " degrees",
            bend_shape_1(base::radians(gap_deg[i]), kBetween_rad), gap[i], 1e-4, "1");
  }
  t.open("79", "superposition", kMemory);
  RotorShape both;
  both.humps.push_back({base::radians(40.0), 0.0003, 0.0});
  both.humps.push_back({base::radians(200.0), -0.0002, 0.0});
  const double at_deg[] = {0, 90, 180};
  const double at_mm[] = {0.1800, 0.1329, -0.1954};
  for (int i = 0; i < 3; ++i) {
    t.check("two sets, displacement", lateral_m(both, 0.072, base::radians(at_deg[i])) * 1e3, at_mm[i], 2e-4, "mm");
  }
  t.check("two sets, runout", runout_mm(both), 0.5329, 2e-4, "mm");
  t.open("80", "search over own shape", kMemory);
  double best_set = 0.0;
  double best_mm = runout_mm(wobble(0.0, 0.0));
  for (int i = 1; i <= 140; ++i) {
    const double left_mm = runout_mm(wobble(-0.005 * i, 0.0));
    if (left_mm < best_mm) {
      best_mm = left_mm;
      best_set = 0.005 * i;
    }
  }
  t.check("best single pull on a wobble, set", best_set, 0.470, 0.0051, "mm");
  t.check("best single pull on a wobble, leaves", best_mm, 0.2316, 1e-3, "mm");
  t.open("81", "search over own shape", kMemory);
  double best_sum = 0.0;
  double pair_mm = 1.0;
  for (int i = 15; i <= 40; ++i) {
    for (int k = 15; k <= 40; ++k) {
      const double left_mm = runout_mm(wobble(-0.01 * i, 0.01 * k));
      if (left_mm < pair_mm - 1e-9) {
        pair_mm = left_mm;
        best_sum = 0.01 * (i + k);
      }
    }
  }
  t.check("best opposite pair, both sets together", best_sum, 0.53, 0.0101, "mm");
  t.check("best opposite pair, leaves", pair_mm, 0.0693, 1e-3, "mm");
  double square = 0.0;
  double along = 0.0;
  for (int i = 0; i < 360; ++i) {
    const double angle_rad = base::radians(i);
    const double g = bend_shape_1(angle_rad, 0.0);
    square += g * g / 360.0;
    along += 0.25 * base::cos_rad(angle_rad) * g / 360.0;
  }
  t.open("91", "projection", kMemory);
  t.check("mean square of the shape", square, 0.18328, 1e-4, "1");
  t.check("projection of the wobble", -along / square, -0.3151, 1e-4, "mm");
  t.open("97", kFit, kMemory);
  t.check("a bend of 0.30 at 78 mm", 0.30 * bend_radial_1(0.078, 0.072), 0.3316, 1e-4, "mm");
  t.check("a bend of 0.30 at 66 mm", 0.30 * bend_radial_1(0.066, 0.072), 0.2684, 1e-4, "mm");
}

void add_kinks(Table& t) {
  const RotorPlate small = plate(0.072);
  t.open("89", "rectangular section without hardening", kMemory);
  t.check("turn at first yield", base::degrees(kink_yield_turn_rad(small, 0.015)), 5.2521, 1e-3, "deg");
  const double turns_deg[] = {5.0, 8.0, 12.0};
  const double kinks_deg[] = {0.0, 1.2537, 4.6249};
  for (int i = 0; i < 3; ++i) {
    t.check("kink that stays", base::degrees(kink_rad(small, 0.015, base::radians(turns_deg[i]))), kinks_deg[i], 1e-3,
            "deg");
  }
  t.check("moment of first yield", kink_yield_moment_nm(small, 0.015), 8.910, 1e-3, "N·m");
  t.open("90", kFit, kMemory);
  const double at_deg[] = {0, 12, 30, 75, 180};
  const double at_arm[] = {0.9890, 0.6401, 0.0932, -0.2967, 0.0317};
  const double between[] = {0.9930, 0.6675, 0.1813, -0.2201, 0.0172};
  for (int i = 0; i < 5; ++i) {
    t.check("kink at an arm, shape", kink_shape_1(base::radians(at_deg[i]), true), at_arm[i], 1e-4, "1");
    t.check("kink between arms, shape", kink_shape_1(base::radians(at_deg[i]), false), between[i], 1e-4, "1");
  }
}

}  // namespace

void add_bend_cases(Table& table) {
  add_pulls(table);
  add_shapes(table);
  add_kinks(table);
}

}  // namespace proofstand::sources

// Seat, interaction, settling, slip, runout of the fitted rotor.
#include "sim/base/math.h"
#include "sim/physics/bolt_curve.h"
#include "sim/physics/clamp_slip.h"
#include "sim/physics/interaction.h"
#include "sim/physics/preload.h"
#include "sim/physics/runout.h"
#include "sim/physics/seating.h"
#include "sim/physics/settling.h"
#include "tests/sources/cases.h"

namespace proofstand::sources {
namespace {

using namespace physics;

constexpr double kCircle_m = 0.022;

void add_slip(Table& t) {
  const std::vector<double> six(6, 5000.0);
  t.open("39", "friction law", kMemory);
  t.check("capacity of six bolts at 5 kN", friction_capacity_nm(six, 0.15, kCircle_m), 99.0, 0.01, "N·m");
  t.open("40", "NASA-STD-5020B equation 85 as torque", kPublished);
  t.check("capacity", friction_capacity_nm(std::vector<double>(6, 5039.7), 0.15, kCircle_m), 99.79, 0.01, "N·m");
  t.check("margin against 80 N·m", slip_margin_1(5039.7, 6, 0.15, kCircle_m, 1.0, 80.0), 0.247, 0.01, "1");
  t.open("41", "statics", kMemory);
  t.check("shear on six bolts", bolt_shear_n(150.0, 99.0, kCircle_m, 6), 386.0, 1.0, "N");
  t.check("shear on two", bolt_shear_n(150.0, 99.0, kCircle_m, 2), 1159.0, 1.0, "N");
  t.check("shear on one", bolt_shear_n(150.0, 99.0, kCircle_m, 1), 2318.0, 1.0, "N");
  t.open("41a", "EN 1993-1-8 factor 0.6", kPublished);
  t.check("single shear strength, 8.8", bolt_shear_strength_n(800e6, 0.0040185), 6088.0, 2.0, "N");
  t.open("42", "geometry", kMemory);
  t.check("slip angle of 0.15 mm", base::degrees(slip_angle_rad(0.00015, kCircle_m)), 0.3907, 0.001, "deg");
  t.check("same at the track", slip_angle_rad(0.00015, kCircle_m) * 72.0, 0.491, 0.001, "mm");
  t.open("130", "mechanics; sizes common practice", kMemory);
  const SlipOutcome knock = slip_under(20.0, {0.0}, 0.15, 0.0165, 0.0001, 1);
  t.check("knock over 0.10 mm at 16.5 mm, angle", base::degrees(knock.slip_rad), 0.3472, 1e-3, "deg");
  t.check("its energy", knock.knock_j, 0.1212, 1e-4, "J");
  t.check("its speed", knock_speed_m_s(knock.knock_j, kRotorInertia_kg_m2, 0.0165), 0.5038, 1e-3, "m/s");
}

void add_seat(Table& t) {
  t.open("35", "loss = embedding over compliance", kMemory);
  t.check("three micrometres settle", embedding_loss_n(3e-6, kJointCompliance_m_n), 1083.0, 1.0, "N");
  t.open("74", "own finite-element stiffness", kMemory);
  t.check("clamp over a gap of 0.05 mm", interface_clamp_n(6285.0, 0.00005), 5935.0, 0.5, "N");
  const std::vector<double> soft = interaction_matrix_1(soft_layer_interaction(), 6);
  std::vector<double> preload_n(6, 0.0);
  std::vector<bool> locked(6, false);
  const std::size_t order[] = {0, 3, 1, 4, 2, 5};
  const double passes_n[2][6] = {{5138.3, 5564.7, 5961.4, 5198.1, 5611.8, 6000.0},
                                 {5957.9, 5989.9, 5999.5, 5963.4, 5993.9, 6000.0}};
  t.open("73", "elastic interaction, J. Pressure Vessel Technol. 114 (1992)", kMemory);
  for (int pass = 0; pass < 2; ++pass) {
    for (const std::size_t bolt : order) {
      preload_n = pull_one_n(soft, preload_n, locked, bolt, 6000.0);
      locked[bolt] = true;
    }
    for (std::size_t b = 0; b < 6; ++b) {
      t.check("pass " + std::to_string(pass + 1) + ", bolt " + std::to_string(b + 1), preload_n[b], passes_n[pass][b],
              1.0, "N");
    }
  }
  t.open("94", "least-squares plane", kMemory);
  const std::vector<double> one{0.00005, 0, 0, 0, 0, 0};
  const std::vector<double> two{0.00005, 0.00005, 0, 0, 0, 0};
  t.check("grit on one boss", fit_tilt(one, kCircle_m).size_rad(), 0.000758, 1e-6, "rad");
  t.check("grit on two neighbours", fit_tilt(two, kCircle_m).size_rad(), 0.001312, 1e-6, "rad");
  t.check("grit on opposite bosses", fit_tilt({0.00005, 0, 0, 0.00005, 0, 0}, kCircle_m).size_rad(), 0.0, 1e-6, "rad");
  t.open("95", "own finite-element gain", kMemory);
  t.check("runout, grit on one boss", tilt_runout_m(kTiltGain_1 * fit_tilt(one, kCircle_m).size_rad(), 0.072) * 1e3,
          0.0905, 2e-4, "mm");
  t.check("runout, grit on two", tilt_runout_m(kTiltGain_1 * fit_tilt(two, kCircle_m).size_rad(), 0.072) * 1e3, 0.1568,
          2e-4, "mm");
}

void add_runout(Table& t) {
  t.open("49", "geometry", kMemory);
  t.check("grit under a rigid disc", rigid_grit_runout_m(0.00005, kCircle_m, 0.0275, 0.072) * 1e3, 0.1455, 1e-4, "mm");
  t.open("50", "geometry", kMemory);
  t.check("flange out by 0.02 over 55 mm", tilt_runout_m(flange_tilt(0.00002, 0.055, 1.0).size_rad(), 0.072) * 1e3,
          0.0524, 1e-4, "mm");
  t.open("51", "cosine error", kMemory);
  t.check("stylus at 15 degrees", dial_shows_m(0.0002, base::radians(15.0)) * 1e3, 0.2071, 1e-4, "mm");
  t.open("96", "geometry", kMemory);
  const double third_rad = base::radians(120.0);
  const Tilt sum{0.0004 + 0.0003 * base::cos_rad(third_rad), 0.0003 * base::sin_rad(third_rad), 0.0};
  t.check("two tilts together", sum.size_rad(), 0.000361, 1e-6, "rad");
  RotorShape shape;
  shape.seat = {0.0004, 0.0, 0.0};
  shape.flange = {0.0003 * base::cos_rad(third_rad), 0.0003 * base::sin_rad(third_rad), 0.0};
  t.check("runout of both", total_runout_m(shape, 0.072, 3600) * 1e3, 0.05192, 1e-5, "mm");
}

}  // namespace

void add_joint_cases(Table& table) {
  add_slip(table);
  add_seat(table);
  add_runout(table);
}

}  // namespace proofstand::sources

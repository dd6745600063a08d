// Pads, stops and heat.
#include "sim/base/math.h"
#include "sim/physics/hard_stop.h"
#include "sim/physics/heat.h"
#include "sim/physics/pad_friction.h"
#include "tests/sources/cases.h"

namespace proofstand::sources {
namespace {

using namespace physics;

void add_pads(Table& t) {
  t.open("52", "ordinary disc brake theory", kPublished);
  t.check("effective radius, run in", effective_radius_worn_m(0.080, 0.064) * 1e3, 72.0, 0.01, "mm");
  t.check("effective radius, new", effective_radius_new_m(0.080, 0.064) * 1e3, 72.30, 0.01, "mm");
  const double torque_nm = brake_torque_nm(0.45, 2000.0, 0.072);
  t.open("53", "T = 2 mu F r", kPublished);
  t.check("brake torque", torque_nm, 129.6, 0.1, "N·m");
  t.check("force at the tyre", tyre_force_n(torque_nm, 0.34), 381.2, 0.1, "N");
  t.check("deceleration of 100 kg", tyre_force_n(torque_nm, 0.34) / 100.0, 3.81, 0.1, "m/s2");
  const PadRow organic = pad_row(PadKind::Organic);
  t.open("54", "boundary friction (from memory)", kMemory);
  t.check("oiled", brake_torque_nm(organic.bedded_1 * film_factor_1(1.0, organic.oiled_1), 2000.0, 0.072), 45.36, 0.01,
          "N·m");
  t.open("55", "covered share", kMemory);
  t.check("a third covered with oil", organic.bedded_1 * film_factor_1(0.3, organic.oiled_1), 0.36225, 1e-5, "1");
  t.open("56", "bedding; constants of practice", kPractice);
  const int stops[] = {0, 5, 10, 20, 30};
  const double frictions[] = {0.2500, 0.3511, 0.4011, 0.4381, 0.4471};
  for (int i = 0; i < 5; ++i) {
    t.check("friction after " + std::to_string(stops[i]) + " stops",
            bedding_friction_1(organic.fresh_1, organic.bedded_1, 1550.0 * stops[i], organic.bedding_energy_j),
            frictions[i], 1e-4, "1");
  }
  t.open("56a", "pad studies: water halves one, leaves sintered nearly as it was", kPublished);
  t.check("soaked, organic", water_factor_1(organic, 1.0), 0.5, 0.0, "1");
  t.check("soaked, sintered", water_factor_1(pad_row(PadKind::Sintered), 1.0), 0.9, 0.0, "1");
}

void add_stops(Table& t) {
  const double a_m_s2 = 0.5 * 9.81;
  t.open("67", "mechanics", kMemory);
  t.check("stop from 25 km/h at 0.5 g", stopping_distance_m(kStopSpeed_m_s, a_m_s2), 4.916, 0.002, "m");
  t.check("with half a second", stopping_distance_m(kStopSpeed_m_s, a_m_s2, 0.5), 8.388, 0.002, "m");
  t.open("68", "Maximal Braking on a Standard Bicycle (2005)", kPublished);
  t.check("pitch limit", pitch_limit_m_s2(0.60, 0.95) / kGravity_m_s2, 0.6316, 1e-4, "g");
  t.open("69", "worked example of the same", kPublished);
  t.check("0.7 g on a 10 % descent", pitch_limit_m_s2(0.7, 1.0, 0.1) / kGravity_m_s2, 0.6, 1e-12, "g");
  t.open("70", "16 CFR 1512.5", kPublished);
  const double implied_m_s2 = implied_deceleration_m_s2(15.0 * 0.44704, 4.57);
  t.check("implied deceleration", implied_m_s2, 4.92, 0.005, "m/s2");
  t.check("same in g", implied_m_s2 / kGravity_m_s2, 0.502, 0.005, "g");
  t.open("71", "EN 14766 4.6.7.5.1.9", kPublished);
  t.check("corrected distance", corrected_distance_m(6.40, 26.0 / 3.6, 25.0 / 3.6), 5.917, 0.002, "m");
  t.open("72", "ISO 4210-4", kPublished);
  t.check("corrected force", corrected_force_n(225.0, 184.0, 180.0), 220.1, 0.05, "N");
  t.open("72a", "SAE 2020-01-0876: 0.40 to 0.71 g measured", kPublished);
  t.check("hard stop of the usual brake", hard_stop(HardStopSetup{}).deceleration_m_s2 / kGravity_m_s2, 0.555, 0.155,
          "g");
}

}  // namespace

void add_brake_cases(Table& table) {
  add_pads(table);
  add_stops(table);
}

void add_heat_cases(Table& t) {
  t.open("58", "mechanics", kMemory);
  t.check("100 kg at 25 km/h", kinetic_energy_j(100.0, kStopSpeed_m_s), 2411.3, 0.1, "J");
  t.check("with rotating parts", kinetic_energy_j(100.0, kStopSpeed_m_s, 0.02), 2459.5, 0.1, "J");
  t.open("59", "heat balance; shares from memory", kMemory);
  t.check("rise by a stop from 25 km/h",
          stop_rise_k(kinetic_energy_j(100.0, kStopSpeed_m_s, 0.02), 0.70 * 0.90, 0.110, 470.0), 29.97, 0.02, "K");
  t.check("rise by a stop from 40 km/h",
          stop_rise_k(kinetic_energy_j(100.0, 40.0 / 3.6, 0.02), 0.70 * 0.90, 0.110, 470.0), 76.72, 0.02, "K");
  t.open("60", "published estimate of a stop, printed 67 K", kPublished);
  t.check("all heat into 150 g", stop_rise_k(kinetic_energy_j(100.0, 10.0), 1.0, 0.150, 500.0), 66.7, 0.1, "K");
  const DescentPower power = descent_power(100.0, 0.10, 20.0 / 3.6, 0.5, 1.2, 0.006, 9.81);
  t.open("61", "mechanics", kMemory);
  t.check("descent, gross", power.gross_w, 542.3, 0.2, "W");
  t.check("descent, net", power.net_w, 458.2, 0.2, "W");
  t.open("62", "lumped heating", kMemory);
  t.check("rise after a minute", lumped_rise_k(206.17, 1.2, 51.7, 60.0), 129.1, 0.1, "K");
  t.check("rise in the end", lumped_rise_k(206.17, 1.2, 51.7, 1e5), 171.8, 0.1, "K");
  t.open("63", "similarity numbers", kMemory);
  t.check("Fourier number of a stop", fourier_1(25.0, 7750.0, 470.0, 0.0009, 2.0), 16.95, 0.17, "1");
  t.check("Biot number", biot_1(50.0, 0.0009, 25.0), 0.0018, 1.8e-5, "1");
  t.open("64", "laminar plate", kMemory);
  t.check("convection at 10 m/s", plate_convection_w_m2_k(10.0, 0.16, 26.4e-6, 0.69, 0.0338), 30.5, 0.15, "W/m2K");
  t.open("65", "Stefan-Boltzmann law", kMemory);
  t.check("radiation at 200 C", radiation_w_m2_k(0.6, 473.15, 293.15), 8.08, 0.01, "W/m2K");
  t.open("66", "contact of half spaces", kMemory);
  t.check("heat share of the disc",
          heat_share_1(base::sqrt_1(25.0 * 7750.0 * 470.0), base::sqrt_1(1.0 * 2200.0 * 1000.0)), 0.8655, 1e-3, "1");
  t.open("149", "geometric series", kMemory);
  t.check("stops every 20 s", repeated_stops_rise_k(29.97, 20.0, 43.08), 80.70, 0.05, "K");
  t.check("hard stops every 30 s", repeated_stops_rise_k(76.72, 30.0, 43.08), 152.95, 0.05, "K");
  t.check("hard stops every 10 s", repeated_stops_rise_k(76.72, 10.0, 43.08), 370.35, 0.05, "K");
  double hot_c = 20.0;
  int count = 0;
  while (hot_c <= 250.0 && count < 100) {
    hot_c = 20.0 + (count == 0 ? 0.0 : cooled_rise_k(hot_c - 20.0, 1.2, 51.7, 10.0)) + 76.72;
    ++count;
  }
  t.open("150", "count of such stops", kMemory);
  t.check("stops until 250 C is passed", count, 5.0, 0.0, "1");
}

}  // namespace proofstand::sources

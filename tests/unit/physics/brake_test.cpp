// Danger: a rotor that never slips, or slips the wrong way, teaches the wrong side to turn it against the bolts.
#include <rapidcheck.h>

#include <cmath>

#include "sim/base/math.h"
#include "sim/physics/clamp_slip.h"
#include "sim/physics/hard_stop.h"
#include "sim/physics/heat.h"
#include "sim/physics/pad_friction.h"
#include "sim/physics/rotor_bend.h"
#include "sim/physics/runout.h"
#include "tests/support/catch.h"

using namespace proofstand;
using namespace proofstand::physics;

namespace {

double between(int low, int high) { return static_cast<double>(*rc::gen::inRange(low, high)); }

}  // namespace

TEST_CASE("drag pushes the rotor against the sense of rolling: clockwise for a rotor on the left") {
  CHECK(forward_sense(true) == 1);
  CHECK(drag_sense(forward_sense(true)) == -1);
  CHECK(drag_sense(forward_sense(false)) == 1);
}

TEST_CASE("a well clamped joint may still exceed its friction on a hard stop; play then decides the knock") {
  const std::vector<double> clamp_n(6, 5000.0);
  const HardStop stop = hard_stop(HardStopSetup{});
  const SlipOutcome turned = slip_under(stop.demand_nm, clamp_n, kSeatFrictionClean_1, 0.022, 0.0, 6);
  const SlipOutcome loose = slip_under(stop.demand_nm, clamp_n, kSeatFrictionClean_1, 0.022, 0.0002, 6);
  CHECK(turned.capacity_nm == Approx(99.0));
  CHECK(turned.slips);
  CHECK(turned.slip_rad == 0.0);
  CHECK(turned.knock_j == 0.0);
  CHECK(turned.shear_n > 0.0);
  CHECK(loose.slip_rad == Approx(0.0002 / 0.022));
  CHECK(loose.knock_j > 0.3);
  CHECK_FALSE(slip_under(50.0, clamp_n, kSeatFrictionClean_1, 0.022, 0.0002, 6).slips);
}

TEST_CASE("less clamp, less friction or more demand never makes a slip milder") {
  CHECK(rc::check("ordered", [] {
    const std::vector<double> clamp_n(6, between(0, 8000));
    const double demand_nm = between(0, 250);
    const double play_m = 1e-6 * between(0, 250);
    const SlipOutcome here = slip_under(demand_nm, clamp_n, 0.15, 0.022, play_m, 3);
    const SlipOutcome worse = slip_under(demand_nm + 5.0, clamp_n, 0.10, 0.022, play_m, 3);
    RC_ASSERT(worse.knock_j >= here.knock_j);
    RC_ASSERT(worse.shear_n >= here.shear_n);
    RC_ASSERT(here.knock_j >= 0.0);
    RC_ASSERT(here.slips || here.shear_n == 0.0);
  }));
  CHECK(preload_after_slips_n(5000.0, 0.00004, 100, false) == 5000.0);
  CHECK(preload_after_slips_n(5000.0, 0.0002, 100, false) < 4200.0);
  CHECK(preload_after_slips_n(5000.0, 0.0002, 100, true) > 4850.0);
  CHECK(play_angle_rad(0.0052, 0.005, 0.022) == Approx(0.0002 / 0.022));
}

TEST_CASE("a stop never beats what tyre and balance allow, and films make it longer") {
  HardStopSetup setup;
  const HardStop clean = hard_stop(setup);
  CHECK(clean.deceleration_m_s2 <= setup.deceleration_limit_m_s2);
  CHECK(clean.demand_nm <= clean.torque_nm + 1e-9);
  // trade figure: 170 to 210 N·m on a hard front stop (common practice, no source)
  CHECK(clean.demand_nm > 167.0);
  CHECK(clean.demand_nm < 215.0);
  setup.pad_friction_1 = 0.45 * 0.35;
  const HardStop oiled = hard_stop(setup);
  CHECK(oiled.distance_m > 2.0 * clean.distance_m);
  CHECK(oiled.energy_j == clean.energy_j);
}

TEST_CASE("pads never grow worse by bedding, and fade has a floor") {
  const PadRow pad = pad_row(PadKind::Organic);
  double before_1 = 0.0;
  for (double energy_j = 0.0; energy_j < 60e3; energy_j += 2e3) {
    const double friction_1 = bedding_friction_1(pad.fresh_1, pad.bedded_1, energy_j, pad.bedding_energy_j);
    CHECK(friction_1 > before_1);
    CHECK(friction_1 <= pad.bedded_1);
    before_1 = friction_1;
  }
  CHECK(fade_factor_1(pad, 400.0) == 1.0);
  CHECK(fade_factor_1(pad, 573.15) == Approx(0.85));
  CHECK(fade_factor_1(pad, 2000.0) == 0.5);
  CHECK(wetness_after_1(1.0, 3e3, 3e3) == Approx(std::exp(-1.0)));
  CHECK(cooled_rise_k(100.0, 1.2, 51.7, 0.0) == 100.0);
}

TEST_CASE("runout is a range: never negative, none for a true rotor, twice radius times tilt for a tilted one") {
  CHECK(total_runout_m({}, 0.072) == 0.0);
  CHECK(rc::check("range", [] {
    RotorShape shape;
    shape.seat = {1e-5 * between(-100, 100), 1e-5 * between(-100, 100), 0.0};
    shape.flange = flange_tilt(1e-6 * between(0, 50), 0.055, 0.01 * between(0, 628));
    const double tilt_rad = Tilt{shape.seat.x_1 + shape.flange.x_1, shape.seat.y_1 + shape.flange.y_1, 0.0}.size_rad();
    RC_ASSERT(std::fabs(total_runout_m(shape, 0.072) - 2.0 * 0.072 * tilt_rad) <= 1e-4 * 0.144 * tilt_rad + 1e-12);
    shape.humps.push_back({0.01 * between(0, 628), 1e-5 * between(-100, 100), 0.0});
    RC_ASSERT(total_runout_m(shape, 0.072) >= 0.0);
  }));
}

TEST_CASE("a bend is largest where it was pulled and grows outwards") {
  CHECK(rc::check("peak", [] {
    const double phase_rad = 0.01 * between(0, 52);
    const double away_rad = 0.01 * between(0, 628);
    RC_ASSERT(bend_shape_1(away_rad, phase_rad) <= bend_shape_1(0.0, phase_rad) + 1e-9);
    RC_ASSERT(std::fabs(bend_shape_1(away_rad, phase_rad) - bend_shape_1(-away_rad, phase_rad)) < 1e-12);
  }));
  CHECK(bend_radial_1(0.072, 0.072) == 1.0);
  CHECK(bend_radial_1(0.080, 0.072) == Approx(1.14).margin(0.03));
  RotorPlate plate;
  CHECK(set_after_stroke_m(plate, 0.0, 0.0) == 0.0);
  double before_m = -1.0;
  for (double stroke_m = 0.0; stroke_m < 0.012; stroke_m += 0.0001) {
    const double set_m = set_after_stroke_m(plate, 0.0, stroke_m);
    CHECK(set_m >= before_m);
    CHECK(set_m <= stroke_m);
    before_m = set_m;
  }
  CHECK(kink_rad(plate, 0.015, -0.14) == Approx(-kink_rad(plate, 0.015, 0.14)));
  CHECK(kink_height_m(base::radians(1.0), true, 0.072) == Approx(0.000204));
  CHECK(kink_height_m(base::radians(1.0), false, 0.082) == Approx(0.000336));
}

#include "sim/physics/rotor_bend.h"

#include "sim/base/assert.h"
#include "sim/base/math.h"

namespace proofstand::physics {
namespace {

constexpr double kArmRoot_m = 0.030;  // arms are free from here on

double arm_m(const RotorPlate& plate) { return plate.middle_radius_m - kArmRoot_m; }

double wave(double phase_rad) { return base::cos_rad(6.0 * phase_rad); }

// onset and width of the set law at a place
struct SetLaw {
  double straight_m, half_m, slope;
  [[nodiscard]] double set_m(double stroke_m) const {
    const double onset_m = straight_m - half_m;
    if (stroke_m <= onset_m) return 0.0;
    if (stroke_m >= straight_m + half_m) return slope * (stroke_m - straight_m);
    return slope * (stroke_m - onset_m) * (stroke_m - onset_m) / (4.0 * half_m);
  }
};

SetLaw set_law(const RotorPlate& plate, double phase_rad, double spread_1) {
  const double yield_m = first_yield_stroke_m(plate, phase_rad);
  return {spread_1 * (1.64 - 0.0107 * (1000.0 * arm_m(plate) - 42.0)) * yield_m,
          spread_1 * (0.335 - 0.04 * wave(phase_rad)) * yield_m, 0.49 - 0.04 * wave(phase_rad)};
}

double size_of(double value) { return value < 0.0 ? -value : value; }

}  // namespace

double rotor_stiffness_n_m(const RotorPlate& plate) {
  STAND_ASSERT(arm_m(plate) > 0.0 && plate.thickness_m > 0.0 && plate.arm_width_m > 0.0);
  return 59200.0 * base::pow_1(0.042 / arm_m(plate), 2.6) * base::pow_1(plate.thickness_m / 0.0018, 2.97) *
         base::pow_1(plate.arm_width_m / 0.009, 0.69) * plate.slotted_1;
}

double first_yield_stroke_m(const RotorPlate& plate, double phase_rad) {
  return 0.635 * plate.yield_pa * arm_m(plate) * arm_m(plate) / (plate.modulus_pa * plate.thickness_m) *
         (1.15 - 0.15 * wave(phase_rad));
}

double set_after_stroke_m(const RotorPlate& plate, double phase_rad, double stroke_m, double spread_1) {
  return set_law(plate, phase_rad, spread_1).set_m(stroke_m);
}

double set_after_pull_m(const RotorPlate& plate, double phase_rad, double before_m, double stroke_m, double reverse_1) {
  SetLaw law = set_law(plate, phase_rad, 1.0);
  const double sign = stroke_m < 0.0 ? -1.0 : 1.0;
  const bool same_way = before_m * stroke_m >= 0.0;
  if (same_way) {
    const double set_m = law.set_m(size_of(stroke_m) + size_of(before_m));
    return sign * (set_m > size_of(before_m) ? set_m : size_of(before_m));
  }
  // the way back begins earlier by twice the set and what the material loses in reverse
  law.straight_m -= 2.0 * size_of(before_m) * (1.0 + reverse_1);
  if (law.straight_m < law.half_m) law.straight_m = law.half_m;
  return before_m + sign * law.set_m(size_of(stroke_m));
}

double plastic_strain_1(double stroke_over_yield_1) {
  return stroke_over_yield_1 <= 1.0 ? 0.0 : 0.0095 * base::pow_1(stroke_over_yield_1 - 1.0, 1.6);
}

double cycles_to_crack_1(double strain_range_1, double fracture_strain_1) {
  return 0.5 * base::pow_1(fracture_strain_1 / (0.5 * strain_range_1), 1.0 / 0.6);
}

double bend_shape_1(double from_pull_rad, double phase_rad) {
  // cosines of the multiples by recurrence: one call instead of five
  const double c1 = base::cos_rad(from_pull_rad);
  const double c2 = 2.0 * c1 * c1 - 1.0;
  const double c3 = 2.0 * c1 * c2 - c1;
  const double c4 = 2.0 * c1 * c3 - c2;
  const double c5 = 2.0 * c1 * c4 - c3;
  const double at_arm = 0.220 + 0.462 * c1 + 0.228 * c2 + 0.062 * c3 + 0.021 * c4 + 0.007 * c5;
  const double at_gap = 0.265 + 0.523 * c1 + 0.194 * c2 + 0.0245 * c3 - 0.003 * c4 - 0.0035 * c5;
  return at_arm + (at_gap - at_arm) * 0.5 * (1.0 - wave(phase_rad));
}

double bend_radial_1(double radius_m, double middle_radius_m) {
  // root of the law: 15 mm for a 160 rotor, 12 mm for a 180
  const double root_m = 0.015 - 0.3 * (middle_radius_m - 0.072);
  return (radius_m - root_m) / (middle_radius_m - root_m);
}

ToolBend tool_bend(const RotorPlate& plate, double hand_n, double hand_outside_rim_m, double rim_radius_m) {
  const double reach_m = rim_radius_m + hand_outside_rim_m - plate.middle_radius_m;
  const double length_m = 0.037 + 0.8 * (plate.middle_radius_m - 0.072);
  const double x = reach_m / length_m;
  const double direct_m = hand_n / rotor_stiffness_n_m(plate);
  return {direct_m * (1.0 + x), direct_m * (1.0 + 2.0 * x + 1.45 * x * x)};
}

double kink_yield_turn_rad(const RotorPlate& plate, double apart_m) {
  return 2.0 * plate.yield_pa * apart_m / (plate.modulus_pa * plate.thickness_m);
}

double kink_rad(const RotorPlate& plate, double apart_m, double turn_rad) {
  const double yield_rad = kink_yield_turn_rad(plate, apart_m);
  const double x = size_of(turn_rad) / yield_rad;
  if (x <= 1.0) return 0.0;
  const double stays_rad = yield_rad * (x - 1.5 + 0.5 / (x * x));
  return turn_rad < 0.0 ? -stays_rad : stays_rad;
}

double kink_yield_moment_nm(const RotorPlate& plate, double track_width_m) {
  return plate.yield_pa * track_width_m * plate.thickness_m * plate.thickness_m / 6.0;
}

double kink_shape_1(double from_kink_rad, bool at_arm) {
  const double turn_rad = base::wrap_two_pi(from_kink_rad);
  const double d = base::degrees(turn_rad > base::kPi ? base::kTwoPi - turn_rad : turn_rad);
  const double rounding = at_arm ? 6.0 : 5.0;
  const double peak = base::exp_1(-(base::sqrt_1(d * d + rounding * rounding) - rounding) / 40.0);
  const double c1 = base::cos_rad(from_kink_rad);
  return at_arm ? 2.151 * peak - 0.551 - 0.583 * c1 - 0.028 * base::cos_rad(2.0 * from_kink_rad)
                : 1.847 * peak - 0.430 - 0.424 * c1;
}

double kink_height_m(double kinked_rad, bool at_arm, double middle_radius_m) {
  // millimetres a degree for 160 and 180, straight between and beyond
  const double share = (middle_radius_m - 0.072) / 0.010;
  const double mm_deg = at_arm ? 0.204 + (0.297 - 0.204) * share : 0.278 + (0.336 - 0.278) * share;
  return 0.001 * mm_deg * base::degrees(kinked_rad);
}

}  // namespace proofstand::physics

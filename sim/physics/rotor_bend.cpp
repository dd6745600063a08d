#include "sim/physics/rotor_bend.h"

#include "sim/base/math.h"

namespace proofstand::physics {
namespace {

constexpr double kArmRoot_m = 0.030;  // arms are free from here on

double arm_length_mm(const RotorPlate& p) { return 1000.0 * (p.track_middle_m - kArmRoot_m); }

}  // namespace

double lateral_stiffness_n_m(const RotorPlate& p) {
  const double k_n_mm = 59.2 * base::pow_1(42.0 / arm_length_mm(p), 2.6) *
                        base::pow_1(1000.0 * p.thickness_m / 1.8, 2.97) *
                        base::pow_1(1000.0 * p.arm_width_m / 9.0, 0.69) * (p.slotted ? 0.90 : 1.0);
  return 1000.0 * k_n_mm;
}

double first_yield_stroke_m(const RotorPlate& p, double arm_angle_rad) {
  const double length_m = p.track_middle_m - kArmRoot_m;
  return 0.635 * p.yield_pa * length_m * length_m / (p.modulus_pa * p.thickness_m) *
         (1.15 - 0.15 * base::cos_rad(6.0 * arm_angle_rad));
}

double set_after_stroke_m(const RotorPlate& p, double stroke_m, double arm_angle_rad, double spread_1) {
  const double yield_m = first_yield_stroke_m(p, arm_angle_rad);
  const double wave = base::cos_rad(6.0 * arm_angle_rad);
  const double s0 = spread_1 * (1.64 - 0.0107 * (arm_length_mm(p) - 42.0)) * yield_m;
  const double d0 = spread_1 * (0.335 - 0.04 * wave) * yield_m;
  const double a = 0.49 - 0.04 * wave;
  const double s1 = s0 - d0;
  if (stroke_m <= s1) return 0.0;
  if (stroke_m >= s0 + d0) return a * (stroke_m - s0);
  return a * (stroke_m - s1) * (stroke_m - s1) / (4.0 * d0);
}

double pull_strain_1(double stroke_over_yield_1) {
  return stroke_over_yield_1 <= 1.0 ? 0.0 : 0.0095 * base::pow_1(stroke_over_yield_1 - 1.0, 1.6);
}

double cycles_to_crack_1(double strain_range_1) { return 0.5 * base::pow_1(0.30 / (0.5 * strain_range_1), 1.0 / 0.6); }

double bend_shape_1(double away_rad, double arm_angle_rad) {
  const double c1 = base::cos_rad(away_rad);
  const double c2 = base::cos_rad(2.0 * away_rad);
  const double c3 = base::cos_rad(3.0 * away_rad);
  const double c4 = base::cos_rad(4.0 * away_rad);
  const double c5 = base::cos_rad(5.0 * away_rad);
  const double arm = 0.220 + 0.462 * c1 + 0.228 * c2 + 0.062 * c3 + 0.021 * c4 + 0.007 * c5;
  const double gap = 0.265 + 0.523 * c1 + 0.194 * c2 + 0.0245 * c3 - 0.003 * c4 - 0.0035 * c5;
  return arm + (gap - arm) * 0.5 * (1.0 - base::cos_rad(6.0 * arm_angle_rad));
}

double bend_radius_factor_1(double radius_m, double track_middle_m) {
  // 15 mm for a 160 rotor (72 mm), 12 mm for a 180 (82 mm)
  const double r0 = 0.015 - 0.3 * (track_middle_m - 0.072);
  return (radius_m - r0) / (track_middle_m - r0);
}

ToolBend tool_bend(const RotorPlate& p, double outer_radius_m, double hand_force_n, double hand_out_m) {
  const double reach_m = outer_radius_m + hand_out_m - p.track_middle_m;
  const double length_m = 0.037 + 0.8 * (p.track_middle_m - 0.072);
  const double x = reach_m / length_m;
  const double direct_m = hand_force_n / lateral_stiffness_n_m(p);
  return {direct_m * (1.0 + x), direct_m * (1.0 + 2.0 * x + 1.45 * x * x)};
}

}  // namespace proofstand::physics

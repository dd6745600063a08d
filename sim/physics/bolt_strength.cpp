#include "sim/physics/bolt_strength.h"

#include <array>

#include "sim/base/math.h"

namespace proofstand::physics {

const GradeRow& grade_row(Grade grade) {
  static constexpr std::array<GradeRow, 4> rows = {{
      {800e6, 640e6, 205e9, 0.12, 8230.0, 11350.0, 0.84},
      {1040e6, 940e6, 205e9, 0.09, 11800.0, 14800.0, 0.79},
      {1220e6, 1100e6, 205e9, 0.08, 13800.0, 17300.0, 0.75},
      {700e6, 450e6, 193e9, 0.20, 0.0, 0.0, 0.84},
  }};
  return rows[static_cast<std::size_t>(grade)];
}

double axial_stress_pa(Thread thread, double preload_n) { return preload_n / thread_geometry(thread).stress_area_m2; }

double combined_stress_pa(const Fastener& fastener, double preload, bool plastic) {
  const double ds = thread_geometry(fastener.thread).stress_diameter_m;
  const double sigma = axial_stress_pa(fastener.thread, preload);
  const double tau = (plastic ? 12.0 : 16.0) * thread_torque_nm(fastener, preload) / (base::kPi * ds * ds * ds);
  return base::sqrt_1(sigma * sigma + 3.0 * tau * tau);
}

double yield_preload_n(const Fastener& fastener, Grade grade, double share_1) {
  // the combined stress grows in proportion to the preload
  return share_1 * grade_row(grade).yield_pa / combined_stress_pa(fastener, 1.0, true);
}

double yield_torque_nm(const Fastener& fastener, Grade grade) {
  return tightening_torque_nm(fastener, yield_preload_n(fastener, grade));
}

double torsional_break_nm(Grade grade, double minor_min_m) {
  const GradeRow& row = grade_row(grade);
  return row.torsion_factor_1 * row.tensile_pa * base::kPi / 16.0 * minor_min_m * minor_min_m * minor_min_m;
}

double break_preload_n(Thread thread, Grade grade) {
  return grade_row(grade).tensile_pa * thread_geometry(thread).stress_area_m2 / 1.15;
}

double break_stretch_m(Thread thread, Grade grade, double grip_m) {
  return grade_row(grade).elongation_1 * (grip_m + 2.0 * thread.pitch_m);
}

}  // namespace proofstand::physics

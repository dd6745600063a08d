#include "sim/physics/lockring.h"

#include "sim/base/math.h"

namespace proofstand::physics {

Fastener lockring_fastener(double friction_1) { return {{0.030, 0.001}, {friction_1, friction_1}, 0.034}; }

double tool_push_out_n(double torque_nm, double radius_m, double clearance_m, double depth_m, double draft_rad,
                       double friction_1) {
  const double wedge = base::tan_rad(base::atan_rad(clearance_m / depth_m) + draft_rad) - friction_1;
  return wedge > 0.0 ? torque_nm / radius_m * wedge : 0.0;
}

double safe_depth_m(double clearance_m, double draft_rad, double friction_1) {
  return clearance_m / base::tan_rad(base::atan_rad(friction_1) - draft_rad);
}

double hold_force_n(double torque_nm, double wheel_radius_m) { return torque_nm / wheel_radius_m; }

}  // namespace proofstand::physics

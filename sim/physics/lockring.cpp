#include "sim/physics/lockring.h"

#include "sim/base/assert.h"
#include "sim/base/math.h"

namespace proofstand::physics {

TorqueLevers ring_levers(double diameter_m, double pitch_m, double bearing_m, double friction_1) {
  return torque_levers(compute_thread(diameter_m, pitch_m), bearing_m, {friction_1, friction_1});
}

double ring_tool_rock_rad(const RingTool& tool) {
  STAND_ASSERT(tool.depth_m > 0.0);
  return base::atan_rad(tool.clearance_m / tool.depth_m) + tool.draft_rad;
}

double ring_push_out_n(const RingTool& tool, double torque_nm, double friction_1) {
  STAND_ASSERT(tool.radius_m > 0.0);
  const double force_n = torque_nm / tool.radius_m * (base::tan_rad(ring_tool_rock_rad(tool)) - friction_1);
  return force_n > 0.0 ? force_n : 0.0;
}

double ring_safe_depth_m(const RingTool& tool, double friction_1) {
  const double free_rad = base::atan_rad(friction_1) - tool.draft_rad;
  STAND_ASSERT(free_rad > 0.0);
  return tool.clearance_m / base::tan_rad(free_rad);
}

double ring_flank_pressure_pa(double torque_nm, double radius_m, double contact_m2, int bearing) {
  STAND_ASSERT(radius_m > 0.0 && contact_m2 > 0.0 && bearing > 0);
  return torque_nm / (static_cast<double>(bearing) * radius_m * contact_m2);
}

double hold_at_tyre_n(double torque_nm, double wheel_radius_m) {
  STAND_ASSERT(wheel_radius_m > 0.0);
  return torque_nm / wheel_radius_m;
}

double floor_hold_nm(double wheel_kg, double friction_1, double wheel_radius_m, double gravity_m_s2) {
  return friction_1 * wheel_kg * gravity_m_s2 * wheel_radius_m;
}

}  // namespace proofstand::physics

#include "sim/bench/tool_seat.h"

#include <algorithm>

#include "sim/base/math.h"
#include "sim/bench/bolt_model.h"
#include "sim/physics/bolt_strength.h"
#include "sim/physics/drive_recess.h"

namespace proofstand::bench {
namespace {

constexpr double kRecessDepth_m = 0.00152;  // low M5 head. source: ISO 14580 table
constexpr double kDraft_deg = 2.0, kRecessFriction_1 = 0.12, kRecessArm_m = 0.0019375;
constexpr double kFirstTouch_n = 1.0, kHome_n = 12.0;  // press at which a tool begins to sink, and is home
constexpr double kSinking_m_s = 0.020;
constexpr double kRidingUp_m_per_ns = 2.0e-4;  // speed of riding up for each newton that the press falls short
constexpr double kRecessRadius_m = 0.00225;
constexpr double kOffsetTilt_deg = 6.0;   // of a tool set in at the recess' edge
constexpr double kMostWear_m = 0.000625;  // nothing of the lobes is left
constexpr double kMostTilt_deg = 15.0;

double tick_s() { return 1.0 / static_cast<double>(base::kTicksPerSecond); }

const ToolPart& tool_part(const World& world, HandId hand) {
  return world.setup.tools[world.thing(world.hand(hand).holding).part];
}

physics::DriveTool tip_of(DriveKind drive) {
  switch (drive) {
    case DriveKind::Hexalobular25:
      return physics::DriveTool::Hexalobular25;
    case DriveKind::Hexalobular20:
      return physics::DriveTool::Hexalobular20;
    case DriveKind::Hexagon3_0:
      return physics::DriveTool::Hexagon3_0;
    case DriveKind::Hexagon3_2:
      return physics::DriveTool::Hexagon3_2;
    case DriveKind::FlatBlade:
      return physics::DriveTool::FlatBlade;
  }
  return physics::DriveTool::FlatBlade;
}

}  // namespace

double full_depth_m() { return kRecessDepth_m; }

double free_depth_m(const World& world, HandId hand, BoltId bolt) {
  const double clean_m = physics::deepest_fit_m(tip_of(tool_part(world, hand).drive), kRecessDepth_m);
  return std::max(0.0, clean_m - bolt_state(world, bolt).recess_debris_m);
}

double tool_tilt_rad(const HandState& hand) {
  const double lean = base::radians(kOffsetTilt_deg) * hand.u_1 / kRecessRadius_m;
  const double x = hand.tilt_x_rad + lean;
  const double tilt = base::sqrt_1(x * x + hand.tilt_y_rad * hand.tilt_y_rad);
  return std::min(tilt, base::radians(kMostTilt_deg));
}

void step_depth(const World& world, HandId hand, double press_n) {
  VisitState& visit = world.state.visits[static_cast<std::size_t>(hand)];
  const double free_m = free_depth_m(world, hand, visit.bolt);
  visit.press_n = press_n;
  const double torque_nm = visit.torque_nm < 0.0 ? -visit.torque_nm : visit.torque_nm;
  const double out_n = physics::push_out_n(torque_nm, kRecessArm_m, tool_tilt_rad(world.hand(hand)),
                                           base::radians(kDraft_deg), kRecessFriction_1);
  if (out_n > press_n) {
    visit.depth_m = std::max(0.0, visit.depth_m - kRidingUp_m_per_ns * (out_n - press_n) * tick_s());
    return;
  }
  const double home_m = free_m * base::clamp_1((press_n - kFirstTouch_n) / (kHome_n - kFirstTouch_n), 0.0, 1.0);
  if (home_m > visit.depth_m) visit.depth_m = std::min(home_m, visit.depth_m + kSinking_m_s * tick_s());
}

double recess_capacity_nm(const World& world, HandId hand) {
  const VisitState& visit = world.state.visits[static_cast<std::size_t>(hand)];
  const ToolPart& tool = tool_part(world, hand);
  physics::DriveFit fit;
  fit.tool = tip_of(tool.drive);
  fit.depth_m = visit.depth_m;
  fit.tilt_rad = tool_tilt_rad(world.hand(hand));
  fit.recess_wear_m = bolt_state(world, visit.bolt).recess_wear_m + tool.wear_m;
  fit.crush_pa = physics::bolt_material(class_of(bolt_part(world, visit.bolt).grade)).tensile_pa;
  return physics::drive_capacity_nm(fit);
}

void slip_tool(const World& world, HandId hand, double torque_nm) {
  const VisitState& visit = world.state.visits[static_cast<std::size_t>(hand)];
  BoltState& bolt = bolt_state(world, visit.bolt);
  bolt.recess_wear_m = std::min(bolt.recess_wear_m + physics::recess_wear_added_m(2.0, 1.0), kMostWear_m);
  ++bolt.slips;
  world.emit("tool_slipped", {{"hand", static_cast<double>(hand)},
                              {"bolt", static_cast<double>(event::index_of(visit.bolt))},
                              {"tool", static_cast<double>(event::index_of(world.hand(hand).holding))},
                              {"peak_torque", torque_nm},
                              {"depth_share", std::min(1.0, visit.depth_m / full_depth_m())},
                              {"recess_wear", bolt.recess_wear_m},
                              {"slips", static_cast<double>(bolt.slips)}});
}

bool tip_enters(const ToolPart& tool) {
  return physics::deepest_fit_m(tip_of(tool.drive), kRecessDepth_m) > kTouchingDepth_m;
}

}  // namespace proofstand::bench

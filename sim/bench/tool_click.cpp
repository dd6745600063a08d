#include "sim/bench/tool_click.h"

#include <algorithm>

#include "sim/base/math.h"
#include "sim/base/random.h"
#include "sim/bench/tool_work.h"

namespace proofstand::bench {
namespace {

constexpr double kUnbounded_nm = 1.0e9;
constexpr double kEased_1 = 0.3;       // of the setting: below it the mechanism latches again
constexpr double kFreeTorque_1 = 0.1;  // of the setting, while it travels freely
constexpr double kBiasShare_1 = 0.75;  // of the class that the bias may take up, the rest is left to repeatability
constexpr double kNormalMost_1 = 2.5;

bool clicks(const World& world, HandId hand) {
  const ThingId tool = world.hand(hand).holding;
  return tool != event::kNoThing && world.kind(tool) == ThingKind::ClickDriver;
}

ToolState& tool_state(const World& world, HandId hand) {
  return world.state.tools[world.thing(world.hand(hand).holding).part];
}

VisitState& visit_of(const World& world, HandId hand) { return world.state.visits[static_cast<std::size_t>(hand)]; }

}  // namespace

double free_travel_rad() { return base::radians(3.0); }

void start_tools(const World& world) {
  for (std::size_t i = 0; i < world.state.tools.size(); ++i) {
    const ToolPart& part = world.setup.tools[i];
    ToolState& tool = world.state.tools[i];
    tool.setting_nm = part.start_setting_nm;
    tool.set_before_nm = part.start_setting_nm;
    tool.wear_m = part.wear_m;
    const double z = base::draw_normal({world.setup.seed, "bias of a torque tool", i, 0}) + part.bias_z_1;
    tool.bias_1 = part.class_1 * kBiasShare_1 * base::clamp_1(z / kNormalMost_1, -1.0, 1.0);
  }
}

double trips_at_nm(const World& world, HandId hand) {
  const ToolState& tool = tool_state(world, hand);
  const double class_1 = world.setup.tools[world.thing(world.hand(hand).holding).part].class_1;
  const double rep_1 = class_1 * (1.0 - kBiasShare_1) * visit_of(world, hand).rep_z_1 / kNormalMost_1;
  return tool.setting_nm * (1.0 + tool.bias_1 + rep_1);
}

double trip_limit_nm(const World& world, HandId hand) {
  if (!clicks(world, hand) || visit_of(world, hand).let_go) return kUnbounded_nm;
  return trips_at_nm(world, hand);
}

void let_go(const World& world, HandId hand) {
  VisitState& visit = visit_of(world, hand);
  ToolState& tool = tool_state(world, hand);
  if (visit.clicks == 0) visit.clicked_at_nm = visit.torque_nm;
  ++visit.clicks;
  visit.let_go = true;
  visit.free_rad = free_travel_rad();
  visit.torque_nm *= kFreeTorque_1;
  tool.last_click_nm = tool.setting_nm;
  world.emit("clicked", {{"hand", static_cast<double>(hand)},
                         {"bolt", static_cast<double>(event::index_of(visit.bolt))},
                         {"tool", static_cast<double>(event::index_of(world.hand(hand).holding))}});
}

bool in_free_travel(const VisitState& visit) { return visit.let_go && visit.free_rad > 0.0; }

double run_free_rad(const World& world, HandId hand, double most_rad) {
  VisitState& visit = visit_of(world, hand);
  const double moved_rad = std::min(most_rad, visit.free_rad);
  visit.free_rad -= moved_rad;
  visit.torque_nm = kFreeTorque_1 * visit.clicked_at_nm;
  visit.sliding = false;
  return moved_rad;
}

void latch_again(const World& world, HandId hand, double hand_nm) {
  VisitState& visit = visit_of(world, hand);
  if (!visit.let_go || hand_nm > kEased_1 * visit.clicked_at_nm) return;
  visit.let_go = false;
  visit.free_rad = 0.0;
  draw_repeat(world, hand);
}

void draw_repeat(const World& world, HandId hand) {
  if (!clicks(world, hand)) return;
  ToolState& tool = tool_state(world, hand);
  const std::size_t part = world.thing(world.hand(hand).holding).part;
  visit_of(world, hand).rep_z_1 = base::draw_normal(
      {world.setup.seed, "repeat of a torque tool", part, static_cast<std::uint64_t>(++tool.pulls)}, kNormalMost_1);
}

}  // namespace proofstand::bench

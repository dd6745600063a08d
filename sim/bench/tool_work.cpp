#include "sim/bench/tool_work.h"

#include <algorithm>

#include "sim/bench/bolt_start.h"
#include "sim/bench/bolt_turn.h"
#include "sim/bench/bolt_visit.h"
#include "sim/bench/hand_law.h"
#include "sim/bench/tool_click.h"
#include "sim/bench/tool_seat.h"
#include "sim/bench/wheel.h"

namespace proofstand::bench {
namespace {

constexpr double kRuinedRecess_nm = 0.05;  // a recess that bears less lets the tool spin
constexpr double kNearLimit_1 = 0.9;       // of what the recess bears: from here a pull wears it
constexpr double kLobe_deg = 60.0;

VisitState& visit_of(const World& world, HandId hand) { return world.state.visits[static_cast<std::size_t>(hand)]; }

double size_of(double x) { return x < 0.0 ? -x : x; }

struct Limits {
  double hand_nm = 0.0, recess_nm = 0.0, reaction_nm = 0.0, trip_nm = 0.0;
  [[nodiscard]] double least_nm() const { return std::min({hand_nm, recess_nm, reaction_nm, trip_nm}); }
};

// nothing holds the wheel against the tool: it turns along, and the fastener gets no more than its drag
double carry_wheel(const World& world, int sense, double left_rad) {
  const double turned_rad = sense > 0 ? left_rad : -left_rad;
  turn_wheel_by_hand(world, -turned_rad);
  return turned_rad;
}

// returns how far the hand gets, signed
double slip(const World& world, HandId hand, int sense, double torque_nm) {
  HandState& state = world.hand(hand);
  slip_tool(world, hand, torque_nm);
  VisitState& visit = visit_of(world, hand);
  visit.torque_nm = 0.0;
  visit.sliding = false;
  const double lead = size_of(state.turn.end_1 - state.turn.hand_1);
  state.turn.level = 0;
  const double jump = std::min(base::radians(kLobe_deg), lead);
  return sense > 0 ? jump : -jump;
}

double pull_fastener(const World& world, HandId hand, double hand_nm, int sense, double most_rad) {
  VisitState& visit = visit_of(world, hand);
  const double signed_most = sense > 0 ? most_rad : -most_rad;
  if (visit.depth_m < kTouchingDepth_m) {
    visit.torque_nm = 0.0;
    return signed_most;
  }
  Limits limits;
  limits.hand_nm = hand_nm;
  limits.recess_nm = recess_capacity_nm(world, hand);
  limits.reaction_nm = std::max(kBearingDrag_nm, reaction_held_nm(world, World::other(hand)));
  limits.trip_nm = sense > 0 ? trip_limit_nm(world, hand) : hand_nm;
  if (limits.recess_nm < kRuinedRecess_nm) {
    if (bolt_state(world, visit.bolt).slips == 0) slip_tool(world, hand, 0.0);
    visit.torque_nm = 0.0;
    return signed_most;
  }
  if (in_free_travel(visit) && sense > 0) return run_free_rad(world, hand, most_rad);

  if (hole_of(world, visit.bolt).started) {
    if (visit.depth_m < visit.worst_depth_m && hand_nm > 0.0) visit.worst_depth_m = visit.depth_m;
    const BoltAnswer answer = turn_bolt(world, hand, visit.bolt, sense, limits.least_nm(), most_rad);
    tell_start_when_due(world, hand, visit.bolt);
    if (size_of(answer.torque_nm) > kNearLimit_1 * limits.recess_nm) visit.near_limit = true;
    double moved_rad = answer.moved_rad;
    if (visit.let_go && sense > 0) visit.over_pull_rad += answer.moved_rad;
    if (answer.came_out) {
      drop_bolt(world, hand);
      return moved_rad;
    }
    if (!answer.held) return moved_rad;
    const double least_nm = limits.least_nm();
    if (least_nm == limits.hand_nm) return moved_rad;
    if (sense > 0 && least_nm == limits.trip_nm) {
      let_go(world, hand);
      return moved_rad;
    }
    if (least_nm == limits.recess_nm) return moved_rad + slip(world, hand, sense, limits.recess_nm);
    return moved_rad + carry_wheel(world, sense, most_rad - size_of(moved_rad));
  }
  return signed_most;  // a bolt that has not caught turns along
}

}  // namespace

void step_tool(const World& world, HandId hand, const HandHold& hold) {
  HandState& state = world.hand(hand);
  VisitState& visit = visit_of(world, hand);
  const double strength = strength_1(world.setup);
  if (hold.presses) {
    step_cord(state.along, along_law());
    const double press_n = state.along.end_1 > 0.0 ? kFullPress_n * strength * force_share_1(state.along.level) : 0.0;
    step_depth(world, hand, press_n);
    move_hand(state.along, 0.0);
  }
  if (!hold.turns) return;
  const AxisLaw law = turn_law();
  if (hold.twirls) {
    step_twirl(state.turn, law, hold.rate_rad_s);
  } else {
    step_cord(state.turn, law);
  }
  const double hand_nm = hold.full_nm * force_share_1(state.turn.level);
  double most_rad =
      hold.twirls ? twirl_limit_1(state.turn, hold.rate_rad_s) : step_limit_1(state.turn, law, law.pull_fastest_1);
  if (!hold.twirls) {
    most_rad = base::clamp_1(state.turn.hand_1 + most_rad, -hold.reach_rad, hold.reach_rad) - state.turn.hand_1;
  }
  const double lead = state.turn.end_1 - state.turn.hand_1;
  latch_again(world, hand, hand_nm);
  double moved_rad = 0.0;
  if (state.turn.level > 0 && lead != 0.0) {
    if (visit.clicks == 0 && state.turn.level >= kPullingLevel) visit.speed_rad_s = cord_speed_1(state.turn);
    moved_rad = pull_fastener(world, hand, hand_nm, lead > 0.0 ? +1 : -1, size_of(most_rad));
  } else {
    visit.torque_nm = 0.0;
  }
  if (state.stage != HandStage::At) return;  // the bolt came out and the tool with it
  visit.hand_rad += moved_rad;
  move_hand(state.turn, moved_rad);
}

}  // namespace proofstand::bench

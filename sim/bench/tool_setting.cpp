#include <algorithm>

#include "sim/base/math.h"
#include "sim/bench/hand_law.h"
#include "sim/bench/tool_work.h"

namespace proofstand::bench {
namespace {

constexpr double kCollar_m = 0.001;  // the collar has two places; so much of a draw or push is enough

// the collar's teeth close on whole lines of the handle
double on_a_line_nm(const ToolPart& part, double setting_nm) {
  if (part.scale_step_nm <= 0.0) return setting_nm;
  const double lines = base::clamp_1((setting_nm - part.scale_lo_nm) / part.scale_step_nm + 0.5, 0.0, 1.0e6);
  const double whole = static_cast<double>(static_cast<std::int64_t>(lines));
  return std::min(part.scale_lo_nm + whole * part.scale_step_nm, part.scale_hi_nm);
}

}  // namespace

void step_setting(const World& world, HandId hand, const HandHold& hold) {
  HandState& state = world.hand(hand);
  const std::size_t index = world.thing(state.holding).part;
  const ToolPart& part = world.setup.tools[index];
  ToolState& tool = world.state.tools[index];
  step_cord(state.along, along_law());
  move_hand(state.along, 0.0);
  if (state.along.end_1 < -kCollar_m && !tool.unlocked) {
    tool.unlocked = true;
    tool.set_before_nm = tool.setting_nm;
  }
  if (state.along.end_1 > kCollar_m && tool.unlocked) {
    tool.unlocked = false;
    tool.setting_nm = on_a_line_nm(part, tool.setting_nm);
    world.emit("driver_set", {{"hand", static_cast<double>(hand)},
                              {"tool", static_cast<double>(event::index_of(state.holding))},
                              {"setting", tool.setting_nm},
                              {"before", tool.set_before_nm}});
  }
  const AxisLaw law = turn_law();
  step_twirl(state.turn, law, hold.rate_rad_s);
  double moved_rad = twirl_limit_1(state.turn, hold.rate_rad_s);
  if (state.turn.level == 0 || !tool.unlocked) moved_rad = 0.0;
  const double wanted_nm = tool.setting_nm + moved_rad / base::kTwoPi * kSettingPerTurn_nm;
  const double got_nm = base::clamp_1(wanted_nm, part.scale_lo_nm, part.scale_hi_nm);
  move_hand(state.turn, (got_nm - tool.setting_nm) / kSettingPerTurn_nm * base::kTwoPi);
  tool.setting_nm = got_nm;
}

}  // namespace proofstand::bench

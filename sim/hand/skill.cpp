#include "sim/base/math.h"
#include "sim/hand/hand_script.h"

namespace proofstand::hand {

// source of both sets: common practice, no source; kept in this project's own table of hands
const HandSkill& novice() {
  static const HandSkill skill = [] {
    HandSkill s;
    s.name = "novice";
    s.strength_percentile_1 = 0.30;
    s.start_tilt_sd_rad = base::radians(3.0);
    s.depth_share_1 = 0.75;
    s.depth_share_sd_1 = 0.15;
    s.tool_tilt_sd_rad = base::radians(5.0);
    s.wrench_speed_rad_s = base::radians(20.0);
    s.reaction_s = 0.25;
    s.pull_again_1 = 0.40;
    s.feel_bias_1 = 0.8;
    s.feel_sd_1 = 0.30;
    s.point_sd_m = 0.003;
    return s;
  }();
  return skill;
}

const HandSkill& journeyman() {
  static const HandSkill skill = [] {
    HandSkill s;
    s.name = "journeyman";
    s.strength_percentile_1 = 0.50;
    s.start_tilt_sd_rad = base::radians(1.0);
    s.depth_share_1 = 0.98;
    s.depth_share_sd_1 = 0.02;
    s.tool_tilt_sd_rad = base::radians(2.0);
    s.wrench_speed_rad_s = base::radians(10.0);
    s.reaction_s = 0.15;
    s.pull_again_1 = 0.05;
    s.feel_bias_1 = 1.0;
    s.feel_sd_1 = 0.15;
    s.point_sd_m = 0.001;
    return s;
  }();
  return skill;
}

base::Result<HandSkill> skill_from_name(std::string_view name) {
  for (const HandSkill* skill : {&novice(), &journeyman()}) {
    if (skill->name == name) return *skill;
  }
  return base::Error{"hand-skill", "", "\"" + std::string(name) + "\" is no set of hands", "write novice or journeyman",
                     false};
}

}  // namespace proofstand::hand

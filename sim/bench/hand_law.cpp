#include "sim/bench/hand_law.h"

#include <algorithm>

namespace proofstand::bench {
namespace {

constexpr double kTick_s = 1.0 / static_cast<double>(base::kTicksPerSecond);
constexpr std::int64_t kEvery_ticks = 4;  // the cord's end is noted every fourth tick

double towards(double from, double to, double most) { return from + base::clamp_1(to - from, -most, most); }

void follow_level(Cord& cord, const AxisLaw& law) {
  const std::int64_t wanted = level_of(law, cord.end_1 - cord.hand_1);
  cord.level =
      wanted > cord.level ? std::min(wanted, cord.level + kLevelRise) : std::max(wanted, cord.level - kLevelFall);
}

}  // namespace

AxisLaw turn_law() {
  static const AxisLaw law = {base::radians(2.0), base::radians(76.0), base::radians(120.0), base::radians(10.0),
                              base::radians(120.0)};
  return law;
}

AxisLaw along_law() {
  static const AxisLaw law = {0.001, 0.039, 0.250, 0.020, 0.250};
  return law;
}

std::int64_t level_of(const AxisLaw& law, double lead_1) {
  const double size = lead_1 < 0.0 ? -lead_1 : lead_1;
  const double x = base::clamp_1((size - law.slack_1) / law.span_1, 0.0, 1.0);
  return static_cast<std::int64_t>(x * static_cast<double>(kFullLevel) + 0.5);
}

double force_share_1(std::int64_t level) {
  const double y = static_cast<double>(level) / static_cast<double>(kFullLevel);
  return y * base::sqrt_1(y);
}

void step_cord(Cord& cord, const AxisLaw& law) {
  cord.press_1 = cord.target_1;
  cord.end_1 = towards(cord.end_1, cord.target_1, law.end_speed_1 * kTick_s);
  follow_level(cord, law);
}

void step_twirl(Cord& cord, const AxisLaw& law, double top_rate_rad_s) {
  const double full = law.slack_1 + law.span_1;
  cord.press_1 = base::clamp_1(cord.press_1, cord.target_1 - full, cord.target_1 + full);
  const double lead = cord.target_1 - cord.press_1;
  const double size = lead < 0.0 ? -lead : lead;
  const double share = base::clamp_1((size - law.slack_1) / law.span_1, 0.0, 1.0);
  const double run = share * top_rate_rad_s * kTick_s;
  cord.end_1 += lead < 0.0 ? -run : run;
  // fingers that cannot turn it any further do not wind themselves up
  cord.end_1 = base::clamp_1(cord.end_1, cord.hand_1 - full, cord.hand_1 + full);
  follow_level(cord, law);
}

double cord_speed_1(const Cord& cord) {
  const std::int64_t noted = std::min<std::int64_t>(cord.past_count / kEvery_ticks, kSpeedWindow_ticks / kEvery_ticks);
  if (noted == 0) return 0.0;
  const double run = cord.end_1 - cord.past_end_1[static_cast<std::size_t>(noted - 1)];
  const std::int64_t ticks = (noted - 1) * kEvery_ticks + cord.past_count % kEvery_ticks + 1;
  return (run < 0.0 ? -run : run) / (static_cast<double>(ticks) * kTick_s);
}

double step_limit_1(const Cord& cord, const AxisLaw& law, double fastest_1) {
  double speed = fastest_1;
  if (cord.level >= kPullingLevel) {
    speed = base::clamp_1(kSpeedGain_1 * cord_speed_1(cord), law.pull_slowest_1, fastest_1);
  }
  return base::clamp_1(cord.end_1 - cord.hand_1, -speed * kTick_s, speed * kTick_s);
}

double twirl_limit_1(const Cord& cord, double rate_rad_s) {
  const double most_rad = kSpeedGain_1 * rate_rad_s * kTick_s;
  return base::clamp_1(cord.end_1 - cord.hand_1, -most_rad, most_rad);
}

void move_hand(Cord& cord, double moved_1) {
  cord.hand_1 += moved_1;
  ++cord.past_count;
  if (cord.past_count % kEvery_ticks != 0) return;
  std::copy_backward(cord.past_end_1.begin(), cord.past_end_1.end() - 1, cord.past_end_1.end());
  cord.past_end_1[0] = cord.end_1;
}

bool cord_rests(const Cord& cord, bool twirls) {
  if (cord.level != 0 || cord.end_1 != cord.hand_1) return false;
  if (!twirls) return cord.target_1 == cord.end_1;
  const double lead = cord.target_1 - cord.press_1;
  const double slack = turn_law().slack_1;
  return lead <= slack && lead >= -slack;
}

void aim_cord(Cord& cord, double target_1, bool twirls) {
  if (cord_rests(cord, twirls)) cord.past_count = 0;
  cord.target_1 = target_1;
}

void slacken(Cord& cord) {
  cord.target_1 = cord.hand_1;
  cord.end_1 = cord.hand_1;
  cord.press_1 = cord.hand_1;
}

void reset_cord(Cord& cord) { cord = Cord{}; }

}  // namespace proofstand::bench

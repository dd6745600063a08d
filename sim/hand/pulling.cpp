#include "sim/hand/pulling.h"

#include <algorithm>

namespace proofstand::hand {
namespace {

constexpr base::Tick kEvery = 2;      // how often a pulling hand feels and draws on
constexpr base::Tick kStalled = 240;  // nothing moved for so long at full pull
constexpr base::Tick kTwirlStalled = 150;
constexpr double kMoved_rad = base::radians(0.3);
constexpr double kReachLeft_rad = base::radians(4.0);
constexpr double kTakeUp_rad_s = base::radians(110.0);
constexpr double kFullPress_n = 80.0;
constexpr double kLongest_s = 120.0;  // no single pull takes longer

double size(double x) { return x < 0.0 ? -x : x; }

Task fresh_grip(Work& work, HandId hand, const Pull& plan) {
  work.act(event::make_plain(0, event::ActionKind::Slack, hand));
  co_await work.pause(kEvery);
  work.act(event::make_plain(0, event::ActionKind::Regrip, hand));
  co_await work.pause(kEvery);
  co_await settle(work, hand);
  if (plan.press_n > 0.0) co_await press(work, hand, plan.press_n);
}

}  // namespace

std::int64_t press_aim_um(double force_n) {
  // the cord's law read backwards: force goes with lead to the power of one and a half
  const double share = base::clamp_1(force_n / kFullPress_n, 0.0, 1.0);
  const double lead_m = share <= 0.0 ? 0.0 : 0.001 + 0.039 * base::pow_1(share, 2.0 / 3.0);
  return micro(lead_m);
}

Task slacken(Work& work, HandId hand) {
  work.act(event::make_plain(0, event::ActionKind::Slack, hand));
  co_await work.pause(kEvery);
}

Task press(Work& work, HandId hand, double force_n) {
  work.act(event::make_aim_along(0, hand, press_aim_um(force_n)));
  for (base::Tick t = 0; t < base::kTicksPerSecond; t += 4) {
    const bench::HandSense s = work.sense(hand);
    if (s.home && s.press_n >= 0.9 * std::min(force_n, kFullPress_n)) break;
    co_await work.pause(4);
  }
}

Task pull(Work& work, HandId hand, Pull& plan) {
  bench::HandSense s = work.sense(hand);
  double end = s.turn_rad + s.lead_rad;  // goes on from a cord that is drawn already
  double stood_at = s.turn_rad;
  base::Tick moved = work.now();
  const base::Tick began = work.now();
  const double dt_s = base::seconds(kEvery);
  bool pressed_more = false;
  while (true) {
    s = work.sense(hand);
    if (plan.until(s)) {
      plan.done = true;
      co_return;
    }
    if (plan.press_more && !pressed_more && !s.home) {
      pressed_more = true;
      work.act(event::make_aim_along(0, hand, press_aim_um(kFullPress_n)));
      work.act(event::make_tip(0, hand, 0, 0));
    }
    if (size(s.turn_rad - stood_at) > kMoved_rad || size(end - s.turn_rad) < plan.most_lead_rad - 0.02) {
      stood_at = s.turn_rad;
      moved = work.now();
    }
    if (work.now() - moved > kStalled || base::seconds(work.now() - began) > kLongest_s) {
      plan.stalled = true;
      co_return;
    }
    if (s.reach_left_rad < kReachLeft_rad) {
      co_await fresh_grip(work, hand, plan);
      s = work.sense(hand);
      end = s.turn_rad;
      stood_at = s.turn_rad;
      continue;
    }
    const double lead = (end - s.turn_rad) * plan.sense_1;
    const double rate = lead < plan.careful_lead_rad ? std::max(kTakeUp_rad_s, plan.rate_rad_s) : plan.rate_rad_s;
    end += plan.sense_1 * std::min(rate * dt_s, std::max(0.0, plan.most_lead_rad - lead));
    work.act(event::make_aim_turn(0, hand, micro(end)));
    co_await work.pause(kEvery);
  }
}

Task twirl(Work& work, HandId hand, Twirl& plan) {
  const double lead_rad = base::radians(2.0) + base::radians(76.0) * base::clamp_1(plan.share_1, 0.02, 1.0);
  double stood_at = work.sense(hand).turn_rad;
  work.act(event::make_aim_turn(0, hand, micro(stood_at + plan.sense_1 * lead_rad)));
  const base::Tick began = work.now();
  base::Tick moved = began;
  while (true) {
    co_await work.pause(4);
    if (plan.until()) {
      plan.done = true;
      break;
    }
    const double at = work.sense(hand).turn_rad;
    if (size(at - stood_at) > kMoved_rad) {
      stood_at = at;
      moved = work.now();
    }
    if (work.now() - moved > kTwirlStalled || base::seconds(work.now() - began) > kLongest_s) {
      plan.stalled = true;
      break;
    }
  }
  co_await slacken(work, hand);
}

}  // namespace proofstand::hand

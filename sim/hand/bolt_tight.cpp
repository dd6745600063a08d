// Tightening: to the click, by feel, by an angle; and setting the torque tool.
#include "sim/hand/instructions.h"
#include "sim/hand/seating.h"

namespace proofstand::hand {
namespace {

constexpr double kTakeUpLead_rad = base::radians(22.0);  // up to here the cord is taken up quickly
constexpr std::uint64_t kTries = 3;
constexpr double kMostTurn_rad = base::radians(420.0);  // further round, something is wrong

using Reached = std::function<bool(const bench::HandSense&)>;

// when a line's pull has gone far enough; empty when the line does not say
Reached reached_when(Work& work, const Instruction& line, double from_rad, std::int64_t clicks) {
  if (line.says(Say::ToClick)) {
    return [from_rad, clicks](const bench::HandSense& s) {
      return s.clicks > clicks || s.fastener_rad > from_rad + kMostTurn_rad;
    };
  }
  if (line.says(Say::AllYouHave)) return [](const bench::HandSense&) { return false; };
  if (line.angle_rad) {
    const double angle = *line.angle_rad;
    return [from_rad, angle](const bench::HandSense& s) { return s.fastener_rad - from_rad >= angle; };
  }
  if (line.torque_nm) {
    // by feel, off by as much as this hand usually is
    const double feel = work.skill().feel_bias_1 * base::exp_1(work.skill().feel_sd_1 * work.normal("feel"));
    const double aim = *line.torque_nm * feel;
    return [aim](const bench::HandSense& s) { return s.torque_nm >= aim; };
  }
  return {};
}

// pulls on after a click: as told, as a novice does now and then, or only as long as it takes to react
Task after_click(Work& work, HandId hand, const Instruction& line, Pull& plan) {
  const HandSkill& skill = work.skill();
  double over_rad = line.over_rad.value_or(0.0);
  const bool takes_care = line.over_rad || line.says(Say::NoFurther);
  if (!takes_care && work.unit("pull again") < skill.pull_again_1) over_rad = base::radians(6.0);
  const double at_click = work.sense(hand).turn_rad;
  if (over_rad > 0.0) {
    plan.until = [at_click, over_rad](const bench::HandSense& s) { return s.turn_rad - at_click >= over_rad; };
  } else {
    const base::Tick stop = work.now() + base::ticks_from(skill.reaction_s);
    plan.until = [&work, stop](const bench::HandSense&) { return work.now() >= stop; };
  }
  plan.done = plan.stalled = false;
  co_await pull(work, hand, plan);
}

// draws the collar back or lets it snap home
Task move_collar(Work& work, HandId hand, bool back) {
  work.act(event::make_aim_along(0, hand, back ? -20000 : 20000));
  co_await work.pause(60);
  work.act(event::make_plain(0, event::ActionKind::Slack, hand));
  co_await work.pause(4);
}

}  // namespace

Task do_tighten(Work& work, const Instruction& line) {
  const HandId hand = work.memory.main;
  const ThingId tool = turning_tool(work, line);
  if (tool == kNoThing)
    co_await work.give_up("no tool is named and the hand holds none", "add \"with the click driver\"");
  if (line.says(Say::ToClick) && work.kind(tool) != bench::ThingKind::ClickDriver) {
    co_await work.give_up("\"" + work.name(tool) + "\" does not click", "name the torque tool");
  }
  if (!bench::see_bolt(*work.bench, line.bolt).present) {
    co_await work.give_up("there is no bolt in that hole", "start one in it first");
  }
  // cut off after the click and begun again: pulling once more would be a visit too many
  if (line.says(Say::ToClick) && work.memory.clicked) {
    co_await draw_away(work, hand);
    co_return;
  }
  co_await steady_wheel(work, line);
  Pull plan;
  // a slip felt: off, set in anew and straighter; unless told to hold it badly
  for (std::uint64_t attempt = 0; attempt < kTries; ++attempt) {
    co_await seat(work, hand, tool, Grip::Handle, line, attempt);
    plan = {};
    plan.rate_rad_s = line.rate_rad_s.value_or(work.skill().wrench_speed_rad_s);
    plan.careful_lead_rad = line.rate_rad_s ? 0.0 : kTakeUpLead_rad;
    plan.press_n = press_of(work, line);
    plan.press_more = !told_how(line);
    const std::int64_t clicks = work.sense(hand).clicks;
    const Reached reached = reached_when(work, line, work.sense(hand).fastener_rad, clicks);
    if (!reached) {
      co_await work.give_up("how far is not said", "add \"until it clicks\", \"to 3 N·m\" or \"by 90°\"");
    }
    const std::int64_t slips = work.sense(hand).slips;
    plan.until = [reached, slips](const bench::HandSense& s) { return reached(s) || s.slips > slips; };
    co_await pull(work, hand, plan);
    if (line.says(Say::ToClick) && work.sense(hand).clicks > clicks) {
      work.memory.clicked = line.count_1.value_or(1.0) <= 1.0;
      co_await after_click(work, hand, line, plan);
    }
    if (work.sense(hand).slips == slips || told_how(line)) break;
    co_await slacken(work, hand);
    co_await draw_away(work, hand);
  }
  // told to click again: eased off and pulled anew without taking the tool away
  for (double more = line.count_1.value_or(1.0); more > 1.0 && !plan.stalled; more -= 1.0) {
    co_await slacken(work, hand);
    co_await work.pause(60);
    const std::int64_t before = work.sense(hand).clicks;
    co_await press(work, hand, plan.press_n);
    plan.done = false;
    plan.until = [before](const bench::HandSense& s) { return s.clicks > before; };
    co_await pull(work, hand, plan);
  }
  co_await slacken(work, hand);
  if (plan.stalled && !line.says(Say::AllYouHave)) {
    co_await work.give_up("the bolt does not go that far with all that this grip gives", "take the tool made for it");
  }
  co_await draw_away(work, hand);
}

Task do_set_tool(Work& work, const Instruction& line) {
  const HandId hand = work.memory.main;
  const ThingId tool = line.tool;
  const double aim_nm = line.torque_nm.value_or(0.0);
  co_await draw_away(work, hand);
  co_await take(work, hand, tool, Grip::Setting);
  const auto off = [&work, tool, aim_nm] { return aim_nm - bench::see_setting_nm(*work.bench, tool); };
  const double near_nm = 0.02;
  if (off() > near_nm || off() < -near_nm) {
    co_await move_collar(work, hand, true);
    for (int i = 0; i < 8 && (off() > near_nm || off() < -near_nm); ++i) {
      const bool up = off() > 0.0;
      Twirl plan;
      plan.sense_1 = up ? 1.0 : -1.0;
      // the last lines slowly, so as not to run past
      plan.share_1 = i == 0 ? 0.5 : 0.1;
      plan.until = [off, up, near_nm, i] {
        const double left = up ? off() : -off();
        return left <= (i == 0 ? 0.5 : near_nm);
      };
      co_await twirl(work, hand, plan);
    }
    co_await move_collar(work, hand, false);
  }
  co_await grip_at(work, hand, Grip::Handle);
  if (off() > near_nm || off() < -near_nm) {
    co_await work.give_up("the scale does not stand there", "name a figure on the tool's scale");
  }
}

}  // namespace proofstand::hand

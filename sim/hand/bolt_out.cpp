// Getting bolts out: cracking them loose and running them out.
#include "sim/hand/instructions.h"
#include "sim/hand/seating.h"

namespace proofstand::hand {
namespace {

constexpr double kGivenWay_rad = base::radians(10.0);
constexpr std::uint64_t kTries = 3;
constexpr double kStroke_rad = base::radians(170.0);  // by the handle, before the fingers try again

ThingId bolt_in(Work& work, BoltId bolt) { return bench::see_bolt(*work.bench, bolt).thing; }

// a few strokes with the handle where fingers cannot turn it
Task strokes_out(Work& work, HandId hand, ThingId tool, const Instruction& line) {
  co_await steady_wheel(work, line);
  co_await seat(work, hand, tool, Grip::Handle, line);
  const double from = work.sense(hand).fastener_rad;
  const BoltId bolt = line.bolt;
  Pull plan;
  plan.sense_1 = -1.0;
  plan.rate_rad_s = base::radians(100.0);
  plan.press_n = press_of(work, line);
  plan.press_more = !told_how(line);
  plan.until = [&work, bolt, from](const bench::HandSense& s) {
    return s.fastener_rad < from - kStroke_rad || bolt_in(work, bolt) == kNoThing;
  };
  co_await pull(work, hand, plan);
  co_await slacken(work, hand);
  if (plan.stalled) {
    co_await work.give_up("the bolt does not turn with all that this grip gives",
                          "crack it first, or take a longer arm");
  }
}

Task run_out_by_fingers(Work& work, HandId hand, const Instruction& line) {
  Pose pose;
  pose.thing = owner_of(work, PlaceKind::BoltHead, kNoThing);
  pose.place = PlaceKind::BoltHead;
  pose.bolt = line.bolt;
  const BoltId bolt = line.bolt;
  co_await touch(work, hand, pose);
  Twirl plan;
  plan.sense_1 = -1.0;
  plan.until = [&work, bolt] { return bolt_in(work, bolt) == kNoThing; };
  co_await twirl(work, hand, plan);
  if (plan.stalled) co_await work.give_up("the bolt is too stiff for fingers", "run it out with a key or a driver");
}

Task run_out_by_tool(Work& work, HandId hand, ThingId tool, const Instruction& line) {
  const BoltId bolt = line.bolt;
  for (int i = 0; i < 40 && bolt_in(work, bolt) != kNoThing; ++i) {
    co_await seat(work, hand, tool, Grip::Shaft, line);
    Twirl plan;
    plan.sense_1 = -1.0;
    plan.until = [&work, bolt] { return bolt_in(work, bolt) == kNoThing; };
    co_await twirl(work, hand, plan);
    if (plan.stalled) co_await strokes_out(work, hand, tool, line);
  }
}

}  // namespace

Task do_crack(Work& work, const Instruction& line) {
  const HandId hand = work.memory.main;
  const ThingId tool = turning_tool(work, line);
  if (tool == kNoThing) co_await work.give_up("no tool is named and the hand holds none", "add \"with the key\"");
  if (bolt_in(work, line.bolt) == kNoThing) {
    co_await work.give_up("there is no bolt in that hole", "name a position that holds one");
  }
  co_await steady_wheel(work, line);
  bool slipped = true;
  bool stalled = false;
  // a slip felt: off, set in anew and straighter, pressed with all there is; unless told to hold it badly
  for (std::uint64_t attempt = 0; slipped && attempt < kTries; ++attempt) {
    co_await seat(work, hand, tool, Grip::Handle, line, attempt);
    const std::int64_t slips = work.sense(hand).slips;
    Pull plan;
    plan.sense_1 = -1.0;
    plan.rate_rad_s = line.rate_rad_s.value_or(base::radians(45.0));
    plan.press_n = press_of(work, line);
    plan.press_more = !told_how(line);
    plan.until = [slips](const bench::HandSense& s) { return s.fastener_rad < -kGivenWay_rad || s.slips > slips; };
    co_await pull(work, hand, plan);
    slipped = work.sense(hand).slips > slips;
    stalled = plan.stalled;
    co_await slacken(work, hand);
    co_await draw_away(work, hand);
    if (told_how(line)) break;
  }
  if (slipped && !told_how(line)) {
    co_await work.give_up("the tool slips in the recess", "leave the bolt and report it");
  }
  if (stalled) {
    co_await work.give_up("the bolt did not give",
                          "take a longer arm, hold the wheel, or leave the bolt and report it");
  }
}

Task do_run_out(Work& work, const Instruction& line) {
  const HandId hand = work.memory.main;
  if (bolt_in(work, line.bolt) != kNoThing) {
    if (line.says(Say::Fingers)) {
      co_await run_out_by_fingers(work, hand, line);
    } else {
      const ThingId tool = turning_tool(work, line);
      if (tool == kNoThing) co_await work.give_up("no tool is named and the hand holds none", "add \"with the key\"");
      co_await run_out_by_tool(work, hand, tool, line);
    }
  }
  if (bolt_in(work, line.bolt) != kNoThing) {
    co_await work.give_up("the bolt is still in", "crack it first");
  }
  co_await draw_away(work, hand);
  // out into the fingers: into the tray with it
  const ThingId held = work.sense(hand).holding;
  if (held != kNoThing && work.kind(held) == bench::ThingKind::Bolt) co_await empty(work, hand);
}

}  // namespace proofstand::hand

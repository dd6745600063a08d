// Getting bolts in: starting their thread, running them in, snugging them.
#include "sim/hand/instructions.h"
#include "sim/hand/seating.h"

namespace proofstand::hand {
namespace {

constexpr double kStartTurns_1 = 2.0;     // by the fingers, unless told otherwise
constexpr double kOffTheFace_m = 0.0007;  // "just off the face", as far as the eye tells
constexpr double kSnug_nm = 1.0;
constexpr int kTries = 3;

double turns_in(Work& work, HandId hand) { return work.sense(hand).fastener_rad / base::kTwoPi; }

// turning back until the starts meet: once a turn, two turns to be sure
Task find_start(Work& work, HandId hand) {
  const double from = work.sense(hand).turn_rad;
  Twirl back;
  back.sense_1 = -1.0;
  back.share_1 = 0.6;
  back.until = [&work, hand, from] {
    const bench::HandSense s = work.sense(hand);
    return s.dropped || s.turn_rad < from - 2.0 * base::kTwoPi;
  };
  co_await twirl(work, hand, back);
}

// the bolt of a line: the one named, or the first in the tray of the length asked for
ThingId bolt_of_line(Work& work, const Instruction& line) {
  if (!line.says(Say::AnyBolt)) return line.thing;
  constexpr double kRuler_m = 0.0005;
  for (std::size_t i = 0; i < work.setup().things.size(); ++i) {
    const auto thing = static_cast<ThingId>(i);
    if (work.kind(thing) != bench::ThingKind::Bolt) continue;
    if (bench::see_where(*work.bench, thing) != bench::Whereabouts::Tray) continue;
    const double off_m = bench::see_bolt_length_m(*work.bench, thing) - line.length_m.value_or(0.0);
    if (off_m < kRuler_m && off_m > -kRuler_m) return thing;
  }
  return kNoThing;
}

Task bring_bolt(Work& work, HandId hand, ThingId bolt, const Instruction& line, std::uint64_t attempt) {
  co_await take(work, hand, bolt, Grip::None);
  const double sd_rad = work.skill().start_tilt_sd_rad;
  Pose pose;
  pose.thing = owner_of(work, PlaceKind::Hole, kNoThing);
  pose.place = PlaceKind::Hole;
  pose.bolt = line.bolt;
  pose.u_um = micro(line.offset_m.value_or(0.0));
  // held straighter each time it has to be done again
  const double tilt_rad = sd_rad * work.normal("start tilt", attempt) / static_cast<double>(1 + attempt);
  pose.tilt_x_urad = micro(line.tilt_rad ? *line.tilt_rad : tilt_rad);
  co_await bring(work, hand, pose);
}

// turns it in; true in `stiff` when it went hard at once
Task turn_in(Work& work, HandId hand, double turns, bool& stiff) {
  Twirl in;
  in.until = [&work, hand, turns] { return work.sense(hand).caught && turns_in(work, hand) >= turns; };
  co_await twirl(work, hand, in);
  // a crossed thread stands within the first half turn; a patch lets it in a good turn before it drags
  stiff = in.stalled && turns_in(work, hand) < 0.8;
}

Task back_out(Work& work, HandId hand) {
  Twirl out;
  out.sense_1 = -1.0;
  const double from = work.sense(hand).turn_rad;
  out.until = [&work, hand, from] {
    const bench::HandSense s = work.sense(hand);
    return !s.caught && s.turn_rad < from - base::kTwoPi;
  };
  co_await twirl(work, hand, out);
  co_await draw_away(work, hand);
}

bool journeyman_feel(const Work& work) { return work.skill().pull_again_1 < 0.2; }

// strokes by the handle until the head is just off the face or bears
Task strokes_in(Work& work, HandId hand, ThingId tool, const Instruction& line, double gap_m) {
  co_await steady_wheel(work, line);
  co_await seat(work, hand, tool, Grip::Handle, line);
  const double from = work.sense(hand).fastener_rad;
  const BoltId bolt = line.bolt;
  Pull plan;
  plan.rate_rad_s = base::radians(90.0);
  plan.press_n = press_of(work, line);
  plan.press_more = !told_how(line);
  plan.until = [&work, bolt, gap_m, from](const bench::HandSense& s) {
    return s.bears || bench::see_bolt(*work.bench, bolt).head_gap_m <= gap_m ||
           s.fastener_rad > from + base::radians(170.0);
  };
  co_await pull(work, hand, plan);
  co_await slacken(work, hand);
  if (plan.stalled) co_await work.give_up("the bolt does not turn in", "see whether it was started straight");
}

}  // namespace

Task do_start(Work& work, const Instruction& line) {
  const HandId hand = work.memory.main;
  const bench::BoltSight before = bench::see_bolt(*work.bench, line.bolt);
  const bool any = line.says(Say::AnyBolt);
  if (before.present && (any || before.thing == line.thing) && !rests_at(work, hand, PlaceKind::Hole, line.bolt)) {
    co_return;
  }
  // a bolt that was held already when the line was begun again is the one
  ThingId bolt = work.sense(hand).holding;
  if (!any || bolt == kNoThing || work.kind(bolt) != bench::ThingKind::Bolt) bolt = bolt_of_line(work, line);
  if (bolt == kNoThing) co_await work.give_up("no loose bolt is of that length", "name another length, or a bolt");
  const double turns = line.count_1.value_or(kStartTurns_1);
  bool turn_back = line.says(Say::TurningBack);
  if (!turn_back && !line.says(Say::NoTurningBack)) turn_back = journeyman_feel(work) || work.unit("turn back") < 0.2;
  bool stiff = true;
  for (std::uint64_t attempt = 0; stiff && attempt < kTries; ++attempt) {
    co_await bring_bolt(work, hand, bolt, line, attempt);
    if (turn_back) co_await find_start(work, hand);
    co_await turn_in(work, hand, turns, stiff);
    // told how to start it: so be it; else stiff early means out again and anew
    if (line.tilt_rad) break;
    if (stiff) {
      co_await back_out(work, hand);
      turn_back = true;
    }
  }
  co_await draw_away(work, hand);
  if (!bench::see_bolt(*work.bench, line.bolt).present) {
    co_await work.give_up("the bolt's thread did not catch", "start it straighter, turning back");
  }
}

Task do_run_in(Work& work, const Instruction& line) {
  const HandId hand = work.memory.main;
  const BoltId bolt = line.bolt;
  double gap_m = kOffTheFace_m;
  if (line.count_1) gap_m += *line.count_1 * work.setup().hub.thread_pitch_m;
  const auto there = [&work, bolt, hand, gap_m] {
    return bench::see_bolt(*work.bench, bolt).head_gap_m <= gap_m || work.sense(hand).bears;
  };
  if (!bench::see_bolt(*work.bench, bolt).present) {
    co_await work.give_up("there is no bolt in that hole", "start one in it first");
  }
  if (bench::see_bolt(*work.bench, bolt).head_gap_m <= gap_m) co_return;
  if (line.says(Say::Fingers)) {
    Pose pose;
    pose.thing = owner_of(work, PlaceKind::BoltHead, kNoThing);
    pose.place = PlaceKind::BoltHead;
    pose.bolt = bolt;
    co_await touch(work, hand, pose);
    Twirl plan;
    plan.until = there;
    co_await twirl(work, hand, plan);
    co_await draw_away(work, hand);
    co_return;
  }
  const ThingId tool = turning_tool(work, line);
  if (tool == kNoThing) co_await work.give_up("no tool is named and the hand holds none", "add \"with the key\"");
  for (int i = 0; i < 60; ++i) {
    co_await seat(work, hand, tool, Grip::Shaft, line);
    Twirl plan;
    plan.until = there;
    co_await twirl(work, hand, plan);
    if (plan.done || work.sense(hand).bears) break;
    co_await strokes_in(work, hand, tool, line, gap_m);
    if (there()) break;
  }
  co_await draw_away(work, hand);
}

Task do_snug(Work& work, const Instruction& line) {
  const HandId hand = work.memory.main;
  const ThingId tool = turning_tool(work, line);
  if (tool == kNoThing) co_await work.give_up("no tool is named and the hand holds none", "add \"with the key\"");
  co_await steady_wheel(work, line);
  co_await seat(work, hand, tool, Grip::Handle, line);
  const double aim_nm = line.torque_nm.value_or(kSnug_nm);
  Pull plan;
  plan.rate_rad_s = base::radians(40.0);
  plan.press_n = press_of(work, line);
  plan.press_more = !told_how(line);
  // the patch drags before the head bears: what counts is the pull on top of that
  double drag_nm = 0.0;
  bool bore = false;
  plan.until = [&drag_nm, &bore, aim_nm](const bench::HandSense& s) {
    if (!s.bears) {
      drag_nm = s.torque_nm;
      return false;
    }
    if (!bore && s.fastener_rad <= 0.0) drag_nm = 0.0;  // it bore already when the tool came
    bore = true;
    return s.torque_nm >= aim_nm && s.torque_nm >= 0.6 * drag_nm + 0.5 * aim_nm;
  };
  co_await pull(work, hand, plan);
  co_await slacken(work, hand);
  if (plan.stalled) co_await work.give_up("the bolt does not come to bear", "run it in first, with a longer arm");
  co_await draw_away(work, hand);
}

}  // namespace proofstand::hand

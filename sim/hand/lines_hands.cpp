// Lines about the hands themselves: gloves, taking, passing, touching, bringing.
#include "sim/hand/instructions.h"
#include "sim/hand/reaching.h"

namespace proofstand::hand {
namespace {

// what rests at a place without being told for how long
constexpr double kTouch_s = 0.6;
constexpr double kLook_s = 1.3;

Task one_glove(Work& work, HandId hand, bool on) {
  forget_hold(work, hand);
  co_await empty(work, hand);
  work.act(event::make_glove(0, hand, on));
  co_await work.pause(4);
  co_await settle(work, hand);
}

Pose pose_of(Work& work, const Instruction& line) {
  Pose pose;
  pose.thing = owner_of(work, line.place, line.thing);
  pose.place = line.place;
  pose.bolt = line.bolt;
  pose.u_um = micro(line.length_m.value_or(0.0));
  pose.v_urad = micro(line.angle_rad.value_or(0.0));
  pose.tilt_x_urad = micro(line.tilt_rad.value_or(0.0));
  return pose;
}

}  // namespace

Task do_glove(Work& work, const Instruction& line) {
  const bool on = line.doing == Doing::Glove;
  if (line.hand == WhichHand::Both) {
    co_await one_glove(work, work.memory.main, on);
    co_await one_glove(work, Work::other(work.memory.main), on);
  } else {
    co_await one_glove(work, work.hand_of(line.hand, work.memory.main), on);
  }
}

Task do_take(Work& work, const Instruction& line) {
  co_await take(work, work.hand_of(line.hand, work.memory.main), line.thing, line.grip);
}

Task do_put_back(Work& work, const Instruction& line) {
  for (const HandId hand : {HandId::Left, HandId::Right}) {
    if (work.sense(hand).holding == line.thing) co_await empty(work, hand);
  }
}

Task do_pass(Work& work, const Instruction& line) {
  const HandId from = work.sense(HandId::Left).holding == line.thing ? HandId::Left : HandId::Right;
  if (work.sense(from).holding != line.thing) {
    co_await work.give_up("no hand holds \"" + work.name(line.thing) + "\"", "take it first");
  }
  co_await take(work, Work::other(from), line.thing, Grip::None);
}

Task do_let_go(Work& work, const Instruction& line) {
  for (const HandId hand : {HandId::Left, HandId::Right}) {
    const bool named =
        line.hand == WhichHand::Both || (line.hand == WhichHand::Unsaid && line.thing == kNoThing) ||
        (line.hand != WhichHand::Unsaid && work.hand_of(line.hand, hand) == hand) ||
        (line.thing != kNoThing && (work.at(hand).thing == line.thing || work.sense(hand).holding == line.thing));
    if (!named) continue;
    forget_hold(work, hand);
    co_await draw_away(work, hand);
  }
}

Task do_turn_over(Work& work, const Instruction& line) {
  HandId hand = work.memory.main;
  if (work.sense(Work::other(hand)).holding == line.thing) hand = Work::other(hand);
  co_await take(work, hand, line.thing, Grip::None);
  work.act(event::make_plain(0, event::ActionKind::TurnOver, hand));
  co_await work.pause(4);
  co_await settle(work, hand);
}

Task do_touch(Work& work, const Instruction& line) {
  const HandId hand = work.hand_of(line.hand, work.memory.main);
  forget_hold(work, hand);
  Pose pose = pose_of(work, line);
  // about the middle of a track, as well as this hand aims; elsewhere it means nothing
  if (!line.length_m) pose.u_um = micro(0.072 + work.skill().point_sd_m * work.normal("point"));
  co_await touch(work, hand, pose);
  co_await work.pause_s(line.time_s.value_or(kTouch_s));
  co_await draw_away(work, hand);
}

Task do_hold_near(Work& work, const Instruction& line) {
  const HandId hand = work.hand_of(line.hand, work.memory.main);
  forget_hold(work, hand);
  co_await draw_away(work, hand);
  const ThingId thing = owner_of(work, line.place, line.thing);
  work.act(event::make_near(0, hand, thing, line.place, line.bolt));
  co_await work.pause(4);
  co_await settle(work, hand);
  co_await work.pause_s(line.time_s.value_or(kLook_s));
  co_await draw_away(work, hand);
}

Task do_bring(Work& work, const Instruction& line) {
  const HandId hand = work.memory.main;
  co_await take(work, hand, line.tool, Grip::None);
  co_await bring(work, hand, pose_of(work, line));
  if (line.time_s) {
    co_await work.pause_s(*line.time_s);
    co_await draw_away(work, hand);
  }
}

Task do_hand_over(Work& work, const Instruction&) {
  work.memory.hold.kind = StandingHold::Kind::None;
  co_await empty(work, HandId::Left);
  co_await empty(work, HandId::Right);
  work.act(event::make_hand_over(0));
  co_await work.pause(1);
}

}  // namespace proofstand::hand

// Lines about surfaces: drops out of bottles, and wiping.
#include "sim/hand/instructions.h"
#include "sim/hand/reaching.h"

namespace proofstand::hand {
namespace {

constexpr double kWipePress_n = 15.0;
constexpr double kWheelTurn_rad = base::kTwoPi * 1.15;  // a little more than round, so that no gap is left
constexpr double kSlowest_s = 60.0;

bool is_track(PlaceKind place) { return place == PlaceKind::TrackOuter || place == PlaceKind::TrackInner; }

double mid_track_m(Work& work, ThingId rotor) {
  return work.setup().rotors[work.setup().things[event::index_of(rotor)].part].diameter_m / 2.0 - 0.00775;
}

// the rag of a line: the one named, else the one a hand holds
ThingId rag_of(Work& work, const Instruction& line) {
  if (line.tool != kNoThing) return line.tool;
  for (const HandId hand : {work.memory.main, Work::other(work.memory.main)}) {
    const ThingId held = work.sense(hand).holding;
    if (held != kNoThing && work.kind(held) == bench::ThingKind::Rag) return held;
  }
  return kNoThing;
}

Task ready_rag(Work& work, HandId hand, ThingId rag, Grip grip, bool fresh) {
  co_await take(work, hand, rag, grip);
  if (!fresh) co_return;
  co_await draw_away(work, hand);
  work.act(event::make_plain(0, event::ActionKind::TurnOver, hand));
  co_await work.pause(4);
  co_await settle(work, hand);
}

// round and round the track: the hand follows at its own speed
Task stroke_track(Work& work, HandId hand, double radius_m, double turns, double press_n) {
  const double way_rad = base::kTwoPi * turns + 0.3;
  work.act(event::make_aim_face(0, hand, micro(radius_m), 0, micro(press_n) / 1000));
  co_await work.pause(60);
  const base::Tick began = work.now();
  const double speed_rad_s = 0.25 / radius_m;
  work.act(event::make_aim_face(0, hand, micro(radius_m), micro(way_rad), micro(press_n) / 1000));
  while (base::seconds(work.now() - began) < way_rad / speed_rad_s + 0.1) co_await work.pause(24);
}

// to and fro over a seat, a carrier, a thread
Task stroke_patch(Work& work, HandId hand, double way_m, double press_n) {
  constexpr double kSwing_m = 0.030;
  double done_m = 0.0;
  bool out = true;
  while (done_m < way_m) {
    work.act(event::make_aim_face(0, hand, micro(out ? kSwing_m : 0.0), 0, micro(press_n) / 1000));
    co_await work.pause(30);
    done_m += kSwing_m;
    out = !out;
  }
}

}  // namespace

Task do_wet(Work& work, const Instruction& line) {
  const HandId hand = work.memory.main;
  const HandId other = Work::other(hand);
  forget_hold(work, other);
  co_await ready_rag(work, other, line.thing, Grip::None, line.says(Say::FreshFold));
  co_await draw_away(work, other);
  co_await take(work, hand, line.tool, Grip::None);
  Pose pose;
  pose.thing = line.thing;
  pose.place = PlaceKind::Body;
  co_await bring(work, hand, pose);
  work.act(event::make_squeeze(0, hand, static_cast<std::int64_t>(line.count_1.value_or(1.0))));
  co_await work.pause(60);
  co_await empty(work, hand);
}

Task do_squeeze(Work& work, const Instruction& line) {
  const HandId hand = work.memory.main;
  Pose pose;
  pose.bolt = line.bolt;
  if (line.place == PlaceKind::None) {
    pose.thing = line.thing;
    pose.place = line.thing != kNoThing && work.kind(line.thing) == bench::ThingKind::Bolt ? PlaceKind::BoltThread
                                                                                           : PlaceKind::Body;
  } else {
    pose.thing = owner_of(work, line.place, line.thing);
    pose.place = line.place;
  }
  const bool is_bolt = pose.thing != kNoThing && work.kind(pose.thing) == bench::ThingKind::Bolt;
  if (line.says(Say::UnlessPatch) && is_bolt && bench::see_patch(*work.bench, pose.thing)) co_return;
  if (pose.thing == kNoThing)
    co_await work.give_up("where to is not said", "add \"onto new bolt 3\" or \"into hole 3\"");
  if (is_track(pose.place)) pose.u_um = micro(mid_track_m(work, pose.thing));
  co_await take(work, hand, line.tool, Grip::None);
  co_await bring(work, hand, pose);
  work.act(event::make_squeeze(0, hand, static_cast<std::int64_t>(line.count_1.value_or(1.0))));
  co_await work.pause(60);
  const bench::BottlePart& bottle = work.setup().bottles[work.setup().things[event::index_of(line.tool)].part];
  if (bottle.fluid == bench::FluidKind::Locker) work.memory.locker_used = true;
  co_await draw_away(work, hand);
}

Task do_wipe(Work& work, const Instruction& line) {
  const HandId hand = work.hand_of(line.hand, work.memory.main);
  const ThingId rag = rag_of(work, line);
  if (rag == kNoThing) co_await work.give_up("no rag is named and no hand holds one", "add \"with the clean rag\"");
  forget_hold(work, hand);
  co_await ready_rag(work, hand, rag, Grip::Flat, line.says(Say::FreshFold));
  Pose pose;
  pose.thing = owner_of(work, line.place, line.thing);
  pose.place = line.place;
  pose.bolt = line.bolt;
  const bool track = is_track(line.place);
  if (track) pose.u_um = micro(mid_track_m(work, pose.thing));
  co_await bring(work, hand, pose);
  const double press_n = line.force_n.value_or(kWipePress_n);
  const double times = line.count_1.value_or(track ? 2.0 : 3.0);
  if (track) {
    co_await stroke_track(work, hand, mid_track_m(work, pose.thing), line.says(Say::HalfFace) ? 0.5 : times, press_n);
  } else {
    co_await stroke_patch(work, hand, 0.15 * times, press_n);
  }
  co_await draw_away(work, hand);
}

Task do_wipe_both(Work& work, const Instruction& line) {
  const HandId hand = work.memory.main;
  const HandId other = Work::other(hand);
  const ThingId rag = rag_of(work, line);
  if (rag == kNoThing) co_await work.give_up("no rag is named and no hand holds one", "add \"with the clean rag\"");
  work.memory.hold.kind = StandingHold::Kind::None;
  co_await draw_away(work, other);
  co_await ready_rag(work, hand, rag, Grip::Pinched, line.says(Say::FreshFold));
  const double radius_m = mid_track_m(work, line.thing);
  Pose tyre;
  tyre.thing = owner_of(work, PlaceKind::Tyre, kNoThing);
  tyre.place = PlaceKind::Tyre;
  co_await touch(work, other, tyre);
  co_await grip_at(work, other, Grip::Fingers);
  Pose pose;
  pose.thing = line.thing;
  pose.place = PlaceKind::TrackOuter;
  pose.u_um = micro(radius_m);
  co_await bring(work, hand, pose);
  work.act(event::make_aim_face(0, hand, micro(radius_m), 0, micro(line.force_n.value_or(kWipePress_n)) / 1000));
  co_await work.pause(60);
  // the wheel turned slowly, kept turning, until the track has been right round
  const double from = bench::see_wheel_angle_rad(*work.bench);
  const double way = line.angle_rad.value_or(kWheelTurn_rad);
  const double at = work.sense(other).turn_rad;
  work.act(event::make_aim_turn(0, other, micro(at + base::radians(78.0))));
  work.act(event::make_plain(0, event::ActionKind::Keep, other));
  const base::Tick began = work.now();
  while (base::seconds(work.now() - began) < kSlowest_s) {
    const double gone = bench::see_wheel_angle_rad(*work.bench) - from;
    if (gone >= way || gone <= -way) break;
    co_await work.pause(12);
  }
  work.act(event::make_plain(0, event::ActionKind::Slack, other));
  co_await work.pause(24);
  co_await draw_away(work, hand);
  co_await draw_away(work, other);
}

}  // namespace proofstand::hand

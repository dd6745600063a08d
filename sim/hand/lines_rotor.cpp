// Lines about the rotor: off, on, down, and turned within its play.
#include "sim/hand/instructions.h"
#include "sim/hand/pulling.h"

namespace proofstand::hand {
namespace {

constexpr double kGentleLead_rad = base::radians(40.0);

PlaceKind place_of_grip(Grip grip) {
  switch (grip) {
    case Grip::Edge:
      return PlaceKind::Edge;
    case Grip::InnerEdge:
      return PlaceKind::InnerEdge;
    case Grip::Track:
      return PlaceKind::TrackOuter;
    default:
      return PlaceKind::Arms;
  }
}

// fingers on the rotor as it hangs on the hub, turned until it stands against the bolts or the other way
Task turn_in_play(Work& work, HandId hand, ThingId rotor, Grip grip, double sense_1) {
  if (bench::see_rotor_on_hub(*work.bench) != rotor) {
    co_await work.give_up("\"" + work.name(rotor) + "\" is not on the hub", "put it on first");
  }
  Pose pose;
  pose.thing = rotor;
  pose.place = place_of_grip(grip);
  co_await touch(work, hand, pose);
  Pull plan;
  plan.sense_1 = sense_1;
  plan.rate_rad_s = base::radians(60.0);
  plan.most_lead_rad = kGentleLead_rad;
  plan.until = [](const bench::HandSense& s) { return s.dead_stop && s.lead_rad * s.lead_rad > 0.1; };
  co_await pull(work, hand, plan);
}

bool held_printed_out(Work& work, ThingId rotor) { return bench::see_printed_up(*work.bench, rotor); }

Task right_way_round(Work& work, HandId hand, ThingId rotor, bool printed_out) {
  if (held_printed_out(work, rotor) == printed_out) co_return;
  work.act(event::make_plain(0, event::ActionKind::TurnOver, hand));
  co_await work.pause(4);
  co_await settle(work, hand);
  if (held_printed_out(work, rotor) != printed_out) {
    co_await work.give_up("the rotor did not turn over", "report this line");
  }
}

}  // namespace

Task do_hold_against(Work& work, const Instruction& line) {
  const HandId hand = work.hand_of(line.hand, Work::other(work.memory.main));
  forget_hold(work, hand);
  co_await turn_in_play(work, hand, line.thing, line.grip, 1.0);
  work.act(event::make_plain(0, event::ActionKind::Keep, hand));
  co_await work.pause(2);
  work.memory.hold = {StandingHold::Kind::RotorAgainst, hand, line.thing, line.grip};
}

Task do_turn_rotor(Work& work, const Instruction& line) {
  const HandId hand = work.hand_of(line.hand, Work::other(work.memory.main));
  forget_hold(work, hand);
  co_await turn_in_play(work, hand, line.thing, line.grip, line.doing == Doing::TurnWith ? -1.0 : 1.0);
  co_await draw_away(work, hand);
}

Task restore_hold(Work& work) {
  const StandingHold hold = work.memory.hold;
  if (hold.kind == StandingHold::Kind::None || work.sense(hold.hand).stage == bench::HandStage::At) co_return;
  if (hold.kind == StandingHold::Kind::RotorAgainst) {
    co_await turn_in_play(work, hold.hand, hold.thing, hold.grip, 1.0);
  } else {
    Pose pose;
    pose.thing = owner_of(work, PlaceKind::Tyre, kNoThing);
    pose.place = PlaceKind::Tyre;
    co_await touch(work, hold.hand, pose);
  }
  work.act(event::make_plain(0, event::ActionKind::Keep, hold.hand));
  co_await work.pause(2);
}

Task do_take_off(Work& work, const Instruction& line) {
  const HandId hand = work.hand_of(line.hand, work.memory.main);
  if (bench::see_rotor_on_hub(*work.bench) != line.thing) {
    if (work.sense(hand).holding == line.thing) co_return;
    co_await work.give_up("\"" + work.name(line.thing) + "\" is not on the hub", "name the rotor that is");
  }
  forget_hold(work, hand);
  co_await take(work, hand, line.thing, line.grip == Grip::None ? Grip::Edge : line.grip);
}

Task do_put_on(Work& work, const Instruction& line) {
  const HandId hand = work.hand_of(line.hand, work.memory.main);
  if (bench::see_rotor_on_hub(*work.bench) == line.thing) {
    co_await draw_away(work, hand);
    co_return;
  }
  forget_hold(work, hand);
  co_await take(work, hand, line.thing, line.grip == Grip::None ? Grip::Edge : line.grip);
  co_await right_way_round(work, hand, line.thing, line.says(Say::PrintedOut));
  Pose pose;
  pose.thing = owner_of(work, PlaceKind::HubSeat, kNoThing);
  pose.place = PlaceKind::HubSeat;
  pose.v_urad = micro(line.angle_rad.value_or(0.0));
  co_await bring(work, hand, pose);
  co_await draw_away(work, hand);
  if (bench::see_rotor_on_hub(*work.bench) != line.thing) {
    co_await work.give_up("\"" + work.name(line.thing) + "\" does not hang on the hub", "see what stands in the way");
  }
}

Task do_lay_down(Work& work, const Instruction& line) {
  HandId hand = work.memory.main;
  if (work.sense(Work::other(hand)).holding == line.thing) hand = Work::other(hand);
  co_await take(work, hand, line.thing, Grip::None);
  if (line.says(Say::PrintedOut) || line.says(Say::PrintedIn)) {
    co_await right_way_round(work, hand, line.thing, line.says(Say::PrintedOut));
  }
  Pose pose;
  pose.thing = owner_of(work, PlaceKind::BenchTop, kNoThing);
  pose.place = PlaceKind::BenchTop;
  co_await lay(work, hand, pose);
}

}  // namespace proofstand::hand

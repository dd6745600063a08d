// Clicks and choices: from a place that is meant to the one action that goes there.
#include "sim/base/math.h"
#include "sim/bench/hand_check.h"
#include "sim/bench/hand_contact.h"
#include "sim/hand/gesture_inside.h"

namespace proofstand::hand {
namespace {

using bench::HandStage;
using bench::ThingKind;
using event::ActionKind;
using event::Grip;
using event::PlaceKind;

constexpr double kTiltAtRim_rad = base::radians(6.0);  // of what is set in at its mouth's very edge

bool at_same(const bench::HoldSight& hold, const Pointed& place) {
  return hold.stage == HandStage::At && !hold.near && hold.at_thing == place.thing && hold.at_place == place.place &&
         (!bench::numbered_place(place.place) || hold.at_bolt == place.bolt);
}

// the lean that goes with an offset from the middle
double lean_rad(const Pointed& place, double off_m) {
  return place.radius_m > 0.0 ? kTiltAtRim_rad * base::clamp_1(off_m / place.radius_m, -1.0, 1.0) : 0.0;
}

}  // namespace

bool same_place(const Pointed& a, const Pointed& b) {
  return a.thing == b.thing && a.place == b.place && a.bolt == b.bolt && a.grip == b.grip;
}

bench::ThingKind TwoHands::Inside::kind(event::ThingId thing) const {
  return bench.setup().things[event::index_of(thing)].kind;
}

bench::ThingKind TwoHands::Inside::held_kind(const bench::HoldSight& h) const {
  return h.holding == event::kNoThing ? ThingKind::Bench : kind(h.holding);
}

event::HandId TwoHands::Inside::other(event::HandId hand) {
  return hand == event::HandId::Left ? event::HandId::Right : event::HandId::Left;
}

bool TwoHands::Inside::takes_by_click(const Pointed& place) const {
  if (kind(place.thing) == ThingKind::Wheel) return place.place == PlaceKind::Axle;
  return bench::see_loose(bench, place.thing);
}

void TwoHands::Inside::click_nothing() {
  const bench::HoldSight h = hold();
  if (h.stage == HandStage::Busy) {
    WaitingInput input;
    input.kind = WaitingInput::Kind::Nothing;
    later(input);
  } else if (cord().drawn) {
    slacken(active);
  } else if (h.stage == HandStage::At) {
    send_motion(event::make_plain(0, ActionKind::Leave, active));
  }
}

bool TwoHands::Inside::take_grip(const Pointed& place, const bench::HoldSight& h) {
  if (h.holding == event::kNoThing || place.thing != h.holding) return false;
  if (place.grip != Grip::None && place.grip != h.grip) send_motion(event::make_grip(0, active, place.grip));
  return true;
}

void TwoHands::Inside::bring_to(const Pointed& place, const bench::HoldSight& h) {
  const ThingKind what = held_kind(h);
  const CordWork& c = cord();
  std::int64_t u = place.u_um;
  std::int64_t v = place.v_urad;
  double tilt_x = c.held_tilt_x_rad, tilt_y = c.held_tilt_y_rad;
  // a tool's lean along its offset u is the bench's; across it, and for a bolt at a hole, it goes in as tilt
  if (bench::is_tool(what) && place.place == PlaceKind::BoltRecess) tilt_y += lean_rad(place, place.off_y_m);
  if (what == ThingKind::Bolt && place.place == PlaceKind::Hole) {
    tilt_x += lean_rad(place, place.off_x_m);
    tilt_y += lean_rad(place, place.off_y_m);
  }
  if (what == ThingKind::Rotor && place.place == PlaceKind::HubSeat) {
    // a rotor goes on as far turned as it is held
    u = 0;
    v = in_micro(c.held_tilt_x_rad);
    tilt_x = 0.0;
  }
  send_motion(
      event::make_bring(0, active, place.thing, place.place, place.bolt, u, v, in_micro(tilt_x), in_micro(tilt_y)));
}

void TwoHands::Inside::go_to(const Pointed& place, Verb verb) {
  const bench::HoldSight h = hold();
  if (h.stage == HandStage::Busy) {
    WaitingInput input;
    input.place = place;
    input.verb = verb;
    later(input);
    return;
  }
  if (cord().drawn) return;  // a hand that pulls goes nowhere else before it is slack
  if (verb == Verb::Near) {
    send_motion(event::make_near(0, active, place.thing, place.place, place.bolt));
    return;
  }
  if (take_grip(place, h)) return;
  if (at_same(h, place) && verb == Verb::Natural) {
    if (bent(h, 0.0)) send_motion(event::make_plain(0, ActionKind::Regrip, active));
    return;
  }
  if (place.place == PlaceKind::GloveBox && verb == Verb::Natural) {
    send_motion(event::make_glove(0, active, !h.gloved));
    return;
  }
  const bool holds = h.holding != event::kNoThing;
  // what only lies in the tray goes back there; a rag brought to it would wipe it
  const ThingKind held = held_kind(h);
  const bool back = bench::is_instrument(held) || held == ThingKind::Rag || held == ThingKind::Bottle;
  if (verb != Verb::Take && verb != Verb::Touch && holds && place.place == PlaceKind::Tray && back) {
    send_motion(event::make_plain(0, ActionKind::PutBack, active));
    return;
  }
  if (verb == Verb::Bring || (verb == Verb::Natural && holds)) {
    bring_to(place, h);
  } else if (verb == Verb::Take || (verb == Verb::Natural && takes_by_click(place))) {
    const ThingKind what = kind(place.thing);
    Grip grip = place.grip != Grip::None ? place.grip : bench::natural_touch(place.place);
    if (!bench::grip_fits(what, grip) || what != ThingKind::Rotor) grip = place.grip;
    send_motion(event::make_take(0, active, place.thing, grip));
  } else {
    send_motion(event::make_touch(0, active, place.thing, place.place, place.bolt, place.u_um, place.v_urad));
  }
}

}  // namespace proofstand::hand

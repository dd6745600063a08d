// Keys, the wheel and the step panel's buttons: taps and commands, by the same code.
#include "sim/base/math.h"
#include "sim/bench/hand_contact.h"
#include "sim/hand/gesture_inside.h"

namespace proofstand::hand {
namespace {

using bench::Contact;
using bench::HandStage;
using bench::ThingKind;
using event::ActionKind;
using event::Grip;

constexpr double kThrow_1 = 1.0;  // turns a second that the throw command gives
constexpr double kFineThrow_1 = 0.3;

double sign_of(Tap way) { return way == Tap::Left || way == Tap::Down ? -1.0 : 1.0; }
bool sideways(Tap way) { return way == Tap::Left || way == Tap::Right; }

}  // namespace

Answer TwoHands::Inside::tap(Tap way, bool finely, int count) {
  const bench::HoldSight h = hold();
  if (h.stage == HandStage::Busy) {
    WaitingInput input;
    input.kind = WaitingInput::Kind::Tap;
    input.way = way;
    input.fine = finely;
    input.count = count;
    later(input);
    return Answer::Done;
  }
  if (!cord_here(h)) return Answer::NotMine;
  sync(active);
  CordWork& c = cord();
  c.spin_left_rad = 0.0;
  const double taps_1 = sign_of(way) * static_cast<double>(count) * (finely ? kFine_1 : 1.0);
  switch (motion_of(h, held_kind(h))) {
    case Motion::None:
      return Answer::Done;
    case Motion::Drops:
      if (taps_1 > 0.0) send(event::make_squeeze(0, active, count));
      return Answer::Done;
    case Motion::Face: {
      const double radius_m = base::sqrt_1(c.face_x_m * c.face_x_m + c.face_y_m * c.face_y_m);
      double to_m = radius_m, angle_rad = c.face_angle_rad;
      // clockwise as one looks at the face is against its angles
      if (sideways(way)) {
        angle_rad -= taps_1 * kTapFace_m / (radius_m > kTapFace_m ? radius_m : kTapFace_m);
      } else {
        to_m = base::clamp_1(radius_m + taps_1 * kTapFace_m, 0.0, 1.0);
      }
      if (c.press_step < 0) set_face_press(active, face_press(held_kind(h)).first);
      c.face_x_m = to_m * base::cos_rad(angle_rad);
      c.face_y_m = to_m * base::sin_rad(angle_rad);
      c.face_angle_rad = angle_rad;
      c.lifted = false;
      break;
    }
    case Motion::Turn:
      if (sideways(way)) {
        if (bent(h, taps_1)) {
          send_motion(event::make_plain(0, ActionKind::Regrip, active));
          return Answer::Done;
        }
        c.last_tap_1 = taps_1 < 0.0 ? -1.0 : 1.0;
        turn_by(active, h, taps_1 * tap_turn_rad(h));
        break;
      }
      [[fallthrough]];
    case Motion::Along:
      if (!sideways(way) && h.hold.presses) press_to(active, c.along_m + taps_1 * kTapAlong_m);
      break;
  }
  flush(active);
  return Answer::Done;
}

void TwoHands::Inside::tip_by(const bench::HoldSight& h, double x_rad, double y_rad) {
  CordWork& c = cord();
  if (h.holding == event::kNoThing || h.stage == HandStage::Busy) return;
  if (h.stage == HandStage::At) {
    const double to_x = h.tilt_x_rad + x_rad, to_y = h.tilt_y_rad + y_rad;
    if (in_micro(to_x) == in_micro(h.tilt_x_rad) && in_micro(to_y) == in_micro(h.tilt_y_rad)) return;
    send(event::make_tip(0, active, in_micro(to_x), in_micro(to_y)));
  } else {
    c.held_tilt_x_rad += x_rad;
    c.held_tilt_y_rad += y_rad;
  }
}

Answer TwoHands::Inside::tip(Tap way, bool finely) {
  const bench::HoldSight h = hold();
  if (h.holding == event::kNoThing) return Answer::NotMine;
  const double step = sign_of(way) * kTapTilt_rad * (finely ? kFine_1 : 1.0);
  if (h.stage == HandStage::Busy) {
    WaitingInput input;
    input.kind = WaitingInput::Kind::Tip;
    input.way = way;
    input.fine = finely;
    later(input);
  } else {
    tip_by(h, sideways(way) ? step : 0.0, sideways(way) ? 0.0 : step);
  }
  return Answer::Done;
}

void TwoHands::Inside::notch(const bench::HoldSight& h, double notches_1, bool finely) {
  CordWork& c = cord();
  const double share_1 = notches_1 * (finely ? kFine_1 : 1.0);
  const double turn_rad = notch_turn_rad(h, held_kind(h));
  if (turn_rad > 0.0) {
    // a line of a scale is a line, however finely the wheel is turned
    const double way_rad = turn_rad * (h.hold.contact == Contact::Setting ? notches_1 : share_1);
    if (c.spin_left_rad == 0.0) {
      c.spin_at_rad = h.hand_turn_rad;
      c.spin_moved = now();
    }
    c.spin_left_rad += way_rad;
    return;
  }
  press_to(active, c.along_m + share_1 * kNotchAlong_m);
  flush(active);
}

Answer TwoHands::Inside::wheel(double notches_1, bool finely) {
  const bench::HoldSight h = hold();
  CordWork& c = cord();
  if (!cord_here(h)) return Answer::NotMine;
  const Motion motion = motion_of(h, held_kind(h));
  const bool working = drag != Drag::None;
  const bool spins = notch_turn_rad(h, held_kind(h)) > 0.0;
  const bool does = motion == Motion::Face || motion == Motion::Drops || h.hold.presses || spins;
  if (motion == Motion::None || !does) return working ? Answer::Done : Answer::NotMine;
  c.notches_1 += notches_1;
  const double whole_1 = static_cast<double>(static_cast<std::int64_t>(c.notches_1));
  if (whole_1 == 0.0) return Answer::Done;
  c.notches_1 -= whole_1;
  sync(active);
  if (motion == Motion::Face) {
    set_face_press(active, c.press_step + static_cast<int>(whole_1));
    flush(active);
  } else if (motion == Motion::Drops) {
    if (whole_1 > 0.0) send(event::make_squeeze(0, active, static_cast<std::int64_t>(whole_1)));
  } else if (!working || !spins) {
    notch(h, whole_1, finely);
  }
  return Answer::Done;
}

Answer TwoHands::Inside::escape() {
  waiting.reset();
  const bool button = drag != Drag::None;
  drop_button();
  const bench::HoldSight h = hold();
  if (h.stage == HandStage::Busy) return Answer::Done;
  if (cord().drawn) {
    slacken(active);
    return Answer::Done;
  }
  if (button) return Answer::Done;  // a press or a drag that had not acted yet is taken back
  if (h.stage != HandStage::At) return Answer::NotMine;
  send_motion(event::make_plain(0, ActionKind::Leave, active));
  return Answer::Done;
}

Answer TwoHands::Inside::keep() {
  const bench::HoldSight h = hold();
  if (h.holding != event::kNoThing && held_kind(h) == ThingKind::Wheel) return Answer::BothHands;
  flush(active);
  drop_button();
  if (h.stage == HandStage::At) send(event::make_plain(0, ActionKind::Keep, active));
  active = other(active);
  return Answer::Done;
}

void TwoHands::Inside::next_grip() {
  const bench::HoldSight h = hold();
  const std::size_t count = event::grip_words().size();
  const bool tyre = h.hold.contact == Contact::TyreHand || h.hold.contact == Contact::TyreFingers;
  if (h.holding == event::kNoThing) {
    if (tyre) send_motion(event::make_grip(0, active, h.grip == Grip::Tyre ? Grip::Fingers : Grip::Tyre));
    return;
  }
  for (std::size_t i = 1; i < count; ++i) {
    const Grip grip = static_cast<Grip>((static_cast<std::size_t>(h.grip) + i) % count);
    if (grip == Grip::None || !bench::grip_fits(held_kind(h), grip)) continue;
    send_motion(event::make_grip(0, active, grip));
    return;
  }
}

Answer TwoHands::Inside::command(HandCommand what, bool finely) {
  if (what == HandCommand::Escape) return escape();
  const bench::HoldSight h = hold();
  if (h.stage == HandStage::Busy) {
    WaitingInput input;
    input.kind = WaitingInput::Kind::Command;
    input.command = what;
    input.fine = finely;
    later(input);
    return Answer::Done;
  }
  switch (what) {
    case HandCommand::Slack:
      drop_button();
      slacken(active);
      break;
    case HandCommand::Leave:
      drop_button();
      if (h.stage == HandStage::At) send_motion(event::make_plain(0, ActionKind::Leave, active));
      break;
    case HandCommand::Keep:
      return keep();
    case HandCommand::NextGrip:
      next_grip();
      break;
    case HandCommand::FreshGrip:
      if (h.stage == HandStage::At) send_motion(event::make_plain(0, ActionKind::Regrip, active));
      break;
    case HandCommand::TurnOver:
      if (h.holding != event::kNoThing) send_motion(event::make_plain(0, ActionKind::TurnOver, active));
      break;
    case HandCommand::Throw: {
      if (h.hold.contact != Contact::TyreHand && h.hold.contact != Contact::TyreFingers) return Answer::NotMine;
      drop_button();
      // the way of the last tap; clockwise on the disc side is backwards
      const double way_1 = cord().last_tap_1 > 0.0 ? -1.0 : 1.0;
      send_motion(event::make_throw(0, active, in_micro(way_1 * (finely ? kFineThrow_1 : kThrow_1) * base::kTwoPi)));
      break;
    }
    case HandCommand::PassOver:
      if (h.holding != event::kNoThing) send_motion(event::make_plain(0, ActionKind::Pass, active));
      break;
    case HandCommand::PutBack:
      if (h.holding != event::kNoThing) send_motion(event::make_plain(0, ActionKind::PutBack, active));
      break;
    case HandCommand::Lamp: {
      const bool held = h.holding != event::kNoThing && held_kind(h) == ThingKind::Lamp;
      const event::ThingId lamp = bench::first_of(bench.setup(), ThingKind::Lamp);
      if (lamp == event::kNoThing) break;
      if (held) {
        send_motion(event::make_plain(0, ActionKind::PutBack, active));
      } else {
        send_motion(event::make_take(0, active, lamp, Grip::None));
      }
      break;
    }
    case HandCommand::Glove:
      send_motion(event::make_glove(0, active, !h.gloved));
      break;
    case HandCommand::Harder:
      return wheel(1.0, finely);
    case HandCommand::Softer:
      return wheel(-1.0, finely);
    case HandCommand::Escape:
      break;
  }
  return Answer::Done;
}

}  // namespace proofstand::hand

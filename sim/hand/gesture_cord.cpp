// The cord's end of each hand: where it was asked to be, within full lead of the hand, sent when it changes by a step.
#include "sim/base/math.h"
#include "sim/hand/gesture_inside.h"

namespace proofstand::hand {
namespace {

using event::ActionKind;

constexpr double kSpinDone_rad = base::radians(0.5);
constexpr base::Tick kSpinStalled = 180;  // fingers give up that have not moved with all they have; that takes 128
constexpr double kSpinAhead_s = 0.10;     // two frames of the longest kind: so far ahead the fingers slow down
constexpr double kSpinLeast_1 = 0.05;
constexpr double kSlackLead_rad = base::radians(2.0);

double size_of(double x) { return x < 0.0 ? -x : x; }

// the angle of a point, taken so that it lies within half a turn of where the hand was
double unwrapped_rad(double angle_rad, double near_rad) {
  const double off = base::wrap_two_pi(angle_rad - near_rad + base::kPi) - base::kPi;
  return near_rad + off;
}

}  // namespace

bool TwoHands::Inside::cord_here(const bench::HoldSight& hold) {
  if (hold.stage == bench::HandStage::At) return true;
  return hold.stage == bench::HandStage::Free && hold.hold.contact == bench::Contact::Setting;
}

void TwoHands::Inside::send(const event::Action& action) {
  event::Action now_meant = action;
  now_meant.tick = now();
  sink(now_meant);
}

void TwoHands::Inside::send_motion(const event::Action& action) {
  const event::HandId hand = action.hand();
  CordWork& c = cord(hand);
  const double tilt_x = c.held_tilt_x_rad, tilt_y = c.held_tilt_y_rad, last_tap = c.last_tap_1;
  c = CordWork{};
  const bool new_thing = action.kind == ActionKind::Take || action.kind == ActionKind::PutBack;
  if (!new_thing) {
    c.held_tilt_x_rad = tilt_x;
    c.held_tilt_y_rad = tilt_y;
  }
  c.last_tap_1 = last_tap;
  send(action);
}

void TwoHands::Inside::sync(event::HandId hand) {
  CordWork& c = cord(hand);
  const bench::HoldSight h = hold(hand);
  if (!cord_here(h) || h.near) {
    c.drawn = false;
    c.asked = false;
    c.spin_left_rad = 0.0;
  }
  if (c.asked) return;  // what was just asked for has yet to be sent
  // without a stroke under way a rag stays where it is in space, whatever turns under it
  if (!c.drawn || (h.hold.contact == bench::Contact::Face && (hand != active || drag != Drag::Stroke))) {
    c.face_x_m = h.face_radius_m * base::cos_rad(h.face_angle_rad);
    c.face_y_m = h.face_radius_m * base::sin_rad(h.face_angle_rad);
    c.face_angle_rad = h.face_angle_rad;
  }
  if (c.drawn) return;
  c.turn_rad = h.hand_turn_rad;
  c.trail_rad = h.hand_turn_rad;
  c.along_m = h.hand_along_m;
  c.press_step = -1;
  c.lifted = false;
  c.sent_turn = in_micro(c.turn_rad);
  c.sent_along = in_micro(c.along_m);
  c.sent_face = {in_micro(h.face_radius_m), in_micro(h.face_angle_rad), whole(h.face_press_n, 1e-3)};
}

void TwoHands::Inside::turn_by(event::HandId hand, const bench::HoldSight& h, double turn_rad) {
  CordWork& c = cord(hand);
  c.asked = c.asked || turn_rad != 0.0;
  c.turn_rad += turn_rad;
  if (h.hold.twirls) {
    c.trail_rad = base::clamp_1(c.trail_rad, c.turn_rad - kFullTurn_rad, c.turn_rad + kFullTurn_rad);
  } else {
    c.turn_rad = base::clamp_1(c.turn_rad, h.hand_turn_rad - kFullTurn_rad, h.hand_turn_rad + kFullTurn_rad);
  }
}

void TwoHands::Inside::press_to(event::HandId hand, double along_m) {
  const bench::HoldSight h = hold(hand);
  cord(hand).asked = true;
  cord(hand).along_m = base::clamp_1(along_m, h.hand_along_m - kFullAlong_m, h.hand_along_m + kFullAlong_m);
}

void TwoHands::Inside::stroke_to(event::HandId hand, double x_m, double y_m, bool lifted) {
  CordWork& c = cord(hand);
  c.asked = true;
  c.face_x_m = x_m;
  c.face_y_m = y_m;
  c.lifted = lifted;
  if (x_m != 0.0 || y_m != 0.0) c.face_angle_rad = unwrapped_rad(base::atan2_rad(y_m, x_m), c.face_angle_rad);
}

void TwoHands::Inside::set_face_press(event::HandId hand, int step) {
  const FacePress press = face_press(held_kind(hold(hand)));
  CordWork& c = cord(hand);
  c.asked = true;
  c.press_step = step < -1 ? -1 : (step >= press.steps ? press.steps - 1 : step);
}

void TwoHands::Inside::flush(event::HandId hand) {
  const bench::HoldSight h = hold(hand);
  CordWork& c = cord(hand);
  c.asked = false;
  if (!cord_here(h) || h.near) return;
  if (h.hold.contact == bench::Contact::Face) {
    const FacePress press = face_press(held_kind(h));
    const bool presses = c.press_step >= 0 && !c.lifted;
    const double radius_m = base::sqrt_1(c.face_x_m * c.face_x_m + c.face_y_m * c.face_y_m);
    const std::array<std::int64_t, 3> face = {
        in_micro(radius_m), in_micro(c.face_angle_rad),
        presses ? whole(press.force_n[static_cast<std::size_t>(c.press_step)], 1e-3) : 0};
    if (face == c.sent_face) return;
    c.sent_face = face;
    c.drawn = true;
    send(event::make_aim_face(0, hand, face[0], face[1], face[2]));
    return;
  }
  if (h.hold.presses) {
    const std::int64_t along = in_micro(c.along_m);
    if (along != c.sent_along) {
      c.sent_along = along;
      c.drawn = true;
      send(event::make_aim_along(0, hand, along));
    }
  }
  if (!h.hold.turns) return;
  turn_by(hand, h, 0.0);  // once a frame: never more than full lead
  const std::int64_t turn = in_micro(c.turn_rad);
  if (turn == c.sent_turn) return;
  c.sent_turn = turn;
  c.drawn = true;
  send(event::make_aim_turn(0, hand, turn));
}

void TwoHands::Inside::slacken(event::HandId hand) {
  CordWork& c = cord(hand);
  if (!c.drawn) return;
  send(event::make_plain(0, ActionKind::Slack, hand));
  c.drawn = false;
  c.asked = false;
  c.spin_left_rad = 0.0;
  sync(hand);
}

// the bench twirls at a rate that the lead over the trailing point sets; near the end the lead is made small
void TwoHands::Inside::spin_on(event::HandId hand) {
  CordWork& c = cord(hand);
  if (c.spin_left_rad == 0.0) return;
  const bench::HoldSight h = hold(hand);
  if (!cord_here(h) || !h.hold.twirls) {
    c.spin_left_rad = 0.0;
    return;
  }
  const double way_1 = c.spin_left_rad < 0.0 ? -1.0 : 1.0;
  const double moved_rad = h.hand_turn_rad - c.spin_at_rad;
  c.spin_at_rad = h.hand_turn_rad;
  c.spin_left_rad -= moved_rad;
  if (moved_rad != 0.0) c.spin_moved = now();
  if (c.spin_left_rad * way_1 < kSpinDone_rad || now() - c.spin_moved > kSpinStalled) {
    c.drawn = true;
    slacken(hand);
    return;
  }
  const double share_1 =
      base::clamp_1(size_of(c.spin_left_rad) / (h.hold.rate_rad_s * kSpinAhead_s), kSpinLeast_1, 1.0);
  const double lead_rad = kSlackLead_rad + (kFullTurn_rad - kSlackLead_rad) * share_1;
  turn_by(hand, h, c.trail_rad + way_1 * lead_rad - c.turn_rad);
}

}  // namespace proofstand::hand

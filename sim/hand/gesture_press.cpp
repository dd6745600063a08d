// The plain button of the mouse: a click goes somewhere, a drag works.
#include "sim/base/math.h"
#include "sim/hand/gesture_inside.h"
#include "sim/hand/gesture_pull.h"

namespace proofstand::hand {
namespace {

using bench::HandStage;
using event::ActionKind;

constexpr double kDrop_pt = 20.0;         // squeezed so far: one drop
constexpr double kTurnedOver_pt = 180.0;  // half a degree a point: a quarter turn, and it falls over

}  // namespace

void TwoHands::Inside::press(const Pointer& at) {
  if (swallow_press) {
    swallow_press = false;
    swallow_release = true;
    return;
  }
  pointer.begin(now(), at.at);
  fine = at.fine;
  near = at.near;
  over = at.over;
  down_at = at.at;
  down_over = at.over;
  if (by_click) return;  // this click ends the pull
  sync(active);
  drag = Drag::Pressed;
}

void TwoHands::Inside::move(const Pointer& at) {
  pointer.put(now(), at.at);
  over = at.over;
  if (fine != at.fine) {
    count_drag();  // what was moved so far counts as it was
    fine = at.fine;
  }
  if (drag == Drag::Pressed) {
    const Spot spot = pointer.at(now());
    const double way_pt = distance_pt(down_at, spot);
    if (way_pt <= kClick_pt) return;
    const double share_1 = kClick_pt / way_pt;
    counted_to = {down_at.x_pt + (spot.x_pt - down_at.x_pt) * share_1,
                  down_at.y_pt + (spot.y_pt - down_at.y_pt) * share_1};
    begin_drag();
  }
  count_drag();
}

void TwoHands::Inside::begin_drag() {
  const bench::HoldSight h = hold();
  if (h.stage == HandStage::Busy) {
    drag = Drag::Late;
    return;
  }
  const bool holds = h.holding != event::kNoThing;
  if (near) {
    drag = holds ? Drag::Tip : Drag::Idle;
    return;
  }
  if (down_over && holds && down_over->thing == h.holding && down_over->grip != event::Grip::None &&
      down_over->grip != h.grip && !cord().drawn) {
    take_grip(*down_over, h);
    drag = Drag::Arrive;
  } else if (cord_here(h)) {
    if (bent(h, 0.0) && !cord().drawn) {
      send_motion(event::make_plain(0, ActionKind::Regrip, active));
      drag = Drag::Arrive;
    } else {
      begin_pull(h);
    }
  } else if (!down_over || (holds && down_over->thing == h.holding)) {
    drag = holds ? Drag::TurnOver : Drag::Idle;
    cord().over_pt = 0.0;
  } else if (!holds && takes_by_click(*down_over)) {
    go_to(*down_over, Verb::Natural);
    drag = Drag::Carry;
  } else {
    go_to(*down_over, Verb::Natural);
    drag = Drag::Arrive;
  }
}

void TwoHands::Inside::begin_pull(const bench::HoldSight& h) {
  sync(active);
  CordWork& c = cord();
  c.spin_left_rad = 0.0;
  c.draw_m = 0.0;
  c.draw_from_m = c.along_m;
  swing.clear();
  swing_rad = 0.0;
  drops_pt = 0.0;
  const std::optional<Grasp>& g = grasp();
  seen_1 = g ? towards_eye_1(sight.lens, *g) : 1.0;
  switch (motion_of(h, held_kind(h))) {
    case Motion::None:
      drag = Drag::Idle;
      return;
    case Motion::Drops:
      drag = Drag::Drops;
      return;
    case Motion::Face: {
      drag = Drag::Stroke;
      // a stroke that goes on from a kept or drawn one does not jump to the pointer
      face_offset = c.drawn && g.has_value();
      face_off_x_m = face_off_y_m = 0.0;
      const auto point = g ? face_point(sight.lens, *g, counted_to) : std::nullopt;
      if (face_offset && point) {
        face_off_x_m = c.face_x_m - point->x_m;
        face_off_y_m = c.face_y_m - point->y_m;
      }
      if (c.press_step < 0) set_face_press(active, face_press(held_kind(h)).first);
      return;
    }
    case Motion::Along:
      drag = Drag::Along;
      return;
    case Motion::Turn:
      break;
  }
  drag = Drag::Pull;
  if (!g || !h.hold.presses) return;
  const auto end = g->tool_end ? project(sight.lens, *g->tool_end) : std::nullopt;
  const bool at_end = h.stage == HandStage::At && end && distance_pt(*end, down_at) <= kEndReach_pt;
  // a collar or a slide is moved by drawing along the axis, whatever else the same hold turns
  const bool slides = h.hold.contact == bench::Contact::Setting || h.hold.contact == bench::Contact::Instrument;
  if (at_end || (slides && goes_along(sight.lens, *g, down_at, counted_to))) drag = Drag::Along;
}

void TwoHands::Inside::count_drag() {
  const Spot to = pointer.at(now());
  const Spot from = counted_to;
  const double gain_1 = settings.drag_gain_1 * (fine ? kFine_1 : 1.0);
  CordWork& c = cord();
  const std::optional<Grasp>& g = grasp();
  switch (drag) {
    case Drag::Pull: {
      const bench::HoldSight h = hold();
      if (!g || !cord_here(h) || !h.hold.turns) break;
      const PullStep step = turn_step(sight.lens, *g, seen_1, from, to);
      turn_by(active, h, gain_1 * step.turn_rad);
      swing_rad += gain_1 * step.turn_rad;
      const bool slides = h.hold.contact == bench::Contact::Setting || h.hold.contact == bench::Contact::Instrument;
      if (h.hold.presses && !h.hold.twirls && !slides) {
        c.draw_m += gain_1 * step.press_m;
        const double along_m = c.draw_from_m + c.draw_m;
        press_to(active, along_m < 0.0 ? 0.0 : along_m);  // farther out only undoes the press
      }
      break;
    }
    case Drag::Along:
      if (!g) break;
      c.draw_m += gain_1 * along_step_m(sight.lens, *g, seen_1, from, to);
      press_to(active, c.draw_from_m + c.draw_m);
      break;
    case Drag::Stroke: {
      if (!g) break;
      const auto was = face_point(sight.lens, *g, from);
      const auto is = face_point(sight.lens, *g, to);
      if (!was || !is) break;
      // what fine motions and the gain leave over stays between the pointer and the hand
      face_off_x_m += (gain_1 - 1.0) * (is->x_m - was->x_m);
      face_off_y_m += (gain_1 - 1.0) * (is->y_m - was->y_m);
      stroke_to(active, is->x_m + face_off_x_m, is->y_m + face_off_y_m, is->lifted);
      break;
    }
    case Drag::Tip:
      tip_by(hold(), gain_1 * kTilt_rad_per_pt * (to.x_pt - from.x_pt),
             gain_1 * kTilt_rad_per_pt * (from.y_pt - to.y_pt));
      break;
    case Drag::TurnOver:
      c.over_pt += to.x_pt - from.x_pt;
      if (c.over_pt > kTurnedOver_pt || c.over_pt < -kTurnedOver_pt) {
        c.over_pt = 0.0;
        drag = Drag::Idle;
        command(HandCommand::TurnOver, false);
      }
      break;
    case Drag::Drops:
      drops_pt += gain_1 * distance_pt(from, to);
      for (; drops_pt >= kDrop_pt; drops_pt -= kDrop_pt) send(event::make_squeeze(0, active, 1));
      break;
    default:
      return;  // nothing is counted yet: the motion waits
  }
  counted_to = to;
}

void TwoHands::Inside::end_pull() {
  flush(active);
  const bench::HoldSight h = hold();
  if (h.hold.contact == bench::Contact::TyreHand && !swing.empty()) {
    Swing first = swing.front();
    for (const Swing& s : swing) {
      if (s.at <= now() - kThrowTicks) first = s;
    }
    const base::Tick ticks = now() - first.at;
    const double rate_1 = ticks > 0 ? (swing_rad - first.turn_rad) / base::kTwoPi / base::seconds(ticks) : 0.0;
    const double kept_1 = base::clamp_1(rate_1, -kFastestThrow_1, kFastestThrow_1);
    if (kept_1 >= kSlowestThrow_1 || kept_1 <= -kSlowestThrow_1) {
      // clockwise on the disc side is backwards
      send_motion(event::make_throw(0, active, in_micro(-kept_1 * base::kTwoPi)));
      return;
    }
  }
  slacken(active);
}

void TwoHands::Inside::release(const Pointer& at) {
  if (swallow_release) {
    swallow_release = false;
    return;
  }
  const bool ends_click = by_click;
  if (!ends_click) move(at);
  const Drag was = drag;
  if (was == Drag::Pressed && settings.hold_by_click && !at.near) {
    const bench::HoldSight h = hold();
    const bool own = down_over && (down_over->thing == h.holding ||
                                   (down_over->thing == h.at_thing && down_over->place == h.at_place &&
                                    (h.at_bolt == event::kNoBolt || down_over->bolt == h.at_bolt)));
    if (cord_here(h) && own &&
        (down_over->thing != h.holding || down_over->grip == h.grip || down_over->grip == event::Grip::None)) {
      by_click = true;
      return;  // still pressed, as far as motion goes
    }
  }
  drag = Drag::None;
  by_click = false;
  switch (was) {
    case Drag::Pressed:
      if (ends_click) {
        slacken(active);
      } else if (down_over) {
        go_to(*down_over, near ? Verb::Near : Verb::Natural);
      } else {
        click_nothing();
      }
      break;
    case Drag::Carry:
      if (at.over && down_over && at.over->thing != down_over->thing) go_to(*at.over, Verb::Bring);
      break;
    case Drag::Pull:
    case Drag::Along:
    case Drag::Stroke:
      drag = was;
      end_pull();
      drag = Drag::None;
      break;
    default:
      break;
  }
}

void TwoHands::Inside::drop_button() {
  if (drag != Drag::None && !by_click) swallow_release = true;
  cord().asked = false;
  sync(active);
  drag = Drag::None;
  by_click = false;
}

}  // namespace proofstand::hand

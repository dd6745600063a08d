#include "sim/bench/instrument.h"

#include <cmath>

#include "sim/base/math.h"
#include "sim/bench/card_truth.h"
#include "sim/bench/contact.h"
#include "sim/bench/draft.h"
#include "sim/bench/hand_law.h"
#include "sim/bench/jaws.h"
#include "sim/bench/pick.h"
#include "sim/bench/wiping.h"
#include "sim/physics/instrument.h"

namespace proofstand::bench {
namespace {

constexpr double kOpened_m = 0.003;
// a vernier is pushed along by the thumb; its little wheel moves it so far a turn
constexpr double kSlidePerTurn_m = 0.010;
constexpr double kSlideSpeed_m_s = 0.250;
// up to this level fingers on the thimble are as gentle as the ratchet
constexpr std::int64_t kGentleLevel = 128;
constexpr double kRoomTemperature_k = 293.15;

bool has_jaws(ThingKind kind) { return kind == ThingKind::Micrometer || kind == ThingKind::Vernier; }

InstrumentState& state_of(const World& world, ThingId thing) {
  return world.state.instruments[world.thing(thing).part];
}

void tell_reading(const World& world, HandId hand_id, InstrumentState& state) {
  state.event_due = false;
  const ThingId instrument = world.hand(hand_id).holding;
  const double rotor = static_cast<double>(rotor_item(world.setup, state.rotor));
  if (state.diameter) {
    Draft size(world, "measured_size");
    size.with("hand", hand_value(hand_id)).with("instrument", thing_value(instrument)).with("rotor", rotor);
    size.with("reading", base::clamp_1(state.shown_m, 0.0, 0.3)).with("truth", state.truth_m).emit();
    return;
  }
  Draft measured(world, "measured");
  measured.with("hand", hand_value(hand_id)).with("instrument", thing_value(instrument)).with("rotor", rotor);
  measured.with("part", static_cast<double>(state.part));
  measured.with("reading", base::clamp_1(state.shown_m, 0.0, 0.3)).with("truth", state.truth_m);
  measured.with("radius", base::clamp_1(state.radius_m, 0.0, 0.2)).with("angle", state.angle_rad);
  measured.with("spot", std::floor(state.angle_rad / base::kTwoPi * 6.0));
  measured.with("squeezed", state.squeezed ? 1.0 : 0.0).with("temperature", kRoomTemperature_k).emit();
  note_thickness(world, state.rotor, state.shown_m);
}

/// How far the hand moves the jaws together in this tick, positive closing [m].
double closing_step_m(HandState& hand, ThingKind kind, bool bears) {
  double closing_m = 0.0;
  const AxisLaw turning = turn_law();
  const double twirl_rad_s = 0.7 * base::kTwoPi;
  double turned = step_limit_1(hand.turn, turning, twirl_rad_s);
  // the ratchet slips on when the jaws bear; the thimble itself stands
  if (bears && kind == ThingKind::Micrometer && hand.grip != Grip::Ratchet && turned > 0.0) turned = 0.0;
  move_hand(hand.turn, turned);
  const double lead_m = kind == ThingKind::Micrometer ? kSpindlePitch_m : kSlidePerTurn_m;
  closing_m += turned / base::kTwoPi * lead_m;
  if (kind == ThingKind::Vernier) {
    const double slid = step_limit_1(hand.along, along_law(), kSlideSpeed_m_s);
    move_hand(hand.along, slid);
    closing_m += slid;
  }
  return closing_m;
}

void step_jaws(const World& world, HandId hand_id, ThingKind kind) {
  HandState& hand = world.hand(hand_id);
  InstrumentState& state = state_of(world, hand.holding);
  const InstrumentPart& part = world.setup.instruments[world.thing(hand.holding).part];
  const bool moved = hand.aim_radius_m != hand.face_radius_m || hand.aim_angle_rad != hand.face_angle_rad;
  if (moved) step_face(hand, 5.0);
  const JawSpot spot = jaw_spot(world, hand, part, kind);
  const double before_m = state.opening_m;
  state.opening_m = base::clamp_1(before_m - closing_step_m(hand, kind, state.closed), 0.0, part.range_m);
  if (!spot.any || state.opening_m > spot.size_m) {
    state.closed = false;
    state.squeezed = false;
    state.squeeze_m = 0.0;
    state.event_due = false;
    state.shown_m = scale_m(part, state.opening_m);
    return;
  }
  // jaws that bear stay where the part lets them; fingers on the thimble can spring the frame, and it stays sprung
  state.opening_m = spot.size_m;
  const bool hard = kind == ThingKind::Micrometer && hand.grip != Grip::Ratchet && hand.turn.level > kGentleLevel;
  const double squeeze_m = hard ? physics::squeeze_error_m(force_share_1(hand.turn.level)) : 0.0;
  if (squeeze_m > state.squeeze_m) state.squeeze_m = squeeze_m;
  state.squeezed = state.squeezed || hard;
  if (!state.closed || moved) {
    state.closed = true;
    state.closed_since = world.state.tick;
    state.event_due = true;
    state.truth_m = spot.size_m;
    state.part = static_cast<std::int64_t>(spot.part);
    state.rotor = rotor_at(world, hand);
    state.diameter = kind == ThingKind::Vernier && hand.at_place == PlaceKind::Edge;
    state.radius_m = hand.face_radius_m;
    state.angle_rad = rotor_angle_rad(hand);
  }
  const double shown_m = scale_m(part, spot.size_m - state.squeeze_m);
  if (state.event_due) state.shown_m = shown_m;
  if (state.event_due && world.state.tick - state.closed_since >= kReadTicks) tell_reading(world, hand_id, state);
}

Refusal bring_jaws(const World& world, HandId hand_id, ThingKind kind) {
  HandState& hand = world.hand(hand_id);
  if (rotor_at(world, hand) == event::kNoThing) return Refusal::DoesNotFit;
  const bool on_face = face_of(hand.at_place) >= 0 || hand.at_place == PlaceKind::CarrierOuter ||
                       hand.at_place == PlaceKind::CarrierInner;
  const bool diameter = kind == ThingKind::Vernier && hand.at_place == PlaceKind::Edge;
  if (!on_face && !diameter) return Refusal::DoesNotFit;
  // the hub is in the way of jaws about the carrier of a rotor that lies on it
  if (!diameter && face_of(hand.at_place) < 0 && world.state.seat.rotor == hand.at_thing) return Refusal::Covered;
  InstrumentState& state = state_of(world, hand.holding);
  const InstrumentPart& part = world.setup.instruments[world.thing(hand.holding).part];
  hand.face_radius_m = hand.aim_radius_m = base::clamp_1(hand.u_1, 0.0, 1.0);
  hand.face_angle_rad = hand.aim_angle_rad = base::wrap_two_pi(hand.v_1);
  hand.face_press_n = hand.aim_press_n = 0.0;
  const JawSpot spot = jaw_spot(world, hand, part, kind);
  if (!spot.any) return Refusal::NoSuchPlace;
  if (spot.size_m > part.range_m) return Refusal::DoesNotFit;
  state.closed = false;
  state.squeezed = false;
  state.squeeze_m = 0.0;
  state.event_due = false;
  if (diameter) {
    state.opening_m = part.range_m;
  } else if (state.opening_m < kOpened_m) {
    state.opening_m = kOpened_m;
  }
  state.shown_m = scale_m(part, state.opening_m);
  return Refusal::None;
}

}  // namespace

Refusal bring_instrument(const World& world, HandId hand_id) {
  const HandState& hand = world.hand(hand_id);
  if (hand.holding == event::kNoThing) return Refusal::HandEmpty;
  const ThingKind kind = world.kind(hand.holding);
  if (has_jaws(kind)) return bring_jaws(world, hand_id, kind);
  if (kind == ThingKind::DialGauge) return stand_dial(world, hand_id);
  if (kind == ThingKind::Pick || kind == ThingKind::Lamp) {
    begin_look(world, hand_id);
    return Refusal::None;
  }
  return Refusal::DoesNotFit;
}

void step_instrument(const World& world, HandId hand_id) {
  const HandState& hand = world.hand(hand_id);
  if (hand.holding == event::kNoThing) return;
  const ThingKind kind = world.kind(hand.holding);
  if (has_jaws(kind)) {
    step_jaws(world, hand_id, kind);
  } else if (kind == ThingKind::DialGauge) {
    press_dial(world, hand_id);
  } else if (kind == ThingKind::Pick) {
    step_pick(world, hand_id);
  }
}

void leave_instrument(const World& world, HandId hand_id) {
  const HandState& hand = world.hand(hand_id);
  if (hand.holding == event::kNoThing) return;
  const ThingKind kind = world.kind(hand.holding);
  if (has_jaws(kind)) {
    InstrumentState& state = state_of(world, hand.holding);
    if (state.event_due && world.state.tick - state.closed_since >= kReadTicks) tell_reading(world, hand_id, state);
    state.event_due = false;
    state.closed = false;
  } else if (kind == ThingKind::Pick || kind == ThingKind::Lamp) {
    end_look(world, hand_id);
  }
}

base::Tick instrument_due_at(const World& world) {
  base::Tick due = kNever;
  for (const InstrumentState& state : world.state.instruments) {
    const base::Tick at = state.closed_since + kReadTicks;
    if (state.closed && state.event_due && at < due) due = at;
  }
  return due;
}

void look_over(const World& world, HandId hand_id) {
  const HandState& hand = world.hand(hand_id);
  if (hand.holding == event::kNoThing || world.kind(hand.holding) != ThingKind::Rotor) return;
  const bool printed_away = world.state.things[event::index_of(hand.holding)].inner_up;
  Draft looked(world, "inspected");
  looked.with("hand", hand_value(hand_id)).choose("with", "turned_over");
  looked.choose("part", printed_away ? "inner_track" : "outer_track");
  looked.with("rotor", static_cast<double>(rotor_item(world.setup, hand.holding)));
  looked.with("thing", thing_value(hand.holding)).emit();
}

}  // namespace proofstand::bench

#include "sim/event/actions.h"

#include "sim/base/assert.h"

namespace proofstand::event {
namespace {

std::int64_t number(HandId hand) { return static_cast<std::int64_t>(hand); }
std::int64_t number(ThingId thing) { return static_cast<std::int64_t>(thing); }
std::int64_t number(PlaceKind place) { return static_cast<std::int64_t>(place); }
std::int64_t number(BoltId bolt) { return static_cast<std::int64_t>(bolt); }
std::int64_t number(Grip grip) { return static_cast<std::int64_t>(grip); }

Action make(base::Tick tick, ActionKind kind, std::initializer_list<std::int64_t> numbers) {
  STAND_ASSERT(numbers.size() == spec_of(kind).fields.size());
  Action action;
  action.tick = tick;
  action.kind = kind;
  std::size_t i = 0;
  for (std::int64_t n : numbers) action.numbers[i++] = n;
  return action;
}

}  // namespace

const std::vector<ActionSpec>& action_table() {
  static const ActionField hand{"hand", Step::Hand};
  static const ActionField thing{"thing", Step::Thing};
  static const ActionField place{"place", Step::Place};
  static const ActionField bolt{"bolt", Step::Bolt};
  static const ActionField u{"u", Step::Micrometre};
  static const ActionField v{"v", Step::Microradian};
  static const std::vector<ActionSpec> table = {
      {ActionKind::Take, "take", {hand, thing, {"grip", Step::GripKind}}, false, false, "take a loose thing"},
      {ActionKind::Touch, "touch", {hand, thing, place, bolt, u, v}, false, false, "rest the fingers on a place"},
      {ActionKind::Near, "near", {hand, thing, place, bolt}, false, false, "hold the hand 20 mm off a place"},
      {ActionKind::Bring,
       "bring",
       {hand, thing, place, bolt, u, v, {"tilt_x", Step::Microradian}, {"tilt_y", Step::Microradian}},
       false,
       false,
       "bring the thing held to a place of another thing"},
      {ActionKind::Leave,
       "leave",
       {hand},
       false,
       false,
       "let go of what stays by itself, or draw away with what is held"},
      {ActionKind::PutBack, "put_back", {hand}, false, false, "put the thing held back where it belongs"},
      {ActionKind::Pass, "pass", {hand}, false, false, "give the thing held to the other hand"},
      {ActionKind::GripAt, "grip", {hand, {"grip", Step::GripKind}}, false, false, "hold the thing differently"},
      {ActionKind::AimTurn,
       "aim_turn",
       {hand, {"angle", Step::Microradian}},
       false,
       false,
       "the cord's end round the axis"},
      {ActionKind::AimAlong,
       "aim_along",
       {hand, {"depth", Step::Micrometre}},
       false,
       false,
       "the cord's end along the axis"},
      {ActionKind::AimFace,
       "aim_face",
       {hand, {"radius", Step::Micrometre}, {"angle", Step::Microradian}, {"press", Step::Millinewton}},
       false,
       false,
       "the cord's end over a face"},
      {ActionKind::Slack, "slack", {hand}, false, false, "stop pulling"},
      {ActionKind::Keep, "keep", {hand}, false, false, "keep pulling while the other hand acts"},
      {ActionKind::Regrip, "regrip", {hand}, false, false, "back by one reach"},
      {ActionKind::Throw,
       "throw",
       {hand, {"rate", Step::MicroradianPerSecond}},
       false,
       false,
       "let go of the tyre moving"},
      {ActionKind::Tip,
       "tip",
       {hand, {"x", Step::Microradian}, {"y", Step::Microradian}},
       false,
       false,
       "tilt a seated tool or turn the thing in the hand"},
      {ActionKind::TurnOver, "turn_over", {hand}, false, false, "other side out, fresh fold, other arm"},
      {ActionKind::Glove, "glove", {hand, {"on", Step::Flag}}, false, false, "put a glove on or take it off"},
      {ActionKind::Squeeze, "squeeze", {hand, {"drops", Step::Count}}, false, false, "let drops out of a bottle"},
      {ActionKind::Write, "write", {{"entry", Step::CardEntry}}, true, false, "write on the job card"},
      {ActionKind::Gap, "gap", {{"ticks", Step::Tick}}, false, false, "time the machine could not show"},
      {ActionKind::HandOver, "hand_over", {}, false, false, "declare the job done"},
      {ActionKind::LeverPull, "lever_pull", {hand, {"travel", Step::Micrometre}}, false, true, "pull the brake lever"},
      {ActionKind::Load, "load", {hand, {"force", Step::Millinewton}}, false, true, "weight on the wheel"},
      {ActionKind::Ride, "ride", {{"speed", Step::Count}, {"effort", Step::Millinewton}}, false, true, "one slow-down"},
      {ActionKind::Power, "power", {{"on", Step::Flag}}, false, true, "drive and battery of an e-bike"},
  };
  return table;
}

const ActionSpec& spec_of(ActionKind kind) {
  const ActionSpec& spec = action_table()[static_cast<std::size_t>(kind)];
  STAND_ASSERT(spec.kind == kind);
  return spec;
}

std::optional<ActionKind> action_from_name(std::string_view name) {
  for (const ActionSpec& spec : action_table()) {
    if (spec.name == name) return spec.kind;
  }
  return std::nullopt;
}

Action make_take(base::Tick tick, HandId hand, ThingId thing, Grip grip) {
  return make(tick, ActionKind::Take, {number(hand), number(thing), number(grip)});
}
Action make_touch(base::Tick tick, HandId hand, ThingId thing, PlaceKind place, BoltId bolt, std::int64_t u,
                  std::int64_t v) {
  return make(tick, ActionKind::Touch, {number(hand), number(thing), number(place), number(bolt), u, v});
}
Action make_near(base::Tick tick, HandId hand, ThingId thing, PlaceKind place, BoltId bolt) {
  return make(tick, ActionKind::Near, {number(hand), number(thing), number(place), number(bolt)});
}
Action make_bring(base::Tick tick, HandId hand, ThingId thing, PlaceKind place, BoltId bolt, std::int64_t u,
                  std::int64_t v, std::int64_t tilt_x_urad, std::int64_t tilt_y_urad) {
  return make(tick, ActionKind::Bring,
              {number(hand), number(thing), number(place), number(bolt), u, v, tilt_x_urad, tilt_y_urad});
}
Action make_plain(base::Tick tick, ActionKind kind, HandId hand) { return make(tick, kind, {number(hand)}); }
Action make_grip(base::Tick tick, HandId hand, Grip grip) {
  return make(tick, ActionKind::GripAt, {number(hand), number(grip)});
}
Action make_aim_turn(base::Tick tick, HandId hand, std::int64_t angle_urad) {
  return make(tick, ActionKind::AimTurn, {number(hand), angle_urad});
}
Action make_aim_along(base::Tick tick, HandId hand, std::int64_t depth_um) {
  return make(tick, ActionKind::AimAlong, {number(hand), depth_um});
}
Action make_aim_face(base::Tick tick, HandId hand, std::int64_t radius_um, std::int64_t angle_urad,
                     std::int64_t press_mn) {
  return make(tick, ActionKind::AimFace, {number(hand), radius_um, angle_urad, press_mn});
}
Action make_throw(base::Tick tick, HandId hand, std::int64_t rate_urad_s) {
  return make(tick, ActionKind::Throw, {number(hand), rate_urad_s});
}
Action make_tip(base::Tick tick, HandId hand, std::int64_t x_urad, std::int64_t y_urad) {
  return make(tick, ActionKind::Tip, {number(hand), x_urad, y_urad});
}
Action make_glove(base::Tick tick, HandId hand, bool on) {
  return make(tick, ActionKind::Glove, {number(hand), on ? 1 : 0});
}
Action make_squeeze(base::Tick tick, HandId hand, std::int64_t drops) {
  return make(tick, ActionKind::Squeeze, {number(hand), drops});
}
Action make_write(base::Tick tick, CardEntryId entry, std::string text) {
  Action action = make(tick, ActionKind::Write, {static_cast<std::int64_t>(entry)});
  action.text = std::move(text);
  return action;
}
Action make_gap(base::Tick tick, base::Tick ticks) { return make(tick, ActionKind::Gap, {ticks}); }
Action make_hand_over(base::Tick tick) { return make(tick, ActionKind::HandOver, {}); }

}  // namespace proofstand::event

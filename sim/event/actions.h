// Everything a hand can do, declared once. An action is open-loop: where to go, how to hold, where the cord's end is;
// what comes of it is the bench's. Numbers are integers in the declared steps, so that files and replays are exact.
#pragma once

#include <array>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "sim/base/ticks.h"
#include "sim/event/grips.h"
#include "sim/event/ids.h"
#include "sim/event/places.h"

namespace proofstand::event {

enum class ActionKind : std::uint8_t {
  Take,      ///< hand, thing, grip: take a loose thing
  Touch,     ///< hand, thing, place, bolt, u, v: fingers (or the thing's own hand) rest on a place of a part
  Near,      ///< as Touch, but 20 mm off: is it warm?
  Bring,     ///< hand, thing, place, bolt, u, v, tilt x, tilt y: bring what the hand holds to a place of that thing
  Leave,     ///< hand: let go of what stays by itself, or draw away with what is held
  PutBack,   ///< hand: put the thing held back where such things lie
  Pass,      ///< hand: give the thing held to the other hand
  GripAt,    ///< hand, grip: hold it differently
  AimTurn,   ///< hand, angle: the cord's end round the axis, absolute from where the grip was taken
  AimAlong,  ///< hand, depth: the cord's end along the axis; positive presses in
  AimFace,   ///< hand, radius, angle, press: the cord's end over a face and the press on it
  Slack,     ///< hand: the cord's end comes back to the hand
  Keep,      ///< hand: keeps target and pull while the other one acts
  Regrip,    ///< hand: back by one reach for a fresh pull
  Throw,     ///< hand, rate: let go of the tyre moving
  Tip,       ///< hand, x, y: tilt a seated tool, or turn the thing in the hand
  TurnOver,  ///< hand: other side out, fresh fold of a rag, other arm of a key
  Glove,     ///< hand, on: put a glove on from the box, or take it off
  Squeeze,   ///< hand, drops: let so many drops out of the bottle held (the lever: later)
  Write,     ///< card entry; text: write on the job card
  Gap,       ///< ticks: time that was not simulated (a slow machine); recorded, never charged
  HandOver,  ///< the job is declared done
  // later stages of the whole job
  LeverPull,  ///< hand, travel
  Load,       ///< hand, force: weight on the wheel while the axle is closed
  Ride,       ///< speed, lever effort: one slow-down of the bedding-in strip
  Power,      ///< on: e-bike drive and battery
};

/// What an action's number counts.
enum class Step : std::uint8_t {
  Hand,         ///< 0 left, 1 right
  Thing,        ///< index of a thing
  Place,        ///< PlaceKind
  Bolt,         ///< position, or 255 for none
  GripKind,     ///< Grip
  Micrometre,   ///< lengths
  Microradian,  ///< angles
  Millinewton,  ///< forces
  MicroradianPerSecond,
  Tick,
  Count,
  Flag,
  CardEntry,
};

/// One number of an action.
struct ActionField {
  std::string_view name;
  Step step = Step::Count;
};

/// One row of the list.
struct ActionSpec {
  ActionKind kind = ActionKind::Take;
  std::string_view name;            ///< word in files and scripts
  std::vector<ActionField> fields;  ///< at most Action::kMostFields
  bool has_text = false;
  bool later = false;
  std::string_view what;
};

/// One thing one hand does, at one tick. Numbers beyond the spec's are zero.
struct Action {
  static constexpr std::size_t kMostFields = 8;
  base::Tick tick = 0;
  ActionKind kind = ActionKind::Slack;
  std::array<std::int64_t, kMostFields> numbers{};
  std::string text;  ///< of Write

  [[nodiscard]] HandId hand() const { return static_cast<HandId>(numbers[0]); }
};

/// Every action once, in the order of ActionKind.
const std::vector<ActionSpec>& action_table();
const ActionSpec& spec_of(ActionKind kind);
std::optional<ActionKind> action_from_name(std::string_view name);

// Makers, so that no caller counts numbers. Lengths in µm, angles in µrad, forces in mN.
Action make_take(base::Tick tick, HandId hand, ThingId thing, Grip grip);
Action make_touch(base::Tick tick, HandId hand, ThingId thing, PlaceKind place, BoltId bolt, std::int64_t u,
                  std::int64_t v);
Action make_near(base::Tick tick, HandId hand, ThingId thing, PlaceKind place, BoltId bolt);
Action make_bring(base::Tick tick, HandId hand, ThingId thing, PlaceKind place, BoltId bolt, std::int64_t u,
                  std::int64_t v, std::int64_t tilt_x_urad, std::int64_t tilt_y_urad);
Action make_plain(base::Tick tick, ActionKind kind,
                  HandId hand);  ///< Leave, PutBack, Pass, Slack, Keep, Regrip, TurnOver
Action make_grip(base::Tick tick, HandId hand, Grip grip);
Action make_aim_turn(base::Tick tick, HandId hand, std::int64_t angle_urad);
Action make_aim_along(base::Tick tick, HandId hand, std::int64_t depth_um);
Action make_aim_face(base::Tick tick, HandId hand, std::int64_t radius_um, std::int64_t angle_urad,
                     std::int64_t press_mn);
Action make_throw(base::Tick tick, HandId hand, std::int64_t rate_urad_s);
Action make_tip(base::Tick tick, HandId hand, std::int64_t x_urad, std::int64_t y_urad);
Action make_glove(base::Tick tick, HandId hand, bool on);
Action make_squeeze(base::Tick tick, HandId hand, std::int64_t drops);
Action make_write(base::Tick tick, CardEntryId entry, std::string text);
Action make_gap(base::Tick tick, base::Tick ticks);
Action make_hand_over(base::Tick tick);

}  // namespace proofstand::event

#include "sim/bench/hold_sight.h"

#include <algorithm>

#include "sim/base/math.h"
#include "sim/bench/read_world.h"
#include "sim/bench/tool_work.h"

namespace proofstand::bench {
namespace {

double line_rad(const World& world, const HandState& hand) {
  if (hand.holding == event::kNoThing || world.kind(hand.holding) != ThingKind::ClickDriver) return 0.0;
  const double line_nm = world.setup.tools[world.thing(hand.holding).part].scale_step_nm;
  return line_nm / kSettingPerTurn_nm * base::kTwoPi;
}

}  // namespace

HoldSight see_hold(const Bench& bench, HandId hand_id) {
  const ReadWorld reading(bench);
  const World& world = reading.world();
  const HandState& hand = world.hand(hand_id);
  HoldSight sight;
  sight.stage = hand.stage;
  sight.holding = hand.holding;
  sight.grip = hand.grip;
  sight.at_thing = hand.at_thing;
  sight.at_place = hand.at_place;
  sight.at_bolt = hand.at_bolt;
  sight.near = hand.near;
  sight.kept = hand.kept;
  sight.gloved = hand.gloved;
  sight.hold = hold_of(world, hand);
  sight.hand_turn_rad = hand.turn.hand_1;
  sight.hand_along_m = hand.along.hand_1;
  sight.turn_level = hand.turn.level;
  sight.along_level = hand.along.level;
  sight.face_radius_m = hand.face_radius_m;
  sight.face_angle_rad = hand.face_angle_rad;
  sight.face_press_n = hand.face_press_n;
  sight.tilt_x_rad = hand.tilt_x_rad;
  sight.tilt_y_rad = hand.tilt_y_rad;
  sight.line_rad = line_rad(world, hand);
  return sight;
}

bool see_loose(const Bench& bench, ThingId thing) {
  const Thing& what = bench.setup().things[event::index_of(thing)];
  switch (bench.state().things[event::index_of(thing)].where) {
    case Whereabouts::Fixed:
    case Whereabouts::InHole:
      return false;
    case Whereabouts::OnHub: {
      const std::vector<HoleState>& holes = bench.state().holes;
      return what.kind == ThingKind::Rotor && std::all_of(holes.begin(), holes.end(), [](const HoleState& hole) {
               return hole.bolt == event::kNoThing;
             });
    }
    default:
      return true;
  }
}

}  // namespace proofstand::bench

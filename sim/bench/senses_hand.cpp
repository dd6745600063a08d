#include <algorithm>

#include "sim/base/math.h"
#include "sim/bench/bolt_model.h"
#include "sim/bench/hand_contact.h"
#include "sim/bench/hand_law.h"
#include "sim/bench/read_world.h"
#include "sim/bench/rotor_turn.h"
#include "sim/bench/senses.h"
#include "sim/bench/tool_seat.h"
#include "sim/bench/tool_work.h"

namespace proofstand::bench {
namespace {

constexpr double kNoReach_rad = 1.0e3;
constexpr double kHome_1 = 0.97;       // of the depth that is free: no wiggle left
constexpr double kSeenGap_m = 0.0002;  // steps in which an eye tells a gap
constexpr double kSeenTilt_deg = 2.5;
constexpr double kShaved_m = 0.00015;  // wear at which shaved lobes show
constexpr double kSeenDirt_m = 0.00003;

void feel_bolt(const World& world, HandId hand_id, HandSense& sense) {
  const VisitState& visit = world.state.visits[static_cast<std::size_t>(hand_id)];
  if (!visit.open) return;
  const HoleState& hole = hole_of(world, visit.bolt);
  sense.fastener_rad = visit.turned_in_rad - visit.turned_out_rad;
  sense.clicks = visit.clicks;
  sense.dropped = visit.dropped;
  sense.caught = hole.started;
  if (hole.bolt == event::kNoThing) return;
  sense.slips = bolt_state(world, visit.bolt).slips;
  const double torque = visit.torque_nm < 0.0 ? -visit.torque_nm : visit.torque_nm;
  sense.torque_nm = torque;
  const bool bottomed = hole.started && hole.turns_1 >= bolt_model(world, visit.bolt, 0.0).bottom_turns_1;
  sense.bears = hole.preload_n > 0.0 || bottomed;
  const Cord& cord = world.hand(hand_id).turn;
  sense.dead_stop = sense.bears && cord.level > 0 && !visit.sliding;
  const ThingId held = world.hand(hand_id).holding;
  if (held == event::kNoThing || !(world.kind(held) == ThingKind::LKey || world.kind(held) == ThingKind::Driver ||
                                   world.kind(held) == ThingKind::ClickDriver)) {
    return;
  }
  sense.press_n = visit.press_n;
  const double free_m = free_depth_m(world, hand_id, visit.bolt);
  sense.home = free_m > 0.0 && visit.depth_m >= kHome_1 * free_m;
}

HandSense feel(const World& world, HandId hand_id) {
  const HandState& hand = world.hand(hand_id);
  const HandHold hold = hold_of(world, hand);
  HandSense sense;
  sense.stage = hand.stage;
  sense.holding = hand.holding;
  sense.grip = hand.grip;
  sense.turn_rad = hand.turn.hand_1;
  sense.lead_rad = hand.turn.end_1 - hand.turn.hand_1;
  const double pull_nm = hold.full_nm * force_share_1(hand.turn.level);
  sense.torque_nm = hold.turns ? pull_nm : 0.0;
  const bool forward = sense.lead_rad >= 0.0;
  sense.reach_left_rad = !hold.turns || hold.twirls ? kNoReach_rad
                         : forward                  ? hold.reach_rad - hand.turn.hand_1
                                                    : hold.reach_rad + hand.turn.hand_1;
  sense.dead_stop = hold.contact == Contact::RotorHold && rotor_stands(world, hand_id);
  feel_bolt(world, hand_id, sense);
  return sense;
}

BoltSight look(const World& world, BoltId bolt) {
  BoltSight sight;
  const HoleState& hole = hole_of(world, bolt);
  sight.present = hole.bolt != event::kNoThing;
  sight.boss_dirty = world.state.seat.rotor == event::kNoThing && hole.dirt_m >= kSeenDirt_m;
  if (!sight.present) return sight;
  sight.thing = hole.bolt;
  const BoltModel model = bolt_model(world, bolt, 0.0);
  const double bears_turns_1 = turns_at_1(model, hole, 0.0);
  const double gap_m = hole.preload_n > 0.0 ? 0.0 : std::max(0.0, (bears_turns_1 - hole.turns_1) * model.pitch_m);
  const double steps = gap_m / kSeenGap_m + 0.5;
  sight.head_gap_m = hole.started ? static_cast<double>(static_cast<std::int64_t>(steps)) * kSeenGap_m
                                  : model.bears_turns_1 * model.pitch_m;
  sight.askew = hole.crossed || (!hole.started && hole.tilt_rad > base::radians(kSeenTilt_deg));
  const BoltState& state = bolt_state(world, bolt);
  sight.recess_ruined = state.recess_wear_m >= kShaved_m;
  sight.recess_dirty = state.recess_debris_m > kSeenDirt_m;
  return sight;
}

}  // namespace

HandSense sense_hand(const Bench& bench, HandId hand) {
  const ReadWorld reading(bench);
  return feel(reading.world(), hand);
}

BoltSight see_bolt(const Bench& bench, BoltId bolt) {
  if (event::index_of(bolt) >= bench.state().holes.size()) return {};
  const ReadWorld reading(bench);
  return look(reading.world(), bolt);
}

ThingId see_rotor_on_hub(const Bench& bench) { return bench.state().seat.rotor; }

bool see_printed_out(const Bench& bench) { return bench.state().seat.printed_out; }

double see_setting_nm(const Bench& bench, ThingId tool) {
  const Thing& thing = bench.setup().things[event::index_of(tool)];
  if (thing.kind != ThingKind::ClickDriver) return 0.0;
  const double setting_nm = bench.state().tools[thing.part].setting_nm;
  const double line_nm = bench.setup().tools[thing.part].scale_step_nm;
  if (line_nm <= 0.0) return setting_nm;
  return static_cast<double>(static_cast<std::int64_t>(setting_nm / line_nm + 0.5)) * line_nm;
}

}  // namespace proofstand::bench

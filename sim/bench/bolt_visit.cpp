#include "sim/bench/bolt_visit.h"

#include <algorithm>

#include "sim/base/math.h"
#include "sim/bench/bolt_model.h"
#include "sim/bench/rotor_seat.h"
#include "sim/bench/rotor_turn.h"
#include "sim/bench/tool_click.h"
#include "sim/bench/tool_seat.h"
#include "sim/physics/drive_recess.h"

namespace proofstand::bench {
namespace {

constexpr double kTurned_deg = 1.0;  // less than that is no loosening

// a record whose tool, setting or depth are unknown when fingers did it
event::Record record_of(const World& world, std::string_view kind, HandId hand, const VisitState& visit,
                        std::initializer_list<event::FieldValue> fields) {
  event::Record record = event::make_record(world.vocabulary, kind, world.state.tick, fields);
  const event::Kind& row = world.vocabulary.kinds[record.kind];
  const auto set = [&](std::string_view name, double value) {
    const std::optional<std::size_t> field = event::Vocabulary::find_field(row, name);
    if (!field) return;
    record.values[*field] = value;
    record.unknown = static_cast<std::uint16_t>(record.unknown & ~(1u << *field));
  };
  set("hand", static_cast<double>(hand));
  set("bolt", static_cast<double>(event::index_of(visit.bolt)));
  const ThingId tool = world.hand(hand).holding;
  const bool with_tool = tool != event::kNoThing && world.kind(tool) != ThingKind::Bolt;
  if (with_tool) {
    set("tool", static_cast<double>(event::index_of(tool)));
    set("depth", visit.worst_depth_m);
    set("depth_share", std::min(1.0, visit.worst_depth_m / full_depth_m()));
    if (world.kind(tool) == ThingKind::ClickDriver) {
      set("setting", world.state.tools[world.thing(tool).part].setting_nm);
    }
  }
  return record;
}

std::string_view tool_word(const World& world, HandId hand) {
  const ThingId tool = world.hand(hand).holding;
  if (tool == event::kNoThing) return "fingers";
  switch (world.kind(tool)) {
    case ThingKind::LKey:
      return "key";
    case ThingKind::Driver:
      return "driver";
    case ThingKind::ClickDriver:
      return "click_driver";
    default:
      return "fingers";
  }
}

void tell_tightened(const World& world, HandId hand, const VisitState& visit, HoleState& hole) {
  ++hole.rounds;
  hole.torque_nm = visit.peak_in_nm;
  const double past_nm = visit.clicks > 0 ? std::max(0.0, visit.peak_after_nm - visit.clicked_at_nm) : 0.0;
  world.events.push_back(record_of(world, "tightened", hand, visit,
                                   {{"peak_torque", visit.peak_in_nm},
                                    {"turn", visit.turned_in_rad},
                                    {"by", world.word("tightened", "by", tool_word(world, hand))},
                                    {"clicks", static_cast<double>(visit.clicks)},
                                    {"over_pull", visit.over_pull_rad},
                                    {"past_click", past_nm},
                                    {"preload", hole.preload_n},
                                    {"speed", visit.speed_rad_s}}));
}

}  // namespace

void open_visit(const World& world, HandId hand, BoltId bolt) {
  VisitState& visit = world.state.visits[static_cast<std::size_t>(hand)];
  visit = VisitState{};
  visit.open = true;
  visit.bolt = bolt;
  visit.worst_depth_m = full_depth_m();
  visit.preload_before_n = hole_of(world, bolt).preload_n;
  visit.was_snug = hole_of(world, bolt).snug;
  ++bolt_state(world, bolt).pulls;
  visit.friction_z_1 = draw_friction_z_1(world, bolt);
  draw_repeat(world, hand);
}

void close_visit(const World& world, HandId hand) {
  VisitState& visit = world.state.visits[static_cast<std::size_t>(hand)];
  if (!visit.open) return;
  const VisitState done = visit;
  visit = VisitState{};
  HoleState& hole = hole_of(world, done.bolt);
  if (hole.bolt == event::kNoThing) return;
  if (done.near_limit) {
    BoltState& bolt = bolt_state(world, done.bolt);
    bolt.recess_wear_m = bolt.recess_wear_m + physics::recess_wear_added_m(1.0, 1.05);
  }
  if (done.turned_out_rad > base::radians(kTurned_deg)) {
    world.events.push_back(
        record_of(world, "loosened", hand, done, {{"turn", done.turned_out_rad}, {"peak_torque", done.peak_out_nm}}));
  }
  const BoltModel model = bolt_model(world, done.bolt, done.friction_z_1);
  const bool bears = hole.preload_n > 0.0 || hole.turns_1 >= model.bottom_turns_1;
  const bool pulled = hole.started && bears && done.peak_in_nm >= kPull_nm && done.peak_in_nm > done.peak_out_nm;
  if (pulled) settle_bolt(world, done.bolt);
  if (hole.preload_n != done.preload_before_n) share_preload(world, done.bolt, hole.preload_n - done.preload_before_n);
  if (done.snugged_now) {
    world.events.push_back(record_of(world, "snugged", hand, done,
                                     {{"clearance", clearance_m(world)},
                                      {"rotor_held", done.rotor_held ? 1.0 : 0.0},
                                      {"torque", done.peak_in_nm},
                                      {"others", static_cast<double>(done.others_snug)}}));
  }
  if (pulled) tell_tightened(world, hand, done, hole);
}

}  // namespace proofstand::bench

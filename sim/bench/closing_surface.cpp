#include "sim/bench/closing_surface.h"

#include "sim/base/math.h"
#include "sim/bench/contact.h"
#include "sim/bench/dial.h"
#include "sim/bench/draft.h"
#include "sim/bench/instrument.h"
#include "sim/bench/wheel.h"

namespace proofstand::bench {
namespace {

void end_visits(const World& world) {
  for (const HandId hand : {HandId::Left, HandId::Right}) {
    end_touch(world, hand);
    end_wipe(world, hand);
    if (world.hand(hand).stage == HandStage::At) leave_instrument(world, hand);
  }
  for (std::size_t i = 0; i < world.setup.things.size(); ++i) {
    if (world.setup.things[i].kind == ThingKind::DialGauge) take_dial_away(world, static_cast<ThingId>(i));
  }
  end_spin(world);
}

void close_faces(const World& world) {
  const ThingId rotor = world.state.seat.rotor;
  if (rotor == event::kNoThing) return;
  const std::size_t part = world.thing(rotor).part;
  const TrackGrid grid = track_grid(world.setup.rotors[part]);
  for (const std::size_t face : {std::size_t{0}, std::size_t{1}}) {
    const FaceFigures figures = face_figures(world.state.rotors[part].faces[face], grid, world.state.tick);
    Draft left(world, "left_face");
    left.with("rotor", static_cast<double>(rotor_item(world.setup, rotor)));
    left.choose("face", face == 0 ? "outer" : "inner");
    left.with("film_worst", base::clamp_1(figures.worst_kg_m2, 0.0, 1.0));
    left.with("film_mean", base::clamp_1(figures.mean_kg_m2, 0.0, 1.0));
    left.with("coverage", figures.covered_1).with("oily", figures.oily_1);
    left.with("alcohol", base::clamp_1(figures.wet_kg_m2, 0.0, 1.0));
    left.with("friction_factor", figures.friction_factor_1).emit();
  }
}

void close_card(const World& world) {
  for (std::size_t i = 0; i < world.setup.card.size(); ++i) {
    world.emit("left_card", {{"entry", static_cast<double>(i)},
                             {"filled", world.state.card[i].filled ? 1.0 : 0.0},
                             {"needed", world.setup.card[i].needed ? 1.0 : 0.0}});
  }
}

bool in_joint(const World& world, ThingId tool) {
  for (const HandState& hand : world.state.hands) {
    if (hand.holding == tool && hand.stage == HandStage::At && hand.at_place == PlaceKind::BoltRecess) return true;
  }
  return world.state.things[event::index_of(tool)].where == Whereabouts::InHole;
}

void close_tools(const World& world) {
  for (std::size_t i = 0; i < world.setup.things.size(); ++i) {
    const Thing& thing = world.setup.things[i];
    const bool tool =
        thing.kind == ThingKind::LKey || thing.kind == ThingKind::Driver || thing.kind == ThingKind::ClickDriver;
    if (!tool) continue;
    const auto id = static_cast<ThingId>(i);
    Draft left(world, "left_tool");
    left.with("tool", thing_value(id)).with("in_joint", in_joint(world, id) ? 1.0 : 0.0);
    left.with_if(thing.kind == ThingKind::ClickDriver, "setting", world.state.tools[thing.part].setting_nm).emit();
  }
}

}  // namespace

void close_surfaces(const World& world) {
  end_visits(world);
  close_faces(world);
  close_card(world);
  close_tools(world);
}

}  // namespace proofstand::bench

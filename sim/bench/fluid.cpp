#include "sim/bench/fluid.h"

#include "sim/base/math.h"
#include "sim/bench/draft.h"
#include "sim/bench/start_surfaces.h"
#include "sim/bench/wiping.h"
#include "sim/physics/prevailing.h"

namespace proofstand::bench {
namespace {

constexpr std::int64_t kMostDrops = 100;
// a drop on flat metal spreads over about so much
constexpr double kDropSpread_m2 = 2e-4;
// less than this on a thread is the trace that every bolt comes with
constexpr double kGreasyThread_kg_m2 = 50.0 * physics::kMicrogramPerCm2_kg_m2;
// less locker than this is none
constexpr double kLeastLocker_m3 = 0.2e-9;

std::size_t at(Film film) { return static_cast<std::size_t>(film); }

double density_kg_m3(FluidKind fluid) {
  switch (fluid) {
    case FluidKind::Alcohol:
      return 785.0;
    case FluidKind::Locker:
      return kLockerDensity_kg_m3;
    case FluidKind::Grease:
      return 900.0;
    case FluidKind::Oil:
      return 870.0;
  }
  return 1000.0;
}

Film species_of(FluidKind fluid) {
  switch (fluid) {
    case FluidKind::Alcohol:
      return Film::Alcohol;
    case FluidKind::Locker:
      return Film::Locker;
    case FluidKind::Grease:
      return Film::Grease;
    case FluidKind::Oil:
      return Film::Oil;
  }
  return Film::Oil;
}

void wet_cell(FilmCell& cell, FluidKind fluid, double load_kg_m2, base::Tick now, double slowness_1 = 1.0) {
  rebase_alcohol(cell, now, slowness_1);
  cell.load_kg_m2[at(species_of(fluid))] += load_kg_m2;
}

template <class Thread>
void wet_thread(Thread& thread, FluidKind fluid, double volume_m3, base::Tick now) {
  const double load_kg_m2 = volume_m3 * density_kg_m3(fluid) / kThreadArea_m2;
  switch (fluid) {
    case FluidKind::Alcohol: {
      FilmCell film;
      film.load_kg_m2[at(Film::Alcohol)] = thread.alcohol_kg_m2;
      film.wet_tick = thread.alcohol_tick;
      wet_cell(film, fluid, load_kg_m2, now);
      thread.alcohol_kg_m2 = film.load_kg_m2[at(Film::Alcohol)];
      thread.alcohol_tick = now;
      break;
    }
    case FluidKind::Locker:
      thread.locker_m3 += volume_m3;
      thread.locker_tick = now;
      break;
    case FluidKind::Grease:
      thread.grease_kg_m2 += load_kg_m2;
      break;
    case FluidKind::Oil:
      thread.oil_kg_m2 += load_kg_m2;
      break;
  }
}

void drop_on_face(const World& world, const Thing& rotor, int face_index, double radius_m, double angle_rad,
                  FluidKind fluid, double volume_m3, double spread_m2) {
  FaceState& face = world.state.rotors[rotor.part].faces[static_cast<std::size_t>(face_index)];
  const TrackGrid grid = track_grid(world.setup.rotors[rotor.part]);
  const double reach_m = base::sqrt_1(spread_m2 / base::kPi);
  const double r0 = base::clamp_1(radius_m, grid.inner_m, grid.outer_m);
  const double x0 = r0 * base::cos_rad(base::wrap_two_pi(angle_rad));
  const double y0 = r0 * base::sin_rad(base::wrap_two_pi(angle_rad));
  // twice over: the cells' whole area must be known before the drop is shared out
  double area_m2 = 0.0;
  for (const bool share : {false, true}) {
    for (std::size_t i = 0; i < face.cells.size(); ++i) {
      const double r = grid.ring_radius_m(i % kRings);
      const std::size_t sector = i / kRings;
      const double angle = base::kTwoPi * (static_cast<double>(sector) + 0.5) / static_cast<double>(kSectors);
      const double dx = r * base::cos_rad(angle) - x0;
      const double dy = r * base::sin_rad(angle) - y0;
      if (dx * dx + dy * dy > reach_m * reach_m) continue;
      if (!share) {
        area_m2 += grid.cell_area_m2(i % kRings);
      } else {
        wet_cell(face.cells[i], fluid, volume_m3 * density_kg_m3(fluid) / area_m2, world.state.tick);
      }
    }
  }
  mark_changed(face);
}

bool film_wet(double alcohol_kg_m2, base::Tick since, base::Tick now) {
  FilmCell film;
  film.load_kg_m2[at(Film::Alcohol)] = alcohol_kg_m2;
  film.wet_tick = since;
  return wet_alcohol_kg_m2(film, now) > 0.0;
}

/// Puts it there; nothing when the place cannot keep any.
Refusal apply_at(const World& world, const HandState& hand, FluidKind fluid, double volume_m3, std::int64_t drops) {
  const Thing& what = world.thing(hand.at_thing);
  const base::Tick now = world.state.tick;
  const double load = volume_m3 * density_kg_m3(fluid);
  const bool numbered = event::index_of(hand.at_bolt) < world.state.holes.size();
  if (hand.at_place == PlaceKind::Hole && numbered) {
    HoleState& hole = world.state.holes[event::index_of(hand.at_bolt)];
    if (hole.bolt != event::kNoThing) return Refusal::HoleTaken;
    wet_thread(hole, fluid, volume_m3, now);
  } else if ((hand.at_place == PlaceKind::BoltHead || hand.at_place == PlaceKind::BoltRecess) && numbered) {
    const ThingId bolt = world.state.holes[event::index_of(hand.at_bolt)].bolt;
    if (bolt == event::kNoThing) return Refusal::NoSuchPlace;
    if (fluid != FluidKind::Alcohol) world.state.bolts[world.thing(bolt).part].head_film_kg_m2 += load / 1e-4;
  } else if (what.kind == ThingKind::Bolt) {
    wet_thread(world.state.bolts[what.part], fluid, volume_m3, now);
  } else if (what.kind == ThingKind::Rag) {
    wet_cell(world.state.rags[what.part].fold, fluid, load / kFoldArea_m2, now, kRagSlowness_1);
  } else if (what.kind == ThingKind::Rotor && face_of(hand.at_place) >= 0) {
    drop_on_face(world, what, face_of(hand.at_place), hand.u_1, hand.v_1, fluid, volume_m3,
                 kDropSpread_m2 * static_cast<double>(drops));
  } else if (FilmCell* patch = patch_at(world, hand.at_thing, hand.at_place, hand.at_bolt); patch != nullptr) {
    wet_cell(*patch, fluid, load / patch_area_m2(hand.at_place), now);
  } else {
    return Refusal::NoSuchPlace;
  }
  return Refusal::None;
}

}  // namespace

Refusal squeeze(const World& world, HandId hand_id, std::int64_t drops) {
  const HandState& hand = world.hand(hand_id);
  if (hand.holding == event::kNoThing) return Refusal::HandEmpty;
  if (world.kind(hand.holding) != ThingKind::Bottle || drops < 1) return Refusal::NothingToDo;
  if (hand.stage != HandStage::At || hand.at_thing == event::kNoThing) return Refusal::NoSuchPlace;
  const std::int64_t fall = drops > kMostDrops ? kMostDrops : drops;
  const BottlePart& bottle = world.setup.bottles[world.thing(hand.holding).part];
  const double volume_m3 = bottle.drop_m3 * static_cast<double>(fall);
  const Refusal refusal = apply_at(world, hand, bottle.fluid, volume_m3, fall);
  if (refusal != Refusal::None) return refusal;
  Draft applied(world, "applied");
  applied.with("hand", hand_value(hand_id)).with("fluid", static_cast<double>(bottle.fluid));
  const bool bolt_thing = world.kind(hand.at_thing) == ThingKind::Bolt;
  const bool plain_bolt = bolt_thing && hand.at_place == PlaceKind::Body;
  applied.with("part", part_value(world, hand.at_thing, plain_bolt ? PlaceKind::BoltThread : hand.at_place));
  applied.with_if(hand.at_bolt != event::kNoBolt, "bolt", bolt_value(hand.at_bolt));
  if (world.kind(hand.at_thing) == ThingKind::Rotor) {
    applied.with("rotor", static_cast<double>(rotor_item(world.setup, hand.at_thing)));
  }
  applied.with("thing", thing_value(hand.at_thing)).with("amount", base::clamp_1(volume_m3, 0.0, 1e-4)).emit();
  return Refusal::None;
}

ThreadFilm thread_film(const World& world, BoltId bolt_id) {
  const HoleState& hole = world.state.holes[event::index_of(bolt_id)];
  const base::Tick now = world.state.tick;
  double grease = hole.grease_kg_m2;
  double oil = hole.oil_kg_m2;
  ThreadFilm film;
  film.locker_m3 = hole.locker_m3;
  film.alcohol_wet = film_wet(hole.alcohol_kg_m2, hole.alcohol_tick, now);
  std::int64_t since = hole.locker_tick;
  if (hole.bolt != event::kNoThing) {
    const BoltState& bolt = world.state.bolts[world.thing(hole.bolt).part];
    grease += bolt.grease_kg_m2;
    oil += bolt.oil_kg_m2;
    film.locker_m3 += bolt.locker_m3;
    if (bolt.locker_tick > since) since = bolt.locker_tick;
    film.alcohol_wet = film.alcohol_wet || film_wet(bolt.alcohol_kg_m2, bolt.alcohol_tick, now);
  }
  film.greasy = grease >= kGreasyThread_kg_m2;
  film.oily = oil >= kGreasyThread_kg_m2;
  film.locker_set_1 = hole.bolt == event::kNoThing ? 0.0 : hole.set_locker_1;
  // without air between metal the liquid cures; grease and oil keep it from doing so
  const bool cures = hole.bolt != event::kNoThing && film.locker_m3 >= kLeastLocker_m3 && !film.greasy && !film.oily;
  if (cures) {
    const double set = physics::locker_cured_1(base::seconds(now - since));
    if (set > film.locker_set_1) film.locker_set_1 = set;
  }
  return film;
}

void tell_skin(const World& world) {
  world.emit("skin_left", {{"skin", skin_value(world, HandId::Left)}});
  world.emit("skin_right", {{"skin", skin_value(world, HandId::Right)}});
}

void glove(const World& world, HandId hand_id, bool on) {
  HandState& hand = world.hand(hand_id);
  if (hand.gloved == on) return;
  if (on) {
    hand.bare_film_kg_m2 = hand.film_kg_m2;
    hand.film_kg_m2 = {};
    hand.film_kg_m2[at(Film::SkinGrease)] = physics::kGloveLoad_kg_m2;
  } else {
    hand.film_kg_m2 = hand.bare_film_kg_m2;
    hand.bare_film_kg_m2 = {};
  }
  hand.gloved = on;
  world.emit("gloved", {{"hand", hand_value(hand_id)}, {"on", on ? 1.0 : 0.0}});
  world.emit(hand_id == HandId::Left ? "skin_left" : "skin_right", {{"skin", on ? 1.0 : 0.0}});
}

void turn_rag(const World& world, HandId hand_id) {
  HandState& hand = world.hand(hand_id);
  if (hand.holding == event::kNoThing || world.kind(hand.holding) != ThingKind::Rag) return;
  const std::size_t part = world.thing(hand.holding).part;
  RagState& rag = world.state.rags[part];
  const bool wiping = world.state.contacts[static_cast<std::size_t>(hand_id)].wiping &&
                      world.state.contacts[static_cast<std::size_t>(hand_id)].open;
  const double radius = hand.face_radius_m;
  const double angle = hand.face_angle_rad;
  end_wipe(world, hand_id);
  if (rag.folds_left > 0) {
    --rag.folds_left;
    rag.fold = fresh_fold(world.setup.rags[part]);
    rag.fold_used = false;
  }
  if (!wiping) return;
  begin_wipe(world, hand_id);
  hand.face_radius_m = hand.aim_radius_m = radius;
  hand.face_angle_rad = hand.aim_angle_rad = angle;
}

bool seat_wet(const World& world, ThingId rotor) {
  const base::Tick now = world.state.tick;
  const RotorSurfaces& surfaces = world.state.rotors[world.thing(rotor).part];
  const std::size_t lies = world.state.seat.printed_out ? 1 : 0;
  const auto wet = [now](const FilmCell& cell) {
    return wet_alcohol_kg_m2(cell, now) > 0.0 || cell.load_kg_m2[at(Film::Locker)] > kGreasyThread_kg_m2;
  };
  if (wet(surfaces.patches[lies])) return true;
  for (const FilmCell& boss : world.state.bosses) {
    if (wet(boss)) return true;
  }
  return false;
}

}  // namespace proofstand::bench

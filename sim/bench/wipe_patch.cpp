#include "sim/bench/wipe_patch.h"

#include <cmath>

#include "sim/base/math.h"
#include "sim/bench/draft.h"

namespace proofstand::bench {
namespace {

constexpr double kExchangesPerPass = 3.0;

std::size_t at(Film film) { return static_cast<std::size_t>(film); }

/// A thread keeps its films as plain numbers; they meet the rag as a cell does.
template <class Thread>
void meet_thread(const World& world, Thread& thread, FilmCell& fold, double strength_1) {
  FilmCell film;
  film.load_kg_m2[at(Film::Grease)] = thread.grease_kg_m2;
  film.load_kg_m2[at(Film::Oil)] = thread.oil_kg_m2;
  film.load_kg_m2[at(Film::Locker)] = thread.locker_m3 * kLockerDensity_kg_m3 / kThreadArea_m2;
  film.load_kg_m2[at(Film::Alcohol)] = thread.alcohol_kg_m2;
  film.wet_tick = thread.alcohol_tick;
  meet_rag(film, kThreadArea_m2, fold, strength_1, world.state.tick);
  // a thread keeps no dust: it stays on the rag
  fold.load_kg_m2[at(Film::Dust)] += film.load_kg_m2[at(Film::Dust)] * (kThreadArea_m2 / kFoldArea_m2);
  thread.grease_kg_m2 = film.load_kg_m2[at(Film::Grease)] + film.load_kg_m2[at(Film::SkinGrease)];
  thread.oil_kg_m2 = film.load_kg_m2[at(Film::Oil)] + film.load_kg_m2[at(Film::BrakeFluid)];
  thread.locker_m3 = film.load_kg_m2[at(Film::Locker)] * kThreadArea_m2 / kLockerDensity_kg_m3;
  thread.alcohol_kg_m2 = film.load_kg_m2[at(Film::Alcohol)];
  thread.alcohol_tick = film.wet_tick;
}

void meet_place(const World& world, const ContactState& contact, FilmCell& fold, double strength_1) {
  const Thing& what = world.thing(contact.thing);
  if (contact.place == PlaceKind::HubSeat) {
    for (FilmCell& boss : world.state.bosses)
      meet_rag(boss, patch_area_m2(contact.place), fold, strength_1, world.state.tick);
    return;
  }
  if (contact.place == PlaceKind::Hole && event::index_of(contact.bolt) < world.state.holes.size()) {
    meet_thread(world, world.state.holes[event::index_of(contact.bolt)], fold, strength_1);
    return;
  }
  if (what.kind == ThingKind::Bolt && contact.place != PlaceKind::BoltHead) {
    meet_thread(world, world.state.bolts[what.part], fold, strength_1);
    return;
  }
  if (what.kind == ThingKind::Rag) return;
  if (FilmCell* patch = patch_at(world, contact.thing, contact.place, contact.bolt); patch != nullptr) {
    meet_rag(*patch, patch_area_m2(contact.place), fold, strength_1, world.state.tick);
  }
}

void brush_dirt(const World& world, const ContactState& contact) {
  for (std::size_t i = 0; i < world.state.holes.size(); ++i) {
    const bool here =
        contact.place == PlaceKind::HubSeat || (contact.place == PlaceKind::Boss && i == event::index_of(contact.bolt));
    if (here && world.setup.hub.bosses[i].dirt_loose) world.state.holes[i].dirt_m = 0.0;
  }
}

double coverage_1(const ContactState& contact, bool other_face, bool track) {
  if (track) return swept_share_1(contact, other_face);
  return base::clamp_1(contact.path_m / full_stroke_m(contact.place), 0.0, 1.0);
}

double film_after(const World& world, const ContactState& contact, int face) {
  const Thing& what = world.thing(contact.thing);
  if (face >= 0) {
    const TrackGrid grid = track_grid(world.setup.rotors[what.part]);
    return face_figures(world.state.rotors[what.part].faces[static_cast<std::size_t>(face)], grid, world.state.tick)
        .worst_kg_m2;
  }
  if (contact.place == PlaceKind::HubSeat) {
    double worst = 0.0;
    for (const FilmCell& boss : world.state.bosses) {
      const double load = fouling_kg_m2(boss.load_kg_m2);
      if (load > worst) worst = load;
    }
    return worst;
  }
  if (contact.place == PlaceKind::Hole && event::index_of(contact.bolt) < world.state.holes.size()) {
    const HoleState& hole = world.state.holes[event::index_of(contact.bolt)];
    return hole.grease_kg_m2 + hole.oil_kg_m2;
  }
  if (what.kind == ThingKind::Bolt) {
    return world.state.bolts[what.part].grease_kg_m2 + world.state.bolts[what.part].oil_kg_m2;
  }
  return fouling_at_kg_m2(world, contact.thing, contact.place, contact.bolt, 0.0, 0.0);
}

void tell_wipe(const World& world, HandId hand_id, const ContactState& contact, PlaceKind place, bool other_face) {
  const bool rotor = world.kind(contact.thing) == ThingKind::Rotor;
  const int face = rotor ? face_of(place) : -1;
  const double coverage = coverage_1(contact, other_face, face >= 0);
  double once_m = full_stroke_m(place);
  if (face >= 0) {
    const TrackGrid grid = track_grid(world.setup.rotors[world.thing(contact.thing).part]);
    once_m = base::kTwoPi * 0.5 * (grid.inner_m + grid.outer_m);
  }
  const double passes = base::clamp_1(std::floor(contact.path_m / once_m + 0.5), 1.0, 1000.0);
  Draft wiped(world, "wiped");
  wiped.with("hand", hand_value(hand_id)).with("part", part_value(world, contact.thing, place));
  if (rotor) wiped.with("rotor", static_cast<double>(rotor_item(world.setup, contact.thing)));
  wiped.with_if(contact.bolt != event::kNoBolt, "bolt", bolt_value(contact.bolt));
  wiped.with("rag", thing_value(world.hand(hand_id).holding)).with("coverage", coverage);
  wiped.with("solvent", contact.solvent ? 1.0 : 0.0).with("fresh_fold", contact.fresh_fold ? 1.0 : 0.0);
  wiped.with("clean_fold", contact.load_before_kg_m2 < kDirtyFold_kg_m2 ? 1.0 : 0.0);
  wiped.with("rag_load", base::clamp_1(contact.load_before_kg_m2, 0.0, 1.0));
  wiped.with("film", base::clamp_1(film_after(world, contact, face), 0.0, 1.0)).with("passes", passes);
  wiped.with("press", contact.press_count > 0 ? contact.press_sum_n / static_cast<double>(contact.press_count) : 0.0);
  wiped.emit();
}

}  // namespace

double full_stroke_m(PlaceKind place) {
  switch (place) {
    case PlaceKind::CarrierOuter:
    case PlaceKind::CarrierInner:
      return 0.140;
    case PlaceKind::HubSeat:
      return 0.120;
    case PlaceKind::Arms:
      return 0.200;
    case PlaceKind::Edge:
    case PlaceKind::InnerEdge:
      return 0.400;
    case PlaceKind::Boss:
    case PlaceKind::Hole:
    case PlaceKind::BoltHead:
    case PlaceKind::BoltThread:
    case PlaceKind::BoltRecess:
      return 0.012;
    case PlaceKind::BenchTop:
      return 0.500;
    default:
      return 0.050;
  }
}

void wipe_patch(const World& world, ContactState& contact, FilmCell& fold, double strength_1) {
  const double due = contact.path_m / full_stroke_m(contact.place) * kExchangesPerPass;
  for (int most = 0; most < 4 && static_cast<double>(contact.contacts) <= due; ++most) {
    meet_place(world, contact, fold, strength_1);
    ++contact.contacts;
  }
  if (contact.path_m >= 0.5 * full_stroke_m(contact.place)) brush_dirt(world, contact);
}

void end_wipe(const World& world, HandId hand_id) {
  ContactState& contact = world.state.contacts[static_cast<std::size_t>(hand_id)];
  if (!contact.open || !contact.wiping) return;
  contact.open = false;
  if (contact.press_count == 0) return;
  tell_wipe(world, hand_id, contact, contact.place, false);
  if (!contact.both_faces) return;
  const PlaceKind other = contact.place == PlaceKind::TrackOuter ? PlaceKind::TrackInner : PlaceKind::TrackOuter;
  tell_wipe(world, hand_id, contact, other, true);
}

}  // namespace proofstand::bench

#include "sim/bench/contact.h"

#include <cmath>

#include "sim/base/math.h"
#include "sim/bench/draft.h"
#include "sim/bench/film_shares.h"
#include "sim/bench/wiping.h"

namespace proofstand::bench {
namespace {

std::size_t at(Film film) { return static_cast<std::size_t>(film); }

// fingers that came to rest: the cells under a disc of a thumb's area give and take at once, all from the same skin
double touch_face(const World& world, HandState& hand, RotorSurfaces& surfaces, const TrackGrid& grid, int face_index,
                  double radius_m, double angle_rad, double& area_m2) {
  FaceState& face = surfaces.faces[static_cast<std::size_t>(face_index)];
  const double reach_m = base::sqrt_1(kThumbArea_m2 / base::kPi);
  const double x0 = radius_m * base::cos_rad(angle_rad);
  const double y0 = radius_m * base::sin_rad(angle_rad);
  const std::array<double, kSpecies> skin = hand.film_kg_m2;
  double worst = 0.0;
  bool any = false;
  for (std::size_t sector = 0; sector < kSectors; ++sector) {
    const double middle = base::kTwoPi * (static_cast<double>(sector) + 0.5) / static_cast<double>(kSectors);
    const double cx = base::cos_rad(middle);
    const double cy = base::sin_rad(middle);
    for (std::size_t ring = 0; ring < kRings; ++ring) {
      const double r = grid.ring_radius_m(ring);
      const double dx = r * cx - x0;
      const double dy = r * cy - y0;
      if (dx * dx + dy * dy > reach_m * reach_m) continue;
      FilmCell& cell = face.cells[sector * kRings + ring];
      const double cell_area = grid.cell_area_m2(ring);
      rebase_alcohol(cell, world.state.tick);
      const bool wet = cell.load_kg_m2[at(Film::Alcohol)] > 0.0;
      std::array<double, kSpecies> before = skin;
      exchange_film(before, kFingersArea_m2, cell.load_kg_m2, cell_area, cell_area, fingers_on_metal(hand.gloved, wet));
      for (std::size_t s = 0; s < kSpecies; ++s) hand.film_kg_m2[s] += before[s] - skin[s];
      area_m2 += cell_area;
      any = true;
      const double load = fouling_kg_m2(cell.load_kg_m2);
      if (load > worst) worst = load;
    }
  }
  for (double& load : hand.film_kg_m2) {
    if (load < 0.0) load = 0.0;
  }
  if (any) mark_changed(face);
  return worst;
}

double touch_patch(const World& world, HandState& hand, FilmCell& patch, PlaceKind place, double& area_m2) {
  const double patch_area = patch_area_m2(place);
  area_m2 = patch_area < kThumbArea_m2 ? patch_area : kThumbArea_m2;
  rebase_alcohol(patch, world.state.tick);
  const bool wet = patch.load_kg_m2[at(Film::Alcohol)] > 0.0;
  exchange_film(hand.film_kg_m2, kFingersArea_m2, patch.load_kg_m2, patch_area, area_m2,
                fingers_on_metal(hand.gloved, wet));
  return fouling_kg_m2(patch.load_kg_m2);
}

// a bolt's thread keeps grease and oil only; what skin leaves counts as grease
double touch_thread(HandState& hand, BoltState& bolt, double& area_m2) {
  area_m2 = kThreadArea_m2 * 0.5;
  std::array<double, kSpecies> thread{};
  thread[at(Film::Grease)] = bolt.grease_kg_m2;
  thread[at(Film::Oil)] = bolt.oil_kg_m2;
  exchange_film(hand.film_kg_m2, kFingersArea_m2, thread, kThreadArea_m2, area_m2,
                fingers_on_metal(hand.gloved, false));
  for (const Film stays : {Film::Dust, Film::Locker}) {
    hand.film_kg_m2[at(stays)] += thread[at(stays)] * (kThreadArea_m2 / kFingersArea_m2);
  }
  bolt.grease_kg_m2 = thread[at(Film::Grease)] + thread[at(Film::SkinGrease)];
  bolt.oil_kg_m2 = thread[at(Film::Oil)] + thread[at(Film::BrakeFluid)];
  return bolt.grease_kg_m2 + bolt.oil_kg_m2;
}

bool feels_something(PlaceKind place) {
  return place == PlaceKind::Boss || place == PlaceKind::HubSeat || place == PlaceKind::Hole ||
         place == PlaceKind::BoltThread || place == PlaceKind::BoltRecess;
}

}  // namespace

void begin_touch(const World& world, HandId hand_id, ThingId thing, PlaceKind place, BoltId bolt, double radius_m,
                 double angle_rad) {
  end_touch(world, hand_id);
  HandState& hand = world.hand(hand_id);
  ContactState& contact = world.state.contacts[static_cast<std::size_t>(hand_id)];
  contact = ContactState{};
  contact.open = true;
  contact.thing = thing;
  contact.place = place;
  contact.bolt = bolt;
  contact.since = world.state.tick;
  const Thing& what = world.thing(thing);
  const int face = face_of(place);
  radius_m = base::clamp_1(radius_m, 0.0, 1.0);
  angle_rad = base::wrap_two_pi(angle_rad);
  if (what.kind == ThingKind::Rotor && face >= 0) {
    RotorSurfaces& surfaces = world.state.rotors[what.part];
    const TrackGrid grid = track_grid(world.setup.rotors[what.part]);
    contact.film_kg_m2 = touch_face(world, hand, surfaces, grid, face, radius_m, angle_rad, contact.area_m2);
    contact.both_faces = hand.holding == thing && hand.grip == Grip::Track;
    if (contact.both_faces) {
      // seen at the other face the same spot lies at the mirrored angle
      const double other = touch_face(world, hand, surfaces, grid, 1 - face, radius_m, -angle_rad, contact.area_m2);
      if (other > contact.film_kg_m2) contact.film_kg_m2 = other;
    }
  } else if (FilmCell* patch = patch_at(world, thing, place, bolt); patch != nullptr) {
    contact.film_kg_m2 = touch_patch(world, hand, *patch, place, contact.area_m2);
  } else if (what.kind == ThingKind::Bolt && place != PlaceKind::BoltHead && place != PlaceKind::BoltRecess) {
    contact.film_kg_m2 = touch_thread(hand, world.state.bolts[what.part], contact.area_m2);
  } else {
    contact.area_m2 = kThumbArea_m2;
  }
}

void end_touch(const World& world, HandId hand_id) {
  ContactState& contact = world.state.contacts[static_cast<std::size_t>(hand_id)];
  if (!contact.open || contact.wiping || contact.by_tool) return;
  contact.open = false;
  const bool rotor = world.kind(contact.thing) == ThingKind::Rotor;
  const double time_s = base::seconds(world.state.tick - contact.since);
  const bool numbered = contact.bolt != event::kNoBolt;
  const auto item = [&] { return static_cast<double>(rotor_item(world.setup, contact.thing)); };
  Draft touched(world, "touched");
  touched.with("hand", hand_value(hand_id)).with("skin", skin_value(world, hand_id));
  touched.with("part", part_value(world, contact.thing, contact.place));
  touched.with_if(rotor, "rotor", rotor ? item() : 0.0).with_if(numbered, "bolt", bolt_value(contact.bolt));
  touched.with("thing", thing_value(contact.thing)).with("area", contact.area_m2);
  touched.with("film", base::clamp_1(contact.film_kg_m2, 0.0, 1.0)).with("time", time_s);
  touched.emit();
  // a finger tip that rests on a seat or a thread for a second feels grit and burrs
  if (!feels_something(contact.place) || time_s < 1.0) return;
  Draft felt(world, "inspected");
  felt.with("hand", hand_value(hand_id)).choose("with", "fingers");
  felt.with("part", part_value(world, contact.thing, contact.place));
  felt.with_if(numbered, "bolt", bolt_value(contact.bolt));
  felt.with("thing", thing_value(contact.thing)).with("time", time_s).emit();
}

void soil_by_rag(const World& world, HandId hand_id, ThingId rag) {
  HandState& hand = world.hand(hand_id);
  FilmCell& fold = world.state.rags[world.thing(rag).part].fold;
  exchange_film(fold.load_kg_m2, kFoldArea_m2, hand.film_kg_m2, kFingersArea_m2, kThumbArea_m2, rag_in_hand());
}

void lay_down(const World& world, ThingId rotor) {
  const Thing& what = world.thing(rotor);
  const bool printed_down = world.state.things[event::index_of(rotor)].inner_up;
  const std::size_t down = printed_down ? 0 : 1;
  FaceState& face = world.state.rotors[what.part].faces[down];
  const TrackGrid grid = track_grid(world.setup.rotors[what.part]);
  const double bench_area_m2 = patch_area_m2(PlaceKind::BenchTop);
  const Exchange& exchange = bench_under_rotor();
  const std::array<double, kSpecies> bench = world.state.bench_top.load_kg_m2;
  double worst = 0.0;
  for (std::size_t i = 0; i < face.cells.size(); ++i) {
    std::array<double, kSpecies> before = bench;
    const double cell_area = grid.cell_area_m2(i % kRings);
    exchange_film(before, bench_area_m2, face.cells[i].load_kg_m2, cell_area, cell_area, exchange);
    for (std::size_t s = 0; s < kSpecies; ++s) world.state.bench_top.load_kg_m2[s] += before[s] - bench[s];
    const double load = fouling_kg_m2(face.cells[i].load_kg_m2);
    if (load > worst) worst = load;
  }
  for (double& load : world.state.bench_top.load_kg_m2) {
    if (load < 0.0) load = 0.0;
  }
  mark_changed(face);
  Draft laid(world, "laid_down");
  laid.with("rotor", static_cast<double>(rotor_item(world.setup, rotor)));
  laid.choose("face", printed_down ? "outer" : "inner").with("film", base::clamp_1(worst, 0.0, 1.0)).emit();
}

FieldNumber skin_value(const World& world, HandId hand) { return world.hand(hand).gloved ? 1.0 : 0.0; }

FieldNumber part_value(const World& world, ThingId thing, PlaceKind place) {
  const auto word = [&](std::string_view part) { return world.word("touched", "part", part); };
  switch (place) {
    case PlaceKind::TrackOuter:
      return word("outer_track");
    case PlaceKind::TrackInner:
      return word("inner_track");
    case PlaceKind::Edge:
      return word("edge");
    case PlaceKind::Arms:
      return word("arms");
    case PlaceKind::InnerEdge:
      return word("inner_edge");
    case PlaceKind::CarrierOuter:
      return word("outer_carrier");
    case PlaceKind::CarrierInner:
      return word("inner_carrier");
    case PlaceKind::BoltHead:
      return word("bolt_head");
    case PlaceKind::BoltThread:
      return word("bolt_thread");
    case PlaceKind::BoltRecess:
      return word("recess");
    case PlaceKind::Hole:
      return word("hole");
    case PlaceKind::Boss:
    case PlaceKind::HubSeat:
      return word("seat");
    case PlaceKind::Tyre:
      return word("tyre");
    case PlaceKind::Rim:
      return word("rim");
    case PlaceKind::BenchTop:
    case PlaceKind::Tray:
      return word("bench");
    default:
      break;
  }
  switch (world.kind(thing)) {
    case ThingKind::Rag:
      return word("rag");
    case ThingKind::LKey:
    case ThingKind::Driver:
    case ThingKind::ClickDriver:
    case ThingKind::Micrometer:
    case ThingKind::Vernier:
    case ThingKind::DialGauge:
    case ThingKind::Pick:
      return word("tool");
    case ThingKind::Bench:
    case ThingKind::Tray:
      return word("bench");
    default:
      return word("other");
  }
}

FilmCell* patch_at(const World& world, ThingId thing, PlaceKind place, BoltId bolt) {
  const Thing& what = world.thing(thing);
  if (what.kind == ThingKind::Rotor) {
    const int patch = patch_of(place);
    return patch < 0 ? nullptr : &world.state.rotors[what.part].patches[static_cast<std::size_t>(patch)];
  }
  if (what.kind == ThingKind::Rag) return &world.state.rags[what.part].fold;
  if (place == PlaceKind::BenchTop || what.kind == ThingKind::Bench) return &world.state.bench_top;
  if (place == PlaceKind::HubSeat) return &world.state.bosses[0];
  if (place == PlaceKind::Boss && event::index_of(bolt) < world.state.bosses.size()) {
    return &world.state.bosses[event::index_of(bolt)];
  }
  return nullptr;
}

double fouling_at_kg_m2(const World& world, ThingId thing, PlaceKind place, BoltId bolt, double radius_m,
                        double angle_rad) {
  const Thing& what = world.thing(thing);
  const int face = face_of(place);
  if (what.kind == ThingKind::Rotor && face >= 0) {
    const TrackGrid grid = track_grid(world.setup.rotors[what.part]);
    const CellPlace cell = resolve_cell(grid, radius_m, angle_rad);
    const FaceState& state = world.state.rotors[what.part].faces[static_cast<std::size_t>(face)];
    return fouling_kg_m2(state.cells[cell.index()].load_kg_m2);
  }
  const FilmCell* patch = patch_at(world, thing, place, bolt);
  return patch == nullptr ? 0.0 : fouling_kg_m2(patch->load_kg_m2);
}

}  // namespace proofstand::bench

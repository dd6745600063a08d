#include "sim/bench/senses.h"
#include "sim/bench/surface.h"
#include "sim/bench/wheel.h"
#include "sim/bench/wiping.h"

namespace proofstand::bench {
namespace {

const Thing* thing_of(const Bench& bench, ThingId id, ThingKind kind) {
  const std::size_t index = event::index_of(id);
  if (index >= bench.setup().things.size()) return nullptr;
  const Thing& thing = bench.setup().things[index];
  return thing.kind == kind ? &thing : nullptr;
}

const InstrumentState* instrument_of(const Bench& bench, ThingId id) {
  for (const ThingKind kind : {ThingKind::Micrometer, ThingKind::Vernier, ThingKind::DialGauge}) {
    if (const Thing* thing = thing_of(bench, id, kind); thing != nullptr) {
      return &bench.state().instruments[thing->part];
    }
  }
  return nullptr;
}

const RotorPart* rotor_of(const Bench& bench, ThingId id) {
  const Thing* thing = thing_of(bench, id, ThingKind::Rotor);
  return thing == nullptr ? nullptr : &bench.setup().rotors[thing->part];
}

}  // namespace

Whereabouts see_where(const Bench& bench, ThingId thing) {
  const std::size_t index = event::index_of(thing);
  return index < bench.state().things.size() ? bench.state().things[index].where : Whereabouts::Fixed;
}

WheelAt see_wheel(const Bench& bench) { return bench.state().wheel.at; }
bool see_wheel_turning(const Bench& bench) { return wheel_spins(bench.state()); }
double see_wheel_angle_rad(const Bench& bench) { return wheel_angle_rad(bench.state()); }

double see_scale_m(const Bench& bench, ThingId instrument) {
  const InstrumentState* state = instrument_of(bench, instrument);
  return state == nullptr ? 0.0 : state->shown_m;
}

double see_dial_sweep_m(const Bench& bench, ThingId instrument) {
  const InstrumentState* state = instrument_of(bench, instrument);
  return state == nullptr || !state->standing ? 0.0 : state->most_m - state->least_m;
}

double see_dial_turns_1(const Bench& bench, ThingId instrument) {
  const InstrumentState* state = instrument_of(bench, instrument);
  if (state == nullptr || !state->standing) return 0.0;
  return (state->turned_rad < 0.0 ? -state->turned_rad : state->turned_rad) / base::kTwoPi;
}

bool see_rag_black(const Bench& bench, ThingId rag) {
  const Thing* thing = thing_of(bench, rag, ThingKind::Rag);
  if (thing == nullptr) return false;
  const std::array<double, kSpecies>& load = bench.state().rags[thing->part].fold.load_kg_m2;
  return fouling_kg_m2(load) + load[static_cast<std::size_t>(Film::Dust)] >= kDirtyFold_kg_m2;
}

std::int64_t see_folds_left(const Bench& bench, ThingId rag) {
  const Thing* thing = thing_of(bench, rag, ThingKind::Rag);
  return thing == nullptr ? 0 : bench.state().rags[thing->part].folds_left;
}

double see_wet_share_1(const Bench& bench, ThingId rotor, bool printed_face) {
  const Thing* thing = thing_of(bench, rotor, ThingKind::Rotor);
  if (thing == nullptr) return 0.0;
  const FaceState& face = bench.state().rotors[thing->part].faces[printed_face ? 0 : 1];
  return face_figures(face, track_grid(bench.setup().rotors[thing->part]), bench.tick()).wet_share_1;
}

double see_wiped_share_1(const Bench& bench, HandId hand, bool printed_face) {
  const ContactState& contact = bench.state().contacts[static_cast<std::size_t>(hand)];
  if (!contact.open || !contact.wiping || face_of(contact.place) < 0) return 0.0;
  const bool printed_first = contact.place == PlaceKind::TrackOuter;
  return swept_share_1(contact, printed_face != printed_first);
}

double see_stamp_m(const Bench& bench, ThingId rotor) {
  const RotorPart* part = rotor_of(bench, rotor);
  return part == nullptr ? 0.0 : part->stamp_m;
}

double see_marked_diameter_m(const Bench& bench, ThingId rotor) {
  const RotorPart* part = rotor_of(bench, rotor);
  return part == nullptr || !part->printed ? 0.0 : part->diameter_m;
}

bool see_arrow(const Bench& bench, ThingId rotor) {
  const RotorPart* part = rotor_of(bench, rotor);
  return part != nullptr && part->has_arrow;
}

}  // namespace proofstand::bench

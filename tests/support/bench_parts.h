// A bench in parts for tests of single files: setup, state and events laid open, without hands that move by themselves.
#pragma once

#include <vector>

#include "sim/bench/start_surfaces.h"
#include "sim/bench/surface.h"
#include "tests/support/six_bolt_setup.h"

namespace proofstand::testing {

/// The shared workplace with everything lying where it lies before the first action.
struct BenchParts {
  explicit BenchParts(SixBolt from = six_bolt())
      : job(std::move(from)), words(event::job_vocabulary(job_items(job.setup))) {
    state.things.resize(job.setup.things.size());
    for (ThingId bolt : job.setup.fitted_bolts) state.things[event::index_of(bolt)].where = bench::Whereabouts::InHole;
    state.bolts.resize(job.setup.bolts.size());
    for (std::size_t i = 0; i < state.bolts.size(); ++i)
      state.bolts[i].recess_debris_m = job.setup.bolts[i].recess_debris_m;
    state.holes.resize(job.setup.bolt_count());
    for (std::size_t i = 0; i < state.holes.size(); ++i) {
      state.holes[i].bolt = job.setup.fitted_bolts[i];
      state.holes[i].preload_n = 5000.0;
      state.holes[i].old_locker_nm = job.setup.hub.bosses[i].old_locker_nm;
    }
    state.tools.resize(job.setup.tools.size());
    state.seat.rotor = job.setup.fitted_rotor;
    bench::start_surfaces(world());
  }
  bench::World world() { return {job.setup, words, state, events}; }
  /// The hand holds a thing at a place, as after a bring; u and v as in the place's frame.
  void hold(bench::HandId id, ThingId thing, ThingId at, bench::PlaceKind place, double u = 0.0, double v = 0.0,
            bench::BoltId bolt = event::kNoBolt) {
    bench::HandState& hand = state.hands[static_cast<std::size_t>(id)];
    hand.stage = bench::HandStage::At;
    hand.holding = thing;
    hand.at_thing = at;
    hand.at_place = place;
    hand.at_bolt = bolt;
    hand.u_1 = u;
    hand.v_1 = v;
    hand.arrived = state.tick;
  }
  [[nodiscard]] std::vector<event::Record> of_kind(std::string_view kind) const {
    std::vector<event::Record> found;
    for (const event::Record& record : events) {
      if (words.kinds[record.kind].name == kind) found.push_back(record);
    }
    return found;
  }
  /// Value of a field; the field must be there.
  [[nodiscard]] double field(const event::Record& record, std::string_view name) const {
    return record.values.at(*event::Vocabulary::find_field(words.kinds[record.kind], name));
  }
  [[nodiscard]] bool knows(const event::Record& record, std::string_view name) const {
    return record.knows(*event::Vocabulary::find_field(words.kinds[record.kind], name));
  }
  [[nodiscard]] std::string choice(const event::Record& record, std::string_view name) const {
    const std::size_t at = *event::Vocabulary::find_field(words.kinds[record.kind], name);
    return words.kinds[record.kind].fields[at].choices.at(static_cast<std::size_t>(record.values.at(at)));
  }

  SixBolt job;
  event::Vocabulary words;
  bench::BenchState state;
  std::vector<event::Record> events;
};

/// µg/cm² as people quote films, in kg/m².
inline constexpr double kUg = 1e-5;
inline constexpr std::size_t at(physics::Species species) { return static_cast<std::size_t>(species); }

}  // namespace proofstand::testing

// What the bench's own files work on together: the setup, the state, and where events go. Private to this floor.
#pragma once

#include <initializer_list>
#include <string_view>
#include <vector>

#include "sim/bench/refusal.h"
#include "sim/bench/state.h"
#include "sim/event/job_events.h"

namespace proofstand::bench {

struct World {
  const BenchSetup& setup;
  const event::Vocabulary& vocabulary;
  BenchState& state;
  std::vector<event::Record>& events;  ///< appended to, in order

  [[nodiscard]] const Thing& thing(ThingId id) const { return setup.things[event::index_of(id)]; }
  [[nodiscard]] ThingKind kind(ThingId id) const { return thing(id).kind; }
  HandState& hand(HandId id) const { return state.hands[static_cast<std::size_t>(id)]; }
  [[nodiscard]] static HandId other(HandId id) { return id == HandId::Left ? HandId::Right : HandId::Left; }
  /// Appends an event at the present tick.
  void emit(std::string_view kind, std::initializer_list<event::FieldValue> fields) const {
    events.push_back(event::make_record(vocabulary, kind, state.tick, fields));
  }
  /// A choice's word as a value, for emit.
  [[nodiscard]] double word(std::string_view kind, std::string_view field, std::string_view choice) const {
    return event::choice_value(vocabulary, kind, field, choice);
  }
};

}  // namespace proofstand::bench

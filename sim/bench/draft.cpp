#include "sim/bench/draft.h"

#include "sim/base/assert.h"

namespace proofstand::bench {

Draft::Draft(const World& world, std::string_view kind)
    : world_(world), kind_(kind), record_(event::make_record(world.vocabulary, kind, world.state.tick, {})) {}

Draft& Draft::with(std::string_view field, double value) {
  const auto at = event::Vocabulary::find_field(world_.vocabulary.kinds[record_.kind], field);
  STAND_ASSERT(at.has_value());
  STAND_ASSERT(value == value);
  record_.values[*at] = value + 0.0;
  record_.unknown = static_cast<std::uint16_t>(record_.unknown & ~(1u << *at));
  return *this;
}

Draft& Draft::with_if(bool known, std::string_view field, double value) { return known ? with(field, value) : *this; }

Draft& Draft::choose(std::string_view field, std::string_view word) {
  return with(field, event::choice_value(world_.vocabulary, kind_, field, word));
}

void Draft::emit() { world_.events.push_back(record_); }

}  // namespace proofstand::bench

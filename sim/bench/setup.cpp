#include "sim/bench/setup.h"

#include "sim/base/assert.h"

namespace proofstand::bench {

event::JobItems job_items(const BenchSetup& setup) {
  event::JobItems items;
  items.bolts = setup.bolt_count();
  for (const Thing& thing : setup.things) {
    items.things.push_back(thing.name);
    if (thing.kind == ThingKind::Rotor) items.rotors.push_back(thing.name);
  }
  for (const CardEntryPart& entry : setup.card) items.card.push_back(entry.name);
  items.card_words = setup.card_words;
  return items;
}

ThingId first_of(const BenchSetup& setup, ThingKind kind) {
  for (std::size_t i = 0; i < setup.things.size(); ++i) {
    if (setup.things[i].kind == kind) return static_cast<ThingId>(i);
  }
  return event::kNoThing;
}

std::size_t rotor_item(const BenchSetup& setup, ThingId thing) {
  std::size_t rotor = 0;
  for (std::size_t i = 0; i < setup.things.size(); ++i) {
    if (static_cast<ThingId>(i) == thing) return rotor;
    if (setup.things[i].kind == ThingKind::Rotor) ++rotor;
  }
  base::stop_on_bug("the thing is in the setup", __FILE__, __LINE__);
}

}  // namespace proofstand::bench

#include "sim/event/job_events.h"

#include <cmath>

#include "sim/base/assert.h"
#include "sim/base/number_text.h"
#include "sim/event/job_fields.h"

namespace proofstand::event {

std::vector<std::string> hand_choices() { return {"left", "right"}; }
std::vector<std::string> skin_choices() { return {"bare", "gloved"}; }
std::vector<std::string> fluid_choices() { return {"alcohol", "locker", "grease", "oil"}; }
std::vector<std::string> part_choices() {
  return {"outer_track",   "inner_track", "edge",        "arms", "inner_edge", "outer_carrier",
          "inner_carrier", "bolt_head",   "bolt_thread", "hole", "seat",       "tyre",
          "rim",           "bench",       "rag",         "tool", "recess",     "other"};
}

Vocabulary job_vocabulary(const JobItems& items) {
  Vocabulary vocabulary;
  ItemSet bolts{std::string(kBoltSet), Geometry::Ring, {}};
  for (std::size_t i = 0; i < items.bolts; ++i) {
    bolts.items.push_back("bolt " + base::text_from_int(static_cast<std::int64_t>(i + 1)));
  }
  vocabulary.sets = {bolts,
                     {std::string(kThingSet), Geometry::Plain, items.things},
                     {std::string(kRotorSet), Geometry::Plain, items.rotors},
                     {std::string(kCardSet), Geometry::Plain, items.card},
                     {std::string(kCardWordSet), Geometry::Plain, items.card_words}};
  const JobSets sets;
  add_hand_kinds(vocabulary.kinds, sets);
  add_joint_kinds(vocabulary.kinds, sets);
  add_check_kinds(vocabulary.kinds, sets);
  add_closing_kinds(vocabulary.kinds, sets);
  add_later_kinds(vocabulary.kinds, sets);
  for (const Kind& kind : vocabulary.kinds) STAND_ASSERT(kind.fields.size() <= Vocabulary::kMostFields);
  return vocabulary;
}

Record make_record(const Vocabulary& vocabulary, std::string_view kind, base::Tick tick,
                   std::initializer_list<FieldValue> fields) {
  const auto id = vocabulary.find_kind(kind);
  STAND_ASSERT(id.has_value());
  Record record;
  record.tick = tick;
  record.kind = *id;
  const Kind& declared = vocabulary.kinds[*id];
  record.unknown = static_cast<std::uint16_t>((1u << declared.fields.size()) - 1u);
  for (const FieldValue& given : fields) {
    const auto at = Vocabulary::find_field(declared, given.name);
    STAND_ASSERT(at.has_value());
    STAND_ASSERT(std::isfinite(given.value));
    record.values[*at] = given.value + 0.0;
    record.unknown = static_cast<std::uint16_t>(record.unknown & ~(1u << *at));
  }
  return record;
}

double choice_value(const Vocabulary& vocabulary, std::string_view kind, std::string_view field,
                    std::string_view word) {
  const auto id = vocabulary.find_kind(kind);
  STAND_ASSERT(id.has_value());
  const auto at = Vocabulary::find_field(vocabulary.kinds[*id], field);
  STAND_ASSERT(at.has_value());
  const std::vector<std::string>& words = vocabulary.kinds[*id].fields[*at].choices;
  for (std::size_t i = 0; i < words.size(); ++i) {
    if (words[i] == word) return static_cast<double>(i);
  }
  base::stop_on_bug("choice word is declared", __FILE__, __LINE__);
}

}  // namespace proofstand::event

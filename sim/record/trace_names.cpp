// Old names to new places: a recorded trace in the vocabulary of this edition.
#include "sim/record/trace_codec.h"

namespace proofstand::record {
namespace {

struct FieldWay {
  std::size_t to = 0;
  std::vector<double> words;  // of a choice: index then, by index now
};
struct KindWay {
  event::KindId kind = event::kNoKind;
  std::vector<FieldWay> fields;
};

base::Error unknown(const std::string& what) {
  return {"unknown-kind", "", "the trace speaks of " + what + ", which this edition does not know",
          "use an edition at least as new as the one that recorded it"};
}

base::Result<KindWay> find_way(const NamedKind& kind, const event::Vocabulary& vocabulary) {
  const auto id = vocabulary.find_kind(kind.name);
  if (!id) return unknown("\"" + kind.name + "\"");
  KindWay way;
  way.kind = *id;
  const event::Kind& here = vocabulary.kinds[*id];
  for (const NamedField& field : kind.fields) {
    const auto to = event::Vocabulary::find_field(here, field.name);
    if (!to) return unknown("\"" + field.name + "\" of \"" + kind.name + "\"");
    FieldWay field_way;
    field_way.to = *to;
    const std::vector<std::string>& words = here.fields[*to].choices;
    for (const std::string& word : field.choices) {
      std::size_t index = 0;
      while (index < words.size() && words[index] != word) ++index;
      if (index == words.size()) return unknown("\"" + word + "\" in \"" + kind.name + "\"");
      field_way.words.push_back(static_cast<double>(index));
    }
    way.fields.push_back(std::move(field_way));
  }
  return way;
}

}  // namespace

base::Result<std::vector<event::Record>> in_vocabulary(const NamedTrace& trace, const event::Vocabulary& vocabulary) {
  std::vector<KindWay> ways;
  for (const NamedKind& kind : trace.kinds) {
    auto way = find_way(kind, vocabulary);
    if (!way) return way.error();
    ways.push_back(std::move(*way));
  }
  std::vector<event::Record> records;
  records.reserve(trace.records.size());
  for (const event::Record& old : trace.records) {
    const KindWay& way = ways[old.kind];
    event::Record record;
    record.tick = old.tick;
    record.kind = way.kind;
    record.unknown = static_cast<std::uint16_t>((1U << vocabulary.kinds[way.kind].fields.size()) - 1U);
    for (std::size_t f = 0; f < way.fields.size(); ++f) {
      if (!old.knows(f)) continue;
      const FieldWay& to = way.fields[f];
      double value = old.values[f];
      if (!to.words.empty()) {
        // an index outside its words can only come from a file that was made by hand
        if (value < 0.0 || value >= static_cast<double>(to.words.size())) return unknown("a word beyond its list");
        value = to.words[static_cast<std::size_t>(value)];
      }
      record.values[to.to] = value;
      record.unknown = static_cast<std::uint16_t>(record.unknown & ~(1U << to.to));
    }
    records.push_back(record);
  }
  return records;
}

}  // namespace proofstand::record

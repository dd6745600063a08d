#include "sim/record/trace_codec.h"

#include "sim/base/byte_stream.h"
#include "sim/base/hash.h"
#include "sim/record/attempt.h"

namespace proofstand::record {
namespace {

constexpr std::int32_t kUnused = -1;

// kinds that occur, numbered in the order of the vocabulary
std::vector<std::int32_t> number_kinds(const event::Vocabulary& vocabulary, const std::vector<event::Record>& records) {
  std::vector<std::int32_t> numbers(vocabulary.kinds.size(), kUnused);
  for (const event::Record& record : records) numbers[record.kind] = 0;
  std::int32_t next = 0;
  for (std::int32_t& number : numbers) {
    if (number != kUnused) number = next++;
  }
  return numbers;
}

NamedKind named(const event::Kind& kind) {
  NamedKind out;
  out.name = kind.name;
  for (const event::Field& field : kind.fields) out.fields.push_back({field.name, field.choices});
  return out;
}

base::Error bad_trace(std::string_view where, std::string_view what) {
  return {"bad-trace", std::string(where), std::string(what), "take the file as the program wrote it"};
}

// [name] or [name, [words]]
NamedField read_field(JsonView cell) {
  NamedField field;
  for (const JsonView part : cell.children()) {
    if (part.type() == JsonType::Text) field.name = std::string(part.node().text);
    for (const JsonView word : part.children()) field.choices.emplace_back(word.node().text);
  }
  return field;
}

void put_hash_part(base::ByteWriter& out, const NamedKind& kind, const event::Record& record) {
  out.put(static_cast<std::int64_t>(record.tick));
  out.put(std::string_view(kind.name));
  for (std::size_t i = 0; i < kind.fields.size(); ++i) {
    out.put(record.knows(i));
    if (record.knows(i)) out.put(record.values[i]);
  }
}

std::string finish_hash(base::ByteWriter& out, base::Tick end_tick, event::EndReason end) {
  out.put(static_cast<std::int64_t>(end_tick));
  out.put(event::end_words(end));
  return base::digest_text(base::digest_of(out.bytes()));
}

}  // namespace

std::string trace_begin_object(const event::Vocabulary& vocabulary, const std::vector<event::Record>& records) {
  const std::vector<std::int32_t> numbers = number_kinds(vocabulary, records);
  JsonWriter json;
  json.begin_object().key("trace").begin_object().member("ticks_per_s", base::kTicksPerSecond).key("kinds");
  json.begin_list();
  for (std::size_t k = 0; k < numbers.size(); ++k) {
    if (numbers[k] == kUnused) continue;
    json.begin_list().text(vocabulary.kinds[k].name);
    for (const event::Field& field : vocabulary.kinds[k].fields) {
      json.begin_list().text(field.name);
      if (!field.choices.empty()) {
        json.begin_list();
        for (const std::string& word : field.choices) json.text(word);
        json.end_list();
      }
      json.end_list();
    }
    json.end_list();
  }
  json.end_list().end_object().end_object();
  return json.text();
}

std::string events_object(const event::Vocabulary& vocabulary, const std::vector<event::Record>& records,
                          std::size_t first, std::size_t count) {
  const std::vector<std::int32_t> numbers = number_kinds(vocabulary, records);
  JsonWriter json;
  json.begin_object().key("events").begin_list();
  base::Tick before = 0;
  for (std::size_t i = first; i < first + count; ++i) {
    const event::Record& record = records[i];
    json.begin_list().whole(record.tick - before).whole(numbers[record.kind]);
    before = record.tick;
    std::size_t known = vocabulary.kinds[record.kind].fields.size();
    while (known > 0 && !record.knows(known - 1)) --known;
    for (std::size_t f = 0; f < known; ++f) {
      if (record.knows(f)) {
        json.real(record.values[f]);
      } else {
        json.null();
      }
    }
    json.end_list();
  }
  json.end_list().end_object();
  return json.text();
}

base::Result<std::vector<NamedKind>> read_trace_begin(JsonView trace, std::string_view where) {
  if (trace.whole("ticks_per_s") != base::kTicksPerSecond) return bad_trace(where, "its seconds are not 240 ticks");
  const auto list = trace.list("kinds");
  if (!list) return bad_trace(where, "the list of kinds is missing");
  std::vector<NamedKind> kinds;
  for (const JsonView row : list->children()) {
    if (row.type() != JsonType::List || row.size() == 0 || row.size() > 1 + event::Vocabulary::kMostFields ||
        row.first().type() != JsonType::Text) {
      return bad_trace(where, "a kind is not [name, field, ...]");
    }
    NamedKind kind;
    for (const JsonView cell : row.children()) {
      if (kind.name.empty()) {
        kind.name = std::string(cell.node().text);
        continue;
      }
      if (cell.type() != JsonType::List || cell.size() == 0 || cell.first().type() != JsonType::Text) {
        return bad_trace(where, "a field of " + kind.name + " is not [name] or [name, [words]]");
      }
      kind.fields.push_back(read_field(cell));
    }
    kinds.push_back(std::move(kind));
  }
  return kinds;
}

base::Result<std::vector<event::Record>> read_events(JsonView list, const std::vector<NamedKind>& kinds,
                                                     std::string_view where) {
  std::vector<event::Record> records;
  base::Tick before = 0;
  for (const JsonView row : list.children()) {
    if (row.type() != JsonType::List || row.size() < 2) return bad_trace(where, "a record is not [ticks, kind, ...]");
    event::Record record;
    std::size_t at = 0;
    std::size_t fields = 0;
    for (const JsonView cell : row.children()) {
      const JsonNode& node = cell.node();
      if (at < 2) {
        const std::int64_t most = at == 0 ? kLongestAttempt : static_cast<std::int64_t>(kinds.size()) - 1;
        if (node.type != JsonType::Whole || node.whole < 0 || node.whole > most) {
          return bad_trace(where, "a record's ticks or kind is out of range");
        }
        if (at == 0) record.tick = before = before + node.whole;
        if (at == 1) {
          record.kind = static_cast<event::KindId>(node.whole);
          fields = kinds[record.kind].fields.size();
          record.unknown = static_cast<std::uint16_t>((1U << fields) - 1U);
        }
      } else {
        const std::size_t field = at - 2;
        if (field >= fields) return bad_trace(where, "a record has more values than its kind has fields");
        if (node.type == JsonType::Whole || node.type == JsonType::Real) {
          record.values[field] = node.real_1;
          record.unknown = static_cast<std::uint16_t>(record.unknown & ~(1U << field));
        } else if (node.type != JsonType::Null) {
          return bad_trace(where, "a value is not a number");
        }
      }
      ++at;
    }
    records.push_back(record);
  }
  return records;
}

std::string trace_hash(const event::Vocabulary& vocabulary, const std::vector<event::Record>& records,
                       base::Tick end_tick, event::EndReason end) {
  std::vector<NamedKind> kinds;
  for (const event::Kind& kind : vocabulary.kinds) kinds.push_back(named(kind));
  base::ByteWriter out;
  for (const event::Record& record : records) put_hash_part(out, kinds[record.kind], record);
  return finish_hash(out, end_tick, end);
}

std::string trace_hash(const NamedTrace& trace, base::Tick end_tick, event::EndReason end) {
  base::ByteWriter out;
  for (const event::Record& record : trace.records) put_hash_part(out, trace.kinds[record.kind], record);
  return finish_hash(out, end_tick, end);
}

}  // namespace proofstand::record

#include "sim/record/trace_file.h"

#include "sim/base/number_text.h"
#include "sim/base/quantity.h"
#include "sim/base/words.h"
#include "sim/record/json_text.h"
#include "sim/record/trace_header.h"

namespace proofstand::record {
namespace {

using event::FieldType;

constexpr double kLargestWhole = 9007199254740992.0;  // 2^53: whole numbers beyond it are not exact

class RecordReader {
 public:
  RecordReader(const event::Vocabulary& vocabulary, std::string_view where) : vocabulary_(vocabulary), where_(where) {}

  base::Result<event::Record> read(JsonView line) const {
    event::Record record;
    const std::string name(line.text("kind").value_or(""));
    const auto id = vocabulary_.find_kind(name);
    if (!id) {
      std::vector<std::string_view> known;
      for (const event::Kind& kind : vocabulary_.kinds) known.push_back(kind.name);
      return bad("there is no kind \"" + name + "\"", nearest(name, known));
    }
    record.kind = *id;
    const auto tick = line.whole("t");
    if (!tick || *tick < 0) return bad("\"t\" is not a tick from 0 on", "write a whole number of ticks");
    record.tick = *tick;
    const event::Kind& kind = vocabulary_.kinds[*id];
    record.unknown = static_cast<std::uint16_t>((1U << kind.fields.size()) - 1U);
    for (const JsonView member : line.children()) {
      const std::string_view key = member.node().key;
      if (key == "kind" || key == "t") continue;
      const auto at = event::Vocabulary::find_field(kind, key);
      if (!at) {
        std::vector<std::string_view> known;
        for (const event::Field& field : kind.fields) known.push_back(field.name);
        return bad("\"" + kind.name + "\" has no field \"" + std::string(key) + "\"", nearest(key, known));
      }
      if (member.type() == JsonType::Null) continue;
      const auto value = read_value(kind.fields[*at], member);
      if (!value) return value.error();
      record.values[*at] = *value + 0.0;
      record.unknown = static_cast<std::uint16_t>(record.unknown & ~(1U << *at));
    }
    return record;
  }

 private:
  [[nodiscard]] base::Error bad(const std::string& what, std::string instead) const {
    return {"bad-record", std::string(where_), what, std::move(instead)};
  }
  static std::string nearest(std::string_view word, const std::vector<std::string_view>& known) {
    const std::string_view near = base::nearest_word(word, known);
    if (!near.empty()) return "did you mean \"" + std::string(near) + "\"?";
    std::string list = "known are";
    for (std::size_t i = 0; i < known.size() && i < 12; ++i) list += (i == 0 ? " " : ", ") + std::string(known[i]);
    return known.size() > 12 ? list + ", ..." : list;
  }
  [[nodiscard]] base::Result<double> read_word(const event::Field& field, std::string_view word,
                                               const std::vector<std::string>& words) const {
    for (std::size_t i = 0; i < words.size(); ++i) {
      if (words[i] == word) return static_cast<double>(i);
    }
    return bad("\"" + field.name + "\" cannot be \"" + std::string(word) + "\"",
               nearest(word, {words.begin(), words.end()}));
  }
  [[nodiscard]] base::Result<double> read_value(const event::Field& field, JsonView value) const {
    const JsonNode& node = value.node();
    const bool number = node.type == JsonType::Whole || node.type == JsonType::Real;
    switch (field.type) {
      case FieldType::Flag:
        if (node.type == JsonType::Flag) return node.flag ? 1.0 : 0.0;
        return bad("\"" + field.name + "\" is yes or no", "write true or false");
      case FieldType::Count:
        if (node.type == JsonType::Whole && node.real_1 <= kLargestWhole && node.real_1 >= -kLargestWhole) {
          return node.real_1;
        }
        return bad("\"" + field.name + "\" is a whole number", "write it without unit");
      case FieldType::Choice:
        if (node.type == JsonType::Text) return read_word(field, node.text, field.choices);
        return bad("\"" + field.name + "\" is one of its words", "write the word in quotes");
      case FieldType::Item:
        if (node.type == JsonType::Text) return read_word(field, node.text, vocabulary_.sets[field.set].items);
        return bad("\"" + field.name + "\" is an item of its set", "write its word in quotes");
      case FieldType::Quantity:
        if (number) return node.real_1;
        if (node.type == JsonType::Text) {
          const auto quantity = base::parse_quantity_as(node.text, field.dimension);
          if (quantity) return *quantity;
          return bad("\"" + field.name + "\": " + quantity.error().what, quantity.error().instead);
        }
        return bad("\"" + field.name + "\" is " + std::string(base::dimension_words(field.dimension)),
                   "write a number in SI units, or a text with its unit");
    }
    return 0.0;
  }

  const event::Vocabulary& vocabulary_;
  std::string_view where_;
};

}  // namespace

base::Result<TraceFile> read_trace(std::string_view bytes, std::string_view name) {
  TraceFile file;
  JsonReader json;
  bool headed = false;
  bool ended = false;
  std::int64_t number = 0;
  for (std::size_t at = 0; at < bytes.size();) {
    std::size_t stop = bytes.find('\n', at);
    if (stop == std::string_view::npos) stop = bytes.size();
    const std::string_view line = base::trimmed(bytes.substr(at, stop - at));
    at = stop + 1;
    ++number;
    if (line.empty()) continue;
    const std::string where = std::string(name) + ":" + base::text_from_int(number);
    const auto bad = [&](std::string what, std::string instead) {
      return base::Error{"bad-record", where, std::move(what), std::move(instead)};
    };
    if (ended) return bad("a line after the one that ends the trace", "put the line with \"end\" last");
    const auto view = json.read(line, where);
    if (!view) return view.error();
    if (!headed) {
      auto header = read_trace_header(*view, where);
      if (!header) return header.error();
      file.vocabulary = std::move(header->vocabulary);
      file.trace.ticks_per_s = header->ticks_per_s;
      headed = true;
      continue;
    }
    const base::Tick now = file.trace.records.empty() ? 0 : file.trace.records.back().tick;
    if (const auto end = view->whole("end")) {
      if (*end < now) return bad("the end lies before the last record", "write a later tick");
      file.trace.end_tick = *end;
      const std::string_view word = view->text("reason").value_or("finished");
      bool known = false;
      using event::EndReason;
      for (const EndReason reason : {EndReason::Finished, EndReason::Timeout, EndReason::Stopped, EndReason::Aborted}) {
        if (event::end_words(reason) != word) continue;
        file.trace.end = reason;
        known = true;
      }
      if (!known)
        return bad("there is no end reason \"" + std::string(word) + "\"",
                   "write finished, timeout, stopped or aborted");
      ended = true;
      continue;
    }
    auto record = RecordReader(file.vocabulary, where).read(*view);
    if (!record) return record.error();
    if (record->tick < now) return bad("time goes back", "put the records in order of time");
    file.trace.records.push_back(*record);
  }
  if (!headed) {
    return base::Error{"not-a-trace", std::string(name), "the file is empty", "begin with the line of a trace"};
  }
  if (!ended) {
    return base::Error{"no-end", std::string(name) + ":" + base::text_from_int(number), "the trace does not end",
                       R"(close it with {"end":9000,"reason":"finished"})"};
  }
  return file;
}

std::string trace_record_line(const event::Vocabulary& vocabulary, const event::Record& record) {
  const event::Kind& kind = vocabulary.kinds[record.kind];
  JsonWriter json;
  json.begin_object().member("t", record.tick).member("kind", kind.name);
  for (std::size_t f = 0; f < kind.fields.size(); ++f) {
    if (!record.knows(f)) continue;
    const event::Field& field = kind.fields[f];
    const auto index = static_cast<std::size_t>(record.values[f]);
    json.key(field.name);
    switch (field.type) {
      case FieldType::Flag:
        json.flag(record.values[f] != 0.0);
        break;
      case FieldType::Count:
        json.whole(static_cast<std::int64_t>(record.values[f]));
        break;
      case FieldType::Choice:
        json.text(field.choices[index]);
        break;
      case FieldType::Item:
        json.text(vocabulary.sets[field.set].items[index]);
        break;
      case FieldType::Quantity:
        json.real(record.values[f]);
        break;
    }
  }
  json.end_object();
  return json.text();
}

std::string trace_end_line(base::Tick end_tick, event::EndReason end) {
  JsonWriter json;
  json.begin_object().member("end", end_tick).member("reason", event::end_words(end)).end_object();
  return json.text();
}

}  // namespace proofstand::record

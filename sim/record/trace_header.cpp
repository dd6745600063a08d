#include "sim/record/trace_header.h"

#include <initializer_list>

#include "sim/base/number_text.h"
#include "sim/base/words.h"
#include "sim/event/job_events.h"
#include "sim/record/attempt.h"
#include "sim/record/trace_file.h"

namespace proofstand::record {
namespace {

using event::FieldType;

constexpr FieldType kFieldTypes[] = {FieldType::Flag, FieldType::Count, FieldType::Item, FieldType::Choice,
                                     FieldType::Quantity};
// widest range that an author's own quantity may have; the rules' checks compare with it
constexpr double kWidest = 1e12;
constexpr std::size_t kMostKinds = 4096;

base::Error bad(std::string_view where, const std::string& what, std::string_view instead) {
  return {"bad-header", std::string(where), what, std::string(instead)};
}

std::vector<std::string> texts_in(const std::optional<JsonView>& list) {
  std::vector<std::string> texts;
  if (!list) return texts;
  for (const JsonView item : list->children()) {
    if (item.type() == JsonType::Text) texts.emplace_back(item.node().text);
  }
  return texts;
}

base::Result<event::ItemSet> read_set(JsonView view, std::string_view where) {
  event::ItemSet set;
  const auto name = view.text("name");
  const auto items = view.list("items");
  if (!name || name->empty() || !items) {
    return bad(where, "a set lacks its name or its items", R"(write {"name":"bolts","ring":true,"items":["bolt 1"]})");
  }
  set.name = std::string(*name);
  set.items = texts_in(items);
  if (set.items.size() != items->size())
    return bad(where, "an item of set \"" + set.name + "\" is no text", "write words");
  const auto ring = view.find("ring");
  if (ring && ring->node().flag) set.geometry = event::Geometry::Ring;
  return set;
}

base::Result<event::Field> read_field(JsonView view, const event::Vocabulary& vocabulary, std::string_view where) {
  event::Field field;
  field.name = std::string(view.text("name").value_or(""));
  const std::string_view type = view.text("type").value_or("");
  bool known = false;
  for (const FieldType candidate : kFieldTypes) {
    if (words_of(candidate) == type) {
      field.type = candidate;
      known = true;
    }
  }
  if (field.name.empty() || !known) {
    return bad(where, "a field needs a name and a type; \"" + std::string(type) + "\" is none",
               "types are flag, count, item, choice, quantity");
  }
  field.hi_si = 1.0;
  if (field.type == FieldType::Count) field.hi_si = kWidest;
  if (field.type == FieldType::Quantity) {
    const auto dimension = base::dimension_from_name(view.text("of").value_or(""));
    if (!dimension) {
      return bad(where, "quantity \"" + field.name + "\" does not say of what: " + dimension.error().what,
                 R"(write "of":"torque" or the like)");
    }
    field.dimension = *dimension;
    field.lo_si = -kWidest;
    field.hi_si = kWidest;
  }
  if (field.type == FieldType::Choice) {
    field.choices = texts_in(view.list("words"));
    if (field.choices.empty())
      return bad(where, "choice \"" + field.name + "\" has no words", R"(write "words":["a","b"])");
  }
  if (field.type == FieldType::Item) {
    const auto set = vocabulary.find_set(view.text("set").value_or(""));
    if (!set) return bad(where, "item \"" + field.name + "\" names no set of this header", R"(write "set":"bolts")");
    field.set = *set;
  }
  return field;
}

base::Result<event::Kind> read_kind(JsonView view, const event::Vocabulary& vocabulary, std::string_view where) {
  event::Kind kind;
  kind.name = std::string(view.text("name").value_or(""));
  if (kind.name.empty()) return bad(where, "a kind has no name", R"(write {"name":"poured","fields":[]})");
  if (const auto change = view.find("change"); change && change->node().flag) kind.type = event::KindType::Change;
  if (const auto fields = view.list("fields")) {
    if (fields->size() > event::Vocabulary::kMostFields) {
      return bad(where, "kind \"" + kind.name + "\" has more than 16 fields", "leave some out");
    }
    for (const JsonView child : fields->children()) {
      auto field = read_field(child, vocabulary, where);
      if (!field) return field.error();
      kind.fields.push_back(std::move(*field));
    }
  }
  if (kind.type == event::KindType::Change && kind.fields.size() != 1) {
    return bad(where, "kind \"" + kind.name + "\" is a change but has not one field",
               "give it the one field that changes");
  }
  return kind;
}

// the bench's own kinds over the sets of this header
event::Vocabulary job_over(const event::Vocabulary& sets) {
  event::JobItems items;
  for (const event::ItemSet& set : sets.sets) {
    if (set.name == event::kBoltSet) items.bolts = set.items.size();
    if (set.name == event::kThingSet) items.things = set.items;
    if (set.name == event::kRotorSet) items.rotors = set.items;
    if (set.name == event::kCardSet) items.card = set.items;
    if (set.name == event::kCardWordSet) items.card_words = set.items;
  }
  return event::job_vocabulary(items);
}

}  // namespace

std::string_view words_of(FieldType type) {
  switch (type) {
    case FieldType::Flag:
      return "flag";
    case FieldType::Count:
      return "count";
    case FieldType::Item:
      return "item";
    case FieldType::Choice:
      return "choice";
    case FieldType::Quantity:
      return "quantity";
  }
  return "flag";
}

base::Result<TraceHeader> read_trace_header(JsonView line, std::string_view where) {
  if (line.text(kFileMark) != "trace") {
    return base::Error{"not-a-trace", std::string(where), "the first line is not that of a trace",
                       R"(begin with {"proofstand":"trace","format":1,"ticks_per_s":240,"kinds":"job","sets":[]})"};
  }
  const auto format = line.whole("format");
  if (!format || *format < 1) return bad(where, "\"format\" is missing", R"(write "format":1)");
  if (*format > kTraceFormat) {
    return base::Error{"newer-format", std::string(where), "this trace has format " + base::text_from_int(*format),
                       "use a newer edition of the program"};
  }
  TraceHeader header;
  header.ticks_per_s = line.whole("ticks_per_s").value_or(base::kTicksPerSecond);
  if (header.ticks_per_s < 1 || header.ticks_per_s > 1'000'000'000) {
    return bad(where, "\"ticks_per_s\" is out of range", "write a number from 1 to 1000000000");
  }
  if (const auto sets = line.list("sets")) {
    for (const JsonView child : sets->children()) {
      auto set = read_set(child, where);
      if (!set) return set.error();
      if (header.vocabulary.sets.size() >= kMostKinds) return bad(where, "too many sets", "leave some out");
      header.vocabulary.sets.push_back(std::move(*set));
    }
  }
  const auto kinds = line.find("kinds");
  if (!kinds || (kinds->type() == JsonType::Text && kinds->node().text == "job")) {
    header.vocabulary = job_over(header.vocabulary);
    return header;
  }
  if (kinds->type() != JsonType::List || kinds->size() > kMostKinds) {
    return bad(where, "\"kinds\" is neither \"job\" nor a list of at most 4096 kinds", R"(write "kinds":"job")");
  }
  for (const JsonView child : kinds->children()) {
    auto kind = read_kind(child, header.vocabulary, where);
    if (!kind) return kind.error();
    if (header.vocabulary.find_kind(kind->name))
      return bad(where, "kind \"" + kind->name + "\" stands twice", "rename one");
    header.vocabulary.kinds.push_back(std::move(*kind));
  }
  return header;
}

std::string trace_header_line(const event::Vocabulary& vocabulary, std::int64_t ticks_per_s, bool own_kinds) {
  JsonWriter json;
  json.begin_object().member(kFileMark, "trace").member("format", kTraceFormat).member("ticks_per_s", ticks_per_s);
  json.key("sets").begin_list();
  for (const event::ItemSet& set : vocabulary.sets) {
    json.begin_object().member("name", set.name);
    if (set.geometry == event::Geometry::Ring) json.key("ring").flag(true);
    json.key("items").begin_list();
    for (const std::string& item : set.items) json.text(item);
    json.end_list().end_object();
  }
  json.end_list();
  if (!own_kinds) {
    json.member("kinds", "job").end_object();
    return json.text();
  }
  json.key("kinds").begin_list();
  for (const event::Kind& kind : vocabulary.kinds) {
    json.begin_object().member("name", kind.name);
    if (kind.type == event::KindType::Change) json.key("change").flag(true);
    json.key("fields").begin_list();
    for (const event::Field& field : kind.fields) {
      json.begin_object().member("name", field.name).member("type", words_of(field.type));
      if (field.type == FieldType::Quantity) json.member("of", base::dimension_name(field.dimension));
      if (field.type == FieldType::Item) json.member("set", vocabulary.sets[field.set].name);
      if (field.type == FieldType::Choice) {
        json.key("words").begin_list();
        for (const std::string& word : field.choices) json.text(word);
        json.end_list();
      }
      json.end_object();
    }
    json.end_list().end_object();
  }
  json.end_list().end_object();
  return json.text();
}

}  // namespace proofstand::record

#include "sim/rules/draft.h"

#include "sim/base/number_text.h"
#include "sim/base/words.h"
#include "sim/rules/tokens.h"
#include "sim/rules/where_names.h"

namespace proofstand::rules {

void Draft::fault(std::string code, const SourcePos& at, std::string what, std::string instead) const {
  faults.add({std::move(code), place_words(at), std::move(what), std::move(instead)});
}

std::optional<std::size_t> Draft::word(const Text& text, const std::vector<std::string_view>& words,
                                       std::string_view what, std::optional<std::size_t> otherwise) const {
  if (!text.given() && otherwise) return otherwise;
  for (std::size_t i = 0; i < words.size(); ++i) {
    if (words[i] == text.text) return i;
  }
  fault("E02", text.at,
        text.given() ? "'" + text.text + "' is not a " + std::string(what) : "the " + std::string(what) + " is missing",
        "write one of its words" + nearest_hint(text.text, words));
  return std::nullopt;
}

WhereContext Draft::context(event::KindId kind) const { return {program.vocabulary, program.sheet, kind}; }

Selector Draft::selector(const SelectorSpec& spec) const {
  Selector made;
  if (!spec.given()) return made;
  const std::optional<event::KindId> kind = program.vocabulary.find_kind(spec.event.text);
  if (!kind) {
    std::vector<std::string_view> known;
    for (const event::Kind& row : program.vocabulary.kinds) known.push_back(row.name);
    fault("E04", spec.event.at, "there is no event '" + spec.event.text + "'",
          "write an event that the bench makes" + nearest_hint(spec.event.text, known));
    return made;
  }
  made.kind = *kind;
  if (spec.where.given()) made.where = keep(parse_condition(context(*kind), spec.where));
  return made;
}

std::int32_t Draft::keep(const base::Result<Expression>& made) const {
  if (made.has_value()) return keep(made.value());
  faults.add(made.error());
  return -1;
}

std::int32_t Draft::keep(Expression made) const {
  program.expressions.push_back(std::move(made));
  return static_cast<std::int32_t>(program.expressions.size()) - 1;
}

base::Tick Draft::ticks(const Text& text) const {
  if (!text.given()) return -1;
  const base::Result<double> time_s = parse_fixed(context(event::kNoKind), text, base::Dimension::Time);
  if (!time_s.has_value()) {
    faults.add(time_s.error());
    return -1;
  }
  const double exact = time_s.value() * static_cast<double>(program.ticks_per_s);
  if (!(exact >= 0.0) || exact > 9.0e15) {
    fault("E09", text.at, "'" + text.text + "' is no possible duration", "write a duration from 0 s up");
    return -1;
  }
  const auto below = static_cast<base::Tick>(exact);
  const base::Tick nearest = static_cast<base::Tick>(exact + 0.5);
  const double off = exact - static_cast<double>(nearest);
  // a decimal fraction of a second is hardly ever exact in binary; a millionth of a tick is only that
  if (off > 1e-6 || off < -1e-6) {
    const auto words = [&](base::Tick t) {
      return base::text_for_people(static_cast<double>(t) / static_cast<double>(program.ticks_per_s), 6) + " s";
    };
    fault("E09", text.at,
          "'" + text.text + "' is not a whole number of ticks of 1/" + base::text_from_int(program.ticks_per_s) + " s",
          "write " + words(below) + " or " + words(below + 1));
    return -1;
  }
  return nearest;
}

std::int32_t Draft::field(event::KindId kind, const Text& name) const {
  if (kind == event::kNoKind) return -1;
  const event::Kind& row = program.vocabulary.kinds[kind];
  const std::optional<std::size_t> found = event::Vocabulary::find_field(row, name.text);
  if (found) return static_cast<std::int32_t>(*found);
  std::vector<std::string_view> known;
  for (const event::Field& field : row.fields) known.push_back(field.name);
  fault("E05", name.at, "the event " + row.name + " has no field '" + name.text + "'",
        "write one of its fields" + nearest_hint(name.text, known));
  return -1;
}

const event::Field& Draft::field_of(event::KindId kind, std::int32_t field) const {
  return program.vocabulary.kinds[kind].fields[static_cast<std::size_t>(field)];
}

}  // namespace proofstand::rules

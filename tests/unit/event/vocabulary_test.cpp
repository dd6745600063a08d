// Danger: a kind or field declared twice, or a choice list that no longer matches the code's order, would make files
// and rules mean something else than they say.
#include <set>
#include <string>

#include "sim/event/job_events.h"
#include "tests/support/catch.h"

using namespace proofstand;
using event::FieldType;

namespace {

event::Vocabulary sample() {
  event::JobItems items;
  items.bolts = 5;
  items.things = {"key", "old rotor", "new rotor"};
  items.rotors = {"old rotor", "new rotor"};
  items.card = {"thickness"};
  items.card_words = {"keep", "replace"};
  return event::job_vocabulary(items);
}

}  // namespace

TEST_CASE("every kind and every field is declared once and says what it is") {
  const event::Vocabulary vocabulary = sample();
  std::set<std::string> kinds;
  for (const event::Kind& kind : vocabulary.kinds) {
    INFO(kind.name);
    CHECK(kinds.insert(kind.name).second);
    CHECK(kind.what.size() > 8);
    CHECK(kind.fields.size() <= event::Vocabulary::kMostFields);
    if (kind.type == event::KindType::Change) CHECK(kind.fields.size() == 1);
    std::set<std::string> fields;
    for (const event::Field& field : kind.fields) {
      INFO(field.name);
      CHECK(fields.insert(field.name).second);
      CHECK_FALSE(field.what.empty());
      CHECK(field.lo_si <= field.hi_si);
      CHECK((field.type == FieldType::Choice) == !field.choices.empty());
      CHECK((field.type == FieldType::Item) == (field.set != event::kNoSet));
      if (field.type == FieldType::Item) CHECK(field.set < vocabulary.sets.size());
    }
  }
}

TEST_CASE("sets carry the scenario's words, and the joint's positions form a ring of any size") {
  const event::Vocabulary vocabulary = sample();
  const auto bolts = vocabulary.find_set(event::kBoltSet);
  REQUIRE(bolts.has_value());
  CHECK(vocabulary.sets[*bolts].items.size() == 5);
  CHECK(vocabulary.sets[*bolts].geometry == event::Geometry::Ring);
  CHECK(vocabulary.find_item(*bolts, "bolt 5") == std::optional<std::size_t>{4});
  CHECK_FALSE(vocabulary.find_item(*bolts, "bolt 6").has_value());
  const auto rotors = vocabulary.find_set(event::kRotorSet);
  REQUIRE(rotors.has_value());
  CHECK(vocabulary.find_item(*rotors, "new rotor") == std::optional<std::size_t>{1});
}

TEST_CASE("a record holds what was given and knows what was not") {
  const event::Vocabulary vocabulary = sample();
  const event::Record record =
      event::make_record(vocabulary, "tightened", 480, {{"bolt", 3.0}, {"peak_torque", 5.1}, {"clicks", 1.0}});
  const event::Kind& kind = vocabulary.kinds[record.kind];
  CHECK(record.tick == 480);
  for (std::size_t i = 0; i < kind.fields.size(); ++i) {
    const std::string& name = kind.fields[i].name;
    const bool given = name == "bolt" || name == "peak_torque" || name == "clicks";
    CHECK(record.knows(i) == given);
  }
  CHECK(record.values[*event::Vocabulary::find_field(kind, "peak_torque")] == 5.1);
}

TEST_CASE("stages that are not built yet are declared and marked so") {
  std::size_t later = 0;
  for (const event::Kind& kind : sample().kinds) later += kind.later ? 1 : 0;
  CHECK(later >= 20);
  CHECK_FALSE(sample().kinds[*sample().find_kind("tightened")].later);
}

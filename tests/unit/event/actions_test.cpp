// Danger: the list of actions is what files and replays are read by; a row out of order would replay another job.
#include <set>
#include <string>

#include "sim/event/actions.h"
#include "tests/support/catch.h"

using namespace proofstand;

TEST_CASE("the list of actions stands in the order of its kinds, each name once") {
  std::set<std::string> names;
  const auto& table = event::action_table();
  for (std::size_t i = 0; i < table.size(); ++i) {
    INFO(table[i].name);
    CHECK(static_cast<std::size_t>(table[i].kind) == i);
    CHECK(names.insert(std::string(table[i].name)).second);
    CHECK(table[i].fields.size() <= event::Action::kMostFields);
    CHECK(event::action_from_name(table[i].name) == std::optional(table[i].kind));
  }
  CHECK_FALSE(event::action_from_name("tighten").has_value());
}

TEST_CASE("no action does a step of the job by itself") {
  for (const char* step : {"tighten", "loosen", "measure", "wipe", "start", "seat"}) {
    CHECK_FALSE(event::action_from_name(step).has_value());
  }
}

TEST_CASE("makers fill the numbers in the order of the list") {
  const event::Action bring =
      event::make_bring(7, event::HandId::Right, static_cast<event::ThingId>(4), event::PlaceKind::BoltRecess,
                        static_cast<event::BoltId>(2), 10, 20, 30, 40);
  CHECK(bring.hand() == event::HandId::Right);
  CHECK(bring.numbers[1] == 4);
  CHECK(bring.numbers[2] == static_cast<std::int64_t>(event::PlaceKind::BoltRecess));
  CHECK(bring.numbers[3] == 2);
  CHECK(bring.numbers[7] == 40);
  CHECK(event::make_write(0, static_cast<event::CardEntryId>(3), "1.78").text == "1.78");
}

TEST_CASE("places and grips have one word each, in the order of their kinds") {
  std::set<std::string> words;
  const auto& places = event::place_table();
  for (std::size_t i = 0; i < places.size(); ++i) {
    CHECK(static_cast<std::size_t>(places[i].kind) == i);
    CHECK(words.insert(std::string(places[i].words)).second);
    CHECK(event::place_from_words(places[i].words) == std::optional(places[i].kind));
  }
  for (const std::string_view grip : event::grip_words()) CHECK(words_of(*event::grip_from_words(grip)) == grip);
}

// The command table: keys that clash, keys that a layout does not have, words that say nothing.
#include <algorithm>
#include <array>
#include <string_view>

#include "sim/desk/commands.h"
#include "sim/desk/refusal_words.h"
#include "tests/support/catch.h"
#include "tests/support/six_bolt_setup.h"

namespace proofstand::testing {
namespace {

using desk::Chord;
using desk::CommandId;
using desk::Key;
using desk::Situation;

constexpr std::array<Situation, 7> kSituations = {Situation::Free, Situation::At,       Situation::AtTyre,
                                                  Situation::Work, Situation::WorkTyre, Situation::Busy,
                                                  Situation::Look};

/// A layout's letters at the places of a US keyboard, in the order of its alphabet A to Z; from memory of the national
/// layouts (US ANSI, French AZERTY, German DIN 2137 T1, Russian).
struct Layout {
  std::string_view name;
  std::array<std::string_view, 26> printed;
};
const std::array<Layout, 4>& layouts() {
  static const std::array<Layout, 4> all = {
      Layout{"us", {"a", "b", "c", "d", "e", "f", "g", "h", "i", "j", "k", "l", "m",
                    "n", "o", "p", "q", "r", "s", "t", "u", "v", "w", "x", "y", "z"}},
      Layout{"fr", {"q", "b", "c", "d", "e", "f", "g", "h", "i", "j", "k", "l", ",",
                    "n", "o", "p", "a", "r", "s", "t", "u", "v", "z", "x", "y", "w"}},
      Layout{"de", {"a", "b", "c", "d", "e", "f", "g", "h", "i", "j", "k", "l", "m",
                    "n", "o", "p", "q", "r", "s", "t", "u", "v", "w", "x", "z", "y"}},
      Layout{"ru", {"ф", "и", "с", "в", "у", "а", "п", "р", "ш", "о", "л", "д", "ь",
                    "т", "щ", "з", "й", "к", "ы", "е", "г", "м", "ц", "ч", "н", "я"}}};
  return all;
}

std::size_t word_count(const std::string& sentence) {
  return static_cast<std::size_t>(std::count(sentence.begin(), sentence.end(), ' ')) + (sentence.empty() ? 0 : 1);
}

}  // namespace

// danger: one key, two meanings
TEST_CASE("no chord means two things in one situation, and every command is in its row") {
  const std::vector<desk::Command>& table = desk::command_table();
  for (std::size_t i = 0; i < table.size(); ++i) CHECK(static_cast<std::size_t>(table[i].id) == i);
  CHECK(desk::clashes(desk::default_bindings()).empty());
  // and the check does find one
  desk::Bindings twice = desk::default_bindings();
  twice.chords[static_cast<std::size_t>(CommandId::Frame)] = {{Key::R, false, false}};
  CHECK(desk::clashes(twice).size() == 1);
  const auto refused = desk::rebound(desk::default_bindings(), CommandId::Frame, {{Key::R, false, false}});
  REQUIRE_FALSE(refused.has_value());
  CHECK(refused.error().code == "chord-clash");
  const auto moved = desk::rebound(desk::default_bindings(), CommandId::Frame, {});
  REQUIRE(moved.has_value());
  const auto now = desk::rebound(*moved, CommandId::Lamp, {{Key::F, false, false}});
  REQUIRE(now.has_value());
  CHECK(desk::command_for(*now, {Key::F, false, false}, Situation::Free) == CommandId::Lamp);
  CHECK(desk::command_for(*now, {Key::F3, false, false}, Situation::Free) == std::nullopt);
}

// danger: on another country's keyboard half of the commands are out of reach, or move about
TEST_CASE("on four layouts every chord of the table can be typed and means its command") {
  const desk::Bindings bindings = desk::default_bindings();
  for (const Layout& layout : layouts()) {
    const bool latin = layout.name != "ru";
    std::array<int, static_cast<std::size_t>(Key::F11) + 1> typed{};
    for (std::size_t at = 0; at < 26; ++at) {
      const char position = static_cast<char>('A' + static_cast<char>(at));
      const Key key = desk::printed_key(position, layout.printed[at]);
      ++typed[static_cast<std::size_t>(key)];
      if (key == Key::None || !latin) continue;
      const char printed = static_cast<char>(layout.printed[at].front() - 'a' + 'A');
      CHECK(desk::words_of(Chord{key, false, false}) == std::string(1, printed));
    }
    for (const desk::Command& command : desk::command_table()) {
      for (const Chord& chord : command.chords) {
        const bool letter = chord.key >= Key::B && chord.key <= Key::X;
        if (letter) CHECK(typed[static_cast<std::size_t>(chord.key)] == 1);
        for (const Situation situation : kSituations) {
          const bool meant =
              std::find(command.situations.begin(), command.situations.end(), situation) != command.situations.end();
          const auto found = desk::command_for(bindings, chord, situation);
          if (meant) CHECK(found == command.id);
          if (!meant) CHECK(found != command.id);
        }
      }
    }
  }
}

// danger: fine motions need Shift, and Shift makes another chord of every arrow
TEST_CASE("shift leaves a chord what it is, but for the text size") {
  const desk::Bindings bindings = desk::default_bindings();
  CHECK(desk::command_for(bindings, {Key::Left, false, true}, Situation::At) == CommandId::TapBack);
  CHECK(desk::command_for(bindings, {Key::PageUp, true, true}, Situation::Free) == CommandId::TextLarger);
  CHECK(desk::command_for(bindings, {Key::PageUp, true, false}, Situation::Free) == CommandId::GroupBack);
}

// danger: somebody who dictates or uses a switch triggers letters without meaning to
TEST_CASE("with letters off no letter means anything, and the rest still does") {
  desk::Bindings bindings = desk::default_bindings();
  bindings.letters = false;
  for (int key = static_cast<int>(Key::B); key <= static_cast<int>(Key::X); ++key) {
    for (const Situation situation : kSituations) {
      CHECK(desk::command_for(bindings, {static_cast<Key>(key), false, false}, situation) == std::nullopt);
    }
  }
  CHECK(desk::command_for(bindings, {Key::Space, false, false}, Situation::Free) == CommandId::Keep);
  for (const desk::HelpRow& row : desk::help_rows(bindings)) CHECK(row.keys.find("R or U") == std::string::npos);
}

// danger: a command that only a mouse or only letters can give
TEST_CASE("every command has a place in the panel, and a pair of letters lies on both halves of the keyboard") {
  constexpr std::string_view left_half = "BCDEFGRSTVX";
  for (const desk::Command& command : desk::command_table()) {
    CHECK_FALSE(command.words.empty());
    CHECK_FALSE(command.panel.empty());
    CHECK_FALSE(command.situations.empty());
    std::vector<bool> halves;
    for (const Chord& chord : command.chords) {
      const std::string words = desk::words_of(Chord{chord.key, false, false});
      if (words.size() == 1) halves.push_back(left_half.find(words.front()) != std::string_view::npos);
    }
    if (halves.size() == 2) CHECK(halves[0] != halves[1]);
    CHECK(halves.size() <= 2);
  }
}

// danger: a refusal that blames, orders, or runs over three lines
TEST_CASE("every refusal has a sentence of at most twelve words, and at most twelve for what would free it") {
  const SixBolt job = six_bolt();
  const bench::Bench bench(job.setup);
  const std::vector<event::Action> actions = {
      event::make_take(0, event::HandId::Right, job.old_rotor, event::Grip::Edge),
      event::make_bring(0, event::HandId::Right, job.wheel, event::PlaceKind::BoltRecess, event::BoltId{3}, 0, 0, 0, 0),
      event::make_bring(0, event::HandId::Left, job.wheel, event::PlaceKind::HubSeat, event::kNoBolt, 0, 0, 0, 0),
      event::make_touch(0, event::HandId::Left, job.wheel, event::PlaceKind::Hole, event::BoltId{0}, 0, 0),
      event::make_plain(0, event::ActionKind::Pass, event::HandId::Right),
      event::make_plain(0, event::ActionKind::TurnOver, event::HandId::Right),
      event::make_aim_turn(0, event::HandId::Right, 1000),
      event::make_write(0, event::CardEntryId{0}, "x"),
      event::make_hand_over(0)};
  for (int why = 0; why <= static_cast<int>(bench::Refusal::WheelTurning); ++why) {
    for (const event::Action& action : actions) {
      const desk::RefusalWords words = desk::refusal_words(bench, action, static_cast<bench::Refusal>(why));
      CHECK_FALSE(words.stands.empty());
      CHECK(word_count(words.stands) <= 12);
      CHECK(word_count(words.frees) <= 12);
      CHECK(words.stands.back() == '.');
    }
  }
}

// danger: the sentence names another thing than the one in the way
TEST_CASE("refusals name what they are about") {
  const SixBolt job = six_bolt();
  bench::Bench bench(job.setup);
  const auto take = event::make_take(0, event::HandId::Right, job.key, event::Grip::None);
  REQUIRE(bench.apply(take) == bench::Refusal::None);
  bench.advance_to(240);
  const std::size_t before = bench.events().size();
  const auto again = event::make_take(240, event::HandId::Right, job.driver, event::Grip::None);
  const bench::Refusal why = bench.apply(again);
  REQUIRE(why != bench::Refusal::None);
  CHECK(desk::refused_since(bench, before) == why);
  CHECK(desk::refused_since(bench, bench.events().size()) == std::nullopt);
  const std::string name = job.setup.things[event::index_of(job.key)].name;
  CHECK(desk::refusal_words(bench, again, why).stands.find(name) != std::string::npos);
}

}  // namespace proofstand::testing

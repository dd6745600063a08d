// Chords: what they are called, which command they mean, and that no two commands share one.
#include <algorithm>
#include <array>

#include "sim/desk/commands.h"
#include "sim/desk/words.h"

namespace proofstand::desk {
namespace {

constexpr std::array<std::string_view, static_cast<std::size_t>(Key::F11) + 1> kKeyWords = {
    "",      "B",  "C",    "D",       "E",         "F",    "G",     "H",     "I",      "J",         "K",
    "L",     "N",  "O",    "P",       "R",         "S",    "T",     "U",     "V",      "X",         "Left",
    "Right", "Up", "Down", "Page Up", "Page Down", "Home", "Enter", "Space", "Escape", "Backspace", "Tab",
    "F1",    "F2", "F3",   "F5",      "F6",        "F7",   "F8",    "F11"};

bool letter(Key key) { return key >= Key::B && key <= Key::X; }

bool share_situation(const Command& a, const Command& b) {
  return std::any_of(a.situations.begin(), a.situations.end(), [&](Situation s) {
    return std::find(b.situations.begin(), b.situations.end(), s) != b.situations.end();
  });
}

bool has(const std::vector<Chord>& chords, const Chord& chord) {
  return std::find(chords.begin(), chords.end(), chord) != chords.end();
}

std::optional<CommandId> exactly(const Bindings& bindings, const Chord& chord, Situation situation) {
  for (const Command& command : command_table()) {
    if (std::find(command.situations.begin(), command.situations.end(), situation) == command.situations.end())
      continue;
    if (has(bindings.chords[static_cast<std::size_t>(command.id)], chord)) return command.id;
  }
  return std::nullopt;
}

}  // namespace

bool operator==(const Chord& a, const Chord& b) { return a.key == b.key && a.ctrl == b.ctrl && a.shift == b.shift; }

Bindings default_bindings() {
  Bindings bindings;
  for (const Command& command : command_table()) bindings.chords.push_back(command.chords);
  return bindings;
}

base::Result<Bindings> rebound(const Bindings& from, CommandId id, std::vector<Chord> chords) {
  for (const Command& other : command_table()) {
    if (other.id == id || !share_situation(other, command_of(id))) continue;
    for (const Chord& chord : chords) {
      if (!has(from.chords[static_cast<std::size_t>(other.id)], chord)) continue;
      return base::Error{"chord-clash", words_of(chord),
                         tr("{0} already means: {1}", {words_of(chord), tr(std::string(other.words).c_str())}),
                         tr("choose another key, or give that command another one first")};
    }
  }
  Bindings out = from;
  out.chords[static_cast<std::size_t>(id)] = std::move(chords);
  return out;
}

std::vector<std::string> clashes(const Bindings& bindings) {
  std::vector<std::string> found;
  const std::vector<Command>& table = command_table();
  for (std::size_t a = 0; a < table.size(); ++a) {
    for (std::size_t b = a + 1; b < table.size(); ++b) {
      if (!share_situation(table[a], table[b])) continue;
      for (const Chord& chord : bindings.chords[a]) {
        if (has(bindings.chords[b], chord)) {
          found.push_back(words_of(chord) + ": " + std::string(table[a].words) + " / " + std::string(table[b].words));
        }
      }
    }
  }
  return found;
}

std::optional<CommandId> command_for(const Bindings& bindings, const Chord& chord, Situation situation) {
  if (chord.key == Key::None || (letter(chord.key) && !bindings.letters)) return std::nullopt;
  if (const auto id = exactly(bindings, chord, situation)) return id;
  return chord.shift ? exactly(bindings, {chord.key, chord.ctrl, false}, situation) : std::nullopt;
}

std::string words_of(const Chord& chord) {
  std::string words;
  if (chord.ctrl) words += "Ctrl+";
  if (chord.shift) words += "Shift+";
  return words + std::string(kKeyWords[static_cast<std::size_t>(chord.key)]);
}

std::string words_of(const std::vector<Chord>& chords) {
  std::string words;
  for (const Chord& chord : chords) words += (words.empty() ? "" : std::string(" ") + tr("or") + " ") + words_of(chord);
  return words;
}

Key printed_key(char position, std::string_view printed) {
  const auto ascii_letter = [](char c) { return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z'); };
  const bool other_script = printed.empty() || static_cast<unsigned char>(printed.front()) >= 0x80;
  char letter_there = position;
  if (!other_script) {
    if (printed.size() != 1 || !ascii_letter(printed.front())) return Key::None;
    letter_there = printed.front();
  }
  if (letter_there >= 'a') letter_there = static_cast<char>(letter_there - 'a' + 'A');
  for (std::size_t i = static_cast<std::size_t>(Key::B); i <= static_cast<std::size_t>(Key::X); ++i) {
    if (kKeyWords[i].front() == letter_there) return static_cast<Key>(i);
  }
  return Key::None;
}

std::vector<HelpRow> help_rows(const Bindings& bindings) {
  std::vector<HelpRow> rows;
  for (const Command& command : command_table()) {
    const std::vector<Chord>& chords = bindings.chords[static_cast<std::size_t>(command.id)];
    std::vector<Chord> live;
    for (const Chord& chord : chords) {
      if (bindings.letters || !letter(chord.key)) live.push_back(chord);
    }
    const auto in_words = [](std::string_view english) {
      return english.empty() ? std::string() : std::string(tr(std::string(english).c_str()));
    };
    rows.push_back({in_words(command.words), in_words(command.mouse), words_of(live), in_words(command.panel)});
  }
  return rows;
}

}  // namespace proofstand::desk

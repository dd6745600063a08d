// A line of a script as words with their columns. Private to this floor.
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace proofstand::hand {

/// One word of a line, commas and colons at its end split off.
struct Word {
  std::string text;
  std::size_t column = 1;  ///< in characters, from 1
  std::size_t begin = 0;   ///< byte offset in the line
};

/// A line without its comment: '#' at the start or after a blank begins one.
std::string_view without_comment(std::string_view line);
/// Words of a line, fillers ("the", "its", ",") left out.
std::vector<Word> words_of_line(std::string_view line);
/// Words of a pattern or of a name, the same way.
std::vector<std::string> words_of_pattern(std::string_view pattern);
/// Blanks at the front; a tab counts as one.
std::size_t indent_of(std::string_view line);

}  // namespace proofstand::hand

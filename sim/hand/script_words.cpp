#include "sim/hand/script_words.h"

#include "sim/hand/script_forms.h"

namespace proofstand::hand {
namespace {

bool blank(char c) { return c == ' ' || c == '\t'; }
// bytes that continue a UTF-8 character count for no column
bool continues(char c) { return (static_cast<unsigned char>(c) & 0xC0u) == 0x80u; }

}  // namespace

std::string_view without_comment(std::string_view line) {
  for (std::size_t i = 0; i < line.size(); ++i) {
    if (line[i] == '#' && (i == 0 || blank(line[i - 1]))) return line.substr(0, i);
  }
  return line;
}

std::vector<Word> words_of_line(std::string_view line) {
  std::vector<Word> words;
  std::size_t column = 1;
  std::size_t i = 0;
  while (i < line.size()) {
    if (blank(line[i])) {
      ++i;
      ++column;
      continue;
    }
    std::size_t end = i;
    while (end < line.size() && !blank(line[end])) ++end;
    std::size_t stop = end;
    while (stop > i + 1 && (line[stop - 1] == ',' || line[stop - 1] == ':')) --stop;
    for (std::size_t begin = i; begin < end;) {
      const std::size_t upto = begin == i ? stop : begin + 1;
      const std::string_view text = line.substr(begin, upto - begin);
      if (!is_filler(text)) words.push_back({std::string(text), column, begin});
      for (; begin < upto; ++begin) column += continues(line[begin]) ? 0 : 1;
    }
    i = end;
  }
  return words;
}

std::vector<std::string> words_of_pattern(std::string_view pattern) {
  std::vector<std::string> texts;
  for (Word& word : words_of_line(pattern)) texts.push_back(std::move(word.text));
  return texts;
}

std::size_t indent_of(std::string_view line) {
  std::size_t n = 0;
  while (n < line.size() && blank(line[n])) ++n;
  return n;
}

}  // namespace proofstand::hand

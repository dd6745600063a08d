#include "sim/scenario/nesting_guard.h"

namespace proofstand::scenario {
namespace {

/// First character behind a quoted text that starts at `at`; counts the lines passed.
std::size_t behind_quote(std::string_view text, std::size_t at, int& line) {
  const char quote = text[at];
  const std::string_view three = quote == '"' ? "\"\"\"" : "'''";
  const bool long_form = text.substr(at, 3) == three;
  const std::size_t width = long_form ? 3 : 1;
  at += width;
  while (at < text.size()) {
    if (text[at] == '\n') {
      if (!long_form) return at;
      ++line;
    } else if (text[at] == '\\' && quote == '"') {
      ++at;
    } else if (text[at] == quote && (!long_form || text.substr(at, 3) == three)) {
      return at + width;
    }
    ++at;
  }
  return at;
}

}  // namespace

std::optional<int> line_too_deep(std::string_view text, int deepest) {
  int line = 1;
  int brackets = 0;
  int dots = 0;
  std::size_t at = 0;
  while (at < text.size()) {
    const char c = text[at];
    if (c == '"' || c == '\'') {
      at = behind_quote(text, at, line);
      continue;
    }
    if (c == '#') {
      while (at < text.size() && text[at] != '\n') ++at;
      continue;
    }
    if (c == '[' || c == '{') ++brackets;
    if ((c == ']' || c == '}') && brackets > 0) --brackets;
    if (c == '.') ++dots;
    if (c == ',' || c == '=' || c == '[' || c == '{' || c == '\n') dots = 0;
    if (brackets > deepest || dots > deepest) return line;
    if (c == '\n') ++line;
    ++at;
  }
  return std::nullopt;
}

}  // namespace proofstand::scenario

#include "sim/base/words.h"

#include <cstdint>

namespace proofstand::base {
namespace {

bool is_blank(char c) { return c == ' ' || c == '\t' || c == '\r' || c == '\n'; }

// bytes of the character that starts with this one, 0 when none can
std::size_t length_of(unsigned char first) {
  if (first < 0x80) return 1;
  if (first >= 0xC2 && first < 0xE0) return 2;
  if (first >= 0xE0 && first < 0xF0) return 3;
  if (first >= 0xF0 && first < 0xF5) return 4;
  return 0;
}

}  // namespace

std::string_view trimmed(std::string_view text) {
  while (!text.empty() && is_blank(text.front())) text.remove_prefix(1);
  while (!text.empty() && is_blank(text.back())) text.remove_suffix(1);
  return text;
}

std::vector<std::string_view> split_words(std::string_view text) {
  std::vector<std::string_view> words;
  std::size_t at = 0;
  while (at < text.size()) {
    while (at < text.size() && is_blank(text[at])) ++at;
    std::size_t end = at;
    while (end < text.size() && !is_blank(text[end])) ++end;
    if (end > at) words.push_back(text.substr(at, end - at));
    at = end;
  }
  return words;
}

std::vector<std::string_view> split_lines(std::string_view text) {
  std::vector<std::string_view> lines;
  while (!text.empty()) {
    const std::size_t end = text.find('\n');
    std::string_view line = text.substr(0, end);
    if (!line.empty() && line.back() == '\r') line.remove_suffix(1);
    lines.push_back(line);
    if (end == std::string_view::npos) break;
    text.remove_prefix(end + 1);
  }
  return lines;
}

std::size_t edit_distance(std::string_view a, std::string_view b) {
  std::vector<std::size_t> row(b.size() + 1);
  for (std::size_t j = 0; j <= b.size(); ++j) row[j] = j;
  for (std::size_t i = 1; i <= a.size(); ++i) {
    std::size_t diagonal = row[0];
    row[0] = i;
    for (std::size_t j = 1; j <= b.size(); ++j) {
      std::size_t best = diagonal + (a[i - 1] == b[j - 1] ? 0 : 1);
      diagonal = row[j];
      if (row[j] + 1 < best) best = row[j] + 1;
      if (row[j - 1] + 1 < best) best = row[j - 1] + 1;
      row[j] = best;
    }
  }
  return row[b.size()];
}

std::string_view nearest_word(std::string_view word, const std::vector<std::string_view>& known) {
  std::string_view nearest;
  std::size_t least = word.size() / 3 + 2;
  for (const std::string_view candidate : known) {
    const std::size_t distance = edit_distance(word, candidate);
    if (distance < least) {
      least = distance;
      nearest = candidate;
    }
  }
  return nearest;
}

bool is_clean_text(std::string_view text) {
  for (std::size_t at = 0; at < text.size();) {
    const unsigned char first = static_cast<unsigned char>(text[at]);
    const std::size_t length = length_of(first);
    if (length == 0 || at + length > text.size()) return false;
    if (length == 1 && (first == 0x7F || (first < 0x20 && first != '\t' && first != '\n' && first != '\r')))
      return false;
    for (std::size_t i = 1; i < length; ++i) {
      if ((static_cast<unsigned char>(text[at + i]) & 0xC0) != 0x80) return false;
    }
    const unsigned char second = length > 1 ? static_cast<unsigned char>(text[at + 1]) : 0;
    // overlong forms, surrogates and what lies beyond Unicode
    if ((first == 0xE0 && second < 0xA0) || (first == 0xED && second > 0x9F) || (first == 0xF0 && second < 0x90) ||
        (first == 0xF4 && second > 0x8F)) {
      return false;
    }
    at += length;
  }
  return true;
}

}  // namespace proofstand::base

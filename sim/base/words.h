// Small things about words that every reader of text needs: trimming, splitting, and the nearest known word.
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace proofstand::base {

std::string_view trimmed(std::string_view text);
/// Splits at runs of blanks; no empty pieces.
std::vector<std::string_view> split_words(std::string_view text);
/// Lines without their ends ("\n" or "\r\n"); a last line without an end counts.
std::vector<std::string_view> split_lines(std::string_view text);
/// Single-letter insertions, deletions and changes between two words.
/// source: Wagner and Fischer 1974 (from memory)
std::size_t edit_distance(std::string_view a, std::string_view b);
/// The known word nearest to the one written, or empty when none is near enough (more than a third of its letters off).
std::string_view nearest_word(std::string_view word, const std::vector<std::string_view>& known);
/// Is this valid UTF-8 without control characters other than tab and line ends?
bool is_clean_text(std::string_view text);

}  // namespace proofstand::base

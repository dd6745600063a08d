// Every sentence that the mark sheet says by itself, by key and language. Another language is another column of the
// table; no code asks which one it is.
#pragma once

#include <initializer_list>
#include <string>
#include <string_view>
#include <vector>

namespace proofstand::report {

/// The sentence under a key in a language, or in English where that language has none yet. An unknown key is our bug
/// (asserted).
std::string_view phrase(std::string_view key, std::string_view language);
/// The same with {0}, {1} ... replaced.
std::string phrase(std::string_view key, std::string_view language, std::initializer_list<std::string> values);
/// Is there a sentence under this key?
bool has_phrase(std::string_view key);
/// All keys, in order: for the test that every code has its sentence.
std::vector<std::string_view> phrase_keys();

}  // namespace proofstand::report

// Every sentence that the window shows goes through one function. English stands in the source; other languages are
// files of the usual gettext text format (.po) in assets/words: adding one needs no code.
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace proofstand::desk {

/// A sentence in the language that is set, or in English where that language has none. `english` must be a literal:
/// tools for translators collect the calls.
const char* tr(const char* english);
/// The same with {0}, {1} ... replaced.
std::string tr(const char* english, const std::vector<std::string>& values);

/// Reads a catalogue and sets it; "en" unloads. returns false and stays in English when there is none for this
/// language.
bool set_language(std::string_view language);
/// Tag of the language set: "en" unless another was found.
std::string_view language_set();
/// Tags of the catalogues there are, "en" first.
std::vector<std::string> languages_there();

/// A catalogue's text to pairs: English, then the other language. Untranslated and fuzzy entries are left out.
std::vector<std::pair<std::string, std::string>> read_catalogue(std::string_view text);

}  // namespace proofstand::desk

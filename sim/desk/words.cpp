#include "sim/desk/words.h"

#include <algorithm>
#include <map>

#include "sim/desk/asset_files.h"
#include "sim/record/files.h"

namespace proofstand::desk {
namespace {

constexpr std::size_t kLargestCatalogue = std::size_t{4} << 20;

struct Catalogue {
  std::string language = "en";
  std::map<std::string, std::string, std::less<>> sentences;
};

// the one thing that outlives a window: what language this program speaks
Catalogue g_catalogue;

// the text between the quotes of a line, unescaped
std::string quoted(std::string_view line) {
  const std::size_t from = line.find('"'), to = line.rfind('"');
  std::string out;
  if (from == std::string_view::npos || to <= from) return out;
  for (std::size_t i = from + 1; i < to; ++i) {
    if (line[i] != '\\' || i + 1 >= to) {
      out.push_back(line[i]);
      continue;
    }
    ++i;
    out.push_back(line[i] == 'n' ? '\n' : line[i] == 't' ? '\t' : line[i]);
  }
  return out;
}

bool starts_with(std::string_view text, std::string_view with) { return text.substr(0, with.size()) == with; }

}  // namespace

std::vector<std::pair<std::string, std::string>> read_catalogue(std::string_view text) {
  std::vector<std::pair<std::string, std::string>> out;
  std::string id, words;
  bool in_words = false, fuzzy = false;
  const auto close = [&] {
    if (!id.empty() && !words.empty() && !fuzzy) out.emplace_back(id, words);
    id.clear();
    words.clear();
    in_words = fuzzy = false;
  };
  bool next_fuzzy = false;
  while (!text.empty()) {
    const std::size_t end = std::min(text.find('\n'), text.size());
    const std::string_view line = text.substr(0, end);
    text.remove_prefix(std::min(end + 1, text.size()));
    if (starts_with(line, "#,") && line.find("fuzzy") != std::string_view::npos) next_fuzzy = true;
    if (starts_with(line, "msgid ")) {
      close();
      fuzzy = next_fuzzy;
      next_fuzzy = false;
      id = quoted(line);
    } else if (starts_with(line, "msgstr ")) {
      in_words = true;
      words = quoted(line);
    } else if (starts_with(line, "\"")) {
      (in_words ? words : id) += quoted(line);
    }
  }
  close();
  return out;
}

const char* tr(const char* english) {
  const auto found = g_catalogue.sentences.find(std::string_view(english));
  return found == g_catalogue.sentences.end() ? english : found->second.c_str();
}

std::string tr(const char* english, const std::vector<std::string>& values) {
  const std::string_view pattern = tr(english);
  std::string out;
  for (std::size_t i = 0; i < pattern.size(); ++i) {
    if (pattern[i] == '{' && i + 2 < pattern.size() && pattern[i + 2] == '}') {
      const std::size_t which = static_cast<std::size_t>(pattern[i + 1] - '0');
      if (which < values.size()) {
        out += values[which];
        i += 2;
        continue;
      }
    }
    out.push_back(pattern[i]);
  }
  return out;
}

bool set_language(std::string_view language) {
  g_catalogue = Catalogue{};
  if (language.empty() || language == "en") return true;
  const std::string path = find_asset("words/" + std::string(language) + ".po");
  if (path.empty()) return false;
  const auto text = record::load_bytes(path, kLargestCatalogue);
  if (!text) return false;
  g_catalogue.language = language;
  for (auto& [english, words] : read_catalogue(*text)) g_catalogue.sentences.insert_or_assign(english, words);
  return true;
}

std::string_view language_set() { return g_catalogue.language; }

std::vector<std::string> languages_there() {
  std::vector<std::string> out = {"en"};
  for (const std::string& name : list_assets("words", ".po")) out.push_back(name.substr(0, name.size() - 3));
  std::sort(out.begin() + 1, out.end());
  return out;
}

}  // namespace proofstand::desk

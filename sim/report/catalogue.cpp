#include "sim/report/catalogue.h"

#include "sim/base/assert.h"
#include "sim/report/catalogue_table.h"

namespace proofstand::report {
namespace {

const Phrase* find(std::string_view key) {
  for (const Phrase& row : phrase_table()) {
    if (row.key == key) return &row;
  }
  return nullptr;
}

}  // namespace

std::string_view phrase(std::string_view key, std::string_view language) {
  const Phrase* row = find(key);
  STAND_ASSERT(row != nullptr);
  return language == "de" && !row->de.empty() ? row->de : row->en;
}

std::string phrase(std::string_view key, std::string_view language, std::initializer_list<std::string> values) {
  const std::string_view words = phrase(key, language);
  std::string out;
  for (std::size_t i = 0; i < words.size(); ++i) {
    const bool slot = words[i] == '{' && i + 2 < words.size() && words[i + 2] == '}';
    if (!slot) {
      out += words[i];
      continue;
    }
    const auto index = static_cast<std::size_t>(words[i + 1] - '0');
    STAND_ASSERT(index < values.size());
    out += *(values.begin() + index);
    i += 2;
  }
  return out;
}

bool has_phrase(std::string_view key) { return find(key) != nullptr; }

std::vector<std::string_view> phrase_keys() {
  std::vector<std::string_view> keys;
  for (const Phrase& row : phrase_table()) keys.push_back(row.key);
  return keys;
}

}  // namespace proofstand::report

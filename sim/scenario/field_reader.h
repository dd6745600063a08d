// Typed reading of one table of a scenario: units as people write them, every fault located, every key that nobody
// asked for reported with the nearest one that would have been read.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "sim/base/quantity.h"
#include "sim/base/result.h"
#include "sim/scenario/node.h"
#include "sim/scenario/texts.h"

namespace proofstand::scenario {

/// What reading needs to know beside the tree: the names of the files for messages, and where faults go.
struct Reading {
  const std::vector<std::string>* files = nullptr;
  base::Faults* faults = nullptr;

  /// "file:line:column"; without a line only the file.
  [[nodiscard]] std::string where(const Spot& at) const;
  void error(std::string code, const Spot& at, std::string what, std::string instead) const;
  void warning(std::string code, const Spot& at, std::string what, std::string instead) const;
};

/// Range that a quantity may lie in, in SI; closed.
struct Span {
  double lo_si = 0.0;
  double hi_si = 0.0;
};

/// One word of a fixed list and what it stands for.
template <class Value>
struct WordFor {
  std::string_view word;
  Value value;
};

class FieldReader {
 public:
  /// name: how messages call the table, e.g. "rotor.new rotor".
  FieldReader(const Reading& reading, const Node& table, std::string name);

  [[nodiscard]] const Node& table() const { return *table_; }
  [[nodiscard]] const std::string& name() const { return name_; }
  [[nodiscard]] const Reading& reading() const { return *reading_; }
  [[nodiscard]] bool has(std::string_view key) const { return table_->find(key) != nullptr; }
  /// Where a key's value stands, or the table when it is missing.
  [[nodiscard]] Spot spot_of(std::string_view key) const;

  /// A quantity with its unit; a bare number only where the dimension is Number. Outside of the span: E10.
  /// The value there before stays when the key is missing or wrong.
  void quantity(std::string_view key, base::Dimension dimension, Span span, double& value_si);
  void count(std::string_view key, Span span, int& value);
  void flag(std::string_view key, bool& value);
  void text(std::string_view key, std::string& value);
  /// A text in several languages: `key.en = "..."`, or one text, which then is English.
  void texts(std::string_view key, Texts& value);
  /// A list of texts; a single text counts as a list of one.
  void list(std::string_view key, std::vector<std::string>& value, std::vector<Spot>* spots = nullptr);
  /// One word of a list; anything else is a fault that names the nearest.
  template <class Value, std::size_t N>
  void word(std::string_view key, const WordFor<Value> (&words)[N], Value& value) {
    std::vector<std::string_view> known;
    for (const auto& row : words) known.push_back(row.word);
    const std::size_t at = word_index(key, known);
    if (at < N) value = words[at].value;
  }
  /// A table below this one, or nullptr.
  const Node* table_at(std::string_view key);
  /// A list of tables below this one, or nullptr.
  const Node* list_at(std::string_view key);
  /// The raw value of a key, marked as read; nullptr when missing.
  const Node* raw(std::string_view key);

  /// S03 when the key is missing.
  void needs(std::string_view key, const char* instead);
  /// E02 for every key that was not asked for.
  void done();

 private:
  std::size_t word_index(std::string_view key, const std::vector<std::string_view>& known);
  void wrong_type(std::string_view key, const Node& value, const char* expected);

  const Reading* reading_;
  const Node* table_;
  std::string name_;
  std::vector<std::string_view> asked_;
};

/// Is this member a table? If not, S04.
bool is_table(const Reading& reading, const Member& member, const std::string& name);

}  // namespace proofstand::scenario

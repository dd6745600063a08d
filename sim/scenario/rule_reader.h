// Reads the entries of one rule into the compiler's texts, each with its exact place. Private to this floor.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "sim/rules/spec.h"
#include "sim/scenario/field_reader.h"

namespace proofstand::scenario {

class RuleReader {
 public:
  RuleReader(const Reading& reading, const Node& table, std::string name);

  FieldReader& fields() { return fields_; }
  /// Where a key's value stands; its first character after the quote for a text.
  [[nodiscard]] rules::SourcePos pos(std::string_view key) const;

  rules::Text text(std::string_view key);
  std::vector<rules::Text> texts(std::string_view key);
  bool flag(std::string_view key);
  int whole(std::string_view key, Span span, int usual);
  /// A number with at most three decimals, in thousandths.
  std::int64_t thousandths(std::string_view key, Span span, std::int64_t usual);
  /// "EVENT" or "EVENT where CONDITION".
  rules::SelectorSpec selector(std::string_view key);
  std::vector<rules::SelectorSpec> selectors(std::string_view key);
  /// "run", or a table: form, opens, closes, required.
  rules::ScopeSpec scope();
  /// [[1, 2], [3]]: steps by group, counted from 1.
  std::vector<std::vector<int>> groups(std::string_view key);
  /// [["bolt 1", "bolt 4"], ...]
  std::vector<std::vector<rules::Text>> sequences(std::string_view key);
  /// [{ miss = "0.5 N·m", score = 0.5 }, ...]
  std::vector<rules::BandSpec> bands(std::string_view key);
  /// say.fail.en = "...": sentences by verdict and language.
  std::vector<rules::SaySpec> say();

 private:
  rules::Text text_of(const Node& node, std::string_view key);
  rules::SelectorSpec selector_of(const Node& node, std::string_view key);

  const Reading* reading_;
  FieldReader fields_;
};

}  // namespace proofstand::scenario

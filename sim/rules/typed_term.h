// A piece of a condition with its type, while it is being read. Private to the parser of conditions.
#pragma once

#include <string>
#include <vector>

#include "sim/base/quantity.h"
#include "sim/event/vocabulary.h"
#include "sim/rules/expression.h"

namespace proofstand::rules {

enum class TermType : std::uint8_t {
  Truth,
  Number,
  Item,    ///< of `set`
  Choice,  ///< of `choices`
  Word,    ///< not yet known what of
};

struct Term {
  TermType type = TermType::Word;
  base::Dimension dimension = base::Dimension::Number;
  event::SetId set = event::kNoSet;
  const std::vector<std::string>* choices = nullptr;
  const event::Field* field = nullptr;  ///< when it is a plain field or fluent
  std::vector<Instruction> code;
  std::string text;        ///< as written
  std::size_t offset = 0;  ///< in the text
  bool quoted = false;
  const double* tolerance_si = nullptr;  ///< of a plain sheet figure

  [[nodiscard]] bool is_constant() const { return code.size() == 1 && code[0].op == Op::Constant; }
};

/// "a torque", "yes or no", "one of bare, gloved": for messages.
std::string type_words(const Term& term, const event::Vocabulary& vocabulary);

/// Index of a written word among an item set's or choice's words; a bare number also means the item whose last word it
/// is ("4" for "bolt 4"). Nothing when there is none.
std::optional<std::size_t> index_of_word(const std::vector<std::string>& words, std::string_view written);

/// The words of an item or choice term.
const std::vector<std::string>* words_of(const Term& term, const event::Vocabulary& vocabulary);

/// A term of a field's type, without code.
Term term_of_field(const event::Field& field);

}  // namespace proofstand::rules

#include "sim/rules/typed_term.h"

#include "sim/base/words.h"

namespace proofstand::rules {

std::string type_words(const Term& term, const event::Vocabulary& vocabulary) {
  switch (term.type) {
    case TermType::Truth:
      return "yes or no";
    case TermType::Number:
      return std::string(base::dimension_words(term.dimension));
    case TermType::Word:
      return "a word";
    default:
      break;
  }
  std::string all = "one of";
  const std::vector<std::string>* words = words_of(term, vocabulary);
  for (std::size_t i = 0; i < words->size() && i < 8; ++i) all += (i == 0 ? " " : ", ") + (*words)[i];
  if (words->size() > 8) all += " ...";
  return all;
}

std::optional<std::size_t> index_of_word(const std::vector<std::string>& words, std::string_view written) {
  for (std::size_t i = 0; i < words.size(); ++i) {
    if (words[i] == written) return i;
  }
  for (char c : written) {
    if (c < '0' || c > '9') return std::nullopt;
  }
  for (std::size_t i = 0; i < words.size(); ++i) {
    const std::vector<std::string_view> parts = base::split_words(words[i]);
    if (parts.size() > 1 && parts.back() == written) return i;
  }
  return std::nullopt;
}

const std::vector<std::string>* words_of(const Term& term, const event::Vocabulary& vocabulary) {
  if (term.type == TermType::Item) return &vocabulary.sets[term.set].items;
  return term.choices;
}

Term term_of_field(const event::Field& field) {
  Term term;
  term.field = &field;
  switch (field.type) {
    case event::FieldType::Flag:
      term.type = TermType::Truth;
      break;
    case event::FieldType::Count:
      term.type = TermType::Number;
      break;
    case event::FieldType::Quantity:
      term.type = TermType::Number;
      term.dimension = field.dimension;
      break;
    case event::FieldType::Item:
      term.type = TermType::Item;
      term.set = field.set;
      break;
    case event::FieldType::Choice:
      term.type = TermType::Choice;
      term.choices = &field.choices;
      break;
  }
  return term;
}

}  // namespace proofstand::rules

#include "sim/rules/where_names.h"

#include "sim/base/words.h"

namespace proofstand::rules {
namespace {

Term constant_term(TermType type, double value_si) {
  Term term;
  term.type = type;
  term.code.push_back({Op::Constant, 0, value_si});
  return term;
}

base::Result<Term> sheet_term(const WhereContext& context, const Text& text, const Token& token) {
  constexpr std::string_view kTolerance = ".tolerance";
  std::string_view name = std::string_view(token.text).substr(6);
  const bool tolerance = name.size() > kTolerance.size() && name.substr(name.size() - kTolerance.size()) == kTolerance;
  if (tolerance) name.remove_suffix(kTolerance.size());
  std::vector<std::string_view> known;
  for (const SheetFigure& figure : context.sheet) {
    known.push_back(figure.name);
    if (figure.name != name || (tolerance && !figure.tolerance_si)) continue;
    Term term = constant_term(TermType::Number, tolerance ? *figure.tolerance_si : figure.value.value_si);
    term.dimension = figure.value.dimension;
    if (!tolerance && figure.tolerance_si) term.tolerance_si = &*figure.tolerance_si;
    return term;
  }
  return base::Error{
      "E06", place_words(place_in(text, token.offset)),
      "the maker's sheet has no figure '" + std::string(name) + "'" + (tolerance ? " with a tolerance" : ""),
      "write a figure of the sheet" + nearest_hint(name, known)};
}

std::vector<std::string_view> names_in_reach(const WhereContext& context) {
  std::vector<std::string_view> known;
  if (context.kind != event::kNoKind) {
    for (const event::Field& field : context.vocabulary.kinds[context.kind].fields) known.push_back(field.name);
  }
  for (const event::Kind& kind : context.vocabulary.kinds) {
    if (kind.type == event::KindType::Change) known.push_back(kind.name);
  }
  return known;
}

}  // namespace

std::string nearest_hint(std::string_view word, const std::vector<std::string_view>& known) {
  const std::string_view near = base::nearest_word(word, known);
  if (!near.empty()) return ", such as '" + std::string(near) + "'";
  std::string list;
  for (std::size_t i = 0; i < known.size() && i < 6; ++i) list += (i == 0 ? ": " : ", ") + std::string(known[i]);
  return list + (known.size() > 6 ? " ..." : "");
}

base::Result<Term> term_of_name(const WhereContext& context, const Text& text, const Token& token) {
  const auto placed = [&](Term term) {
    term.text = token.text;
    term.offset = token.offset;
    return term;
  };
  if (token.text.rfind("sheet.", 0) == 0) return sheet_term(context, text, token).transform(placed);
  if (token.text == "yes" || token.text == "no") {
    return placed(constant_term(TermType::Truth, token.text == "yes" ? 1.0 : 0.0));
  }
  if (context.kind != event::kNoKind) {
    const event::Kind& kind = context.vocabulary.kinds[context.kind];
    if (const std::optional<std::size_t> field = event::Vocabulary::find_field(kind, token.text)) {
      Term term = term_of_field(kind.fields[*field]);
      term.code.push_back({Op::Field, static_cast<std::uint16_t>(*field), 0.0});
      return placed(std::move(term));
    }
  }
  const std::optional<event::KindId> fluent = context.vocabulary.find_kind(token.text);
  if (fluent && context.vocabulary.kinds[*fluent].type == event::KindType::Change &&
      !context.vocabulary.kinds[*fluent].fields.empty()) {
    Term term = term_of_field(context.vocabulary.kinds[*fluent].fields[0]);
    term.code.push_back({Op::FluentValue, *fluent, 0.0});
    return placed(std::move(term));
  }
  return placed(Term{});
}

base::Error unknown_name(const WhereContext& context, const Text& text, const Term& word) {
  const bool of_kind = context.kind != event::kNoKind;
  std::string what = "'" + word.text + "' is ";
  what += of_kind ? "neither a field of " + context.vocabulary.kinds[context.kind].name + " nor a lasting value"
                  : std::string("not a lasting value of the bench");
  return {of_kind ? "E05" : "E06", place_words(place_in(text, word.offset)), what,
          "use one that exists" + nearest_hint(word.text, names_in_reach(context))};
}

base::Result<Term> word_as(const WhereContext& context, const Text& text, const Term& word, const Term& like) {
  const std::vector<std::string>* words = words_of(like, context.vocabulary);
  const std::optional<std::size_t> index = index_of_word(*words, word.text);
  if (!index) {
    std::vector<std::string_view> known(words->begin(), words->end());
    return base::Error{"E07", place_words(place_in(text, word.offset)),
                       "'" + word.text + "' is not " + type_words(like, context.vocabulary),
                       "write one of its words" + nearest_hint(word.text, known)};
  }
  Term term = like;
  term.code = {{Op::Constant, 0, static_cast<double>(*index)}};
  term.field = nullptr;
  term.text = word.text;
  term.offset = word.offset;
  return term;
}

}  // namespace proofstand::rules

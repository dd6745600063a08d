#include "sim/rules/text_fill.h"

#include "sim/base/number_text.h"

namespace proofstand::rules {
namespace {

using What = TextPiece::What;

constexpr double kHuge = 1.7976931348623157e308;

std::string in_words(double value_si, base::Dimension dimension) { return base::quantity_words(value_si, dimension); }

std::string words_of_item(const event::Vocabulary& vocabulary, const event::Field& field, std::int64_t index) {
  const std::vector<std::string>* words = nullptr;
  if (field.type == event::FieldType::Item && field.set < vocabulary.sets.size()) {
    words = &vocabulary.sets[field.set].items;
  } else if (field.type == event::FieldType::Choice) {
    words = &field.choices;
  }
  if (words != nullptr && index >= 0 && index < static_cast<std::int64_t>(words->size())) {
    return (*words)[static_cast<std::size_t>(index)];
  }
  if (field.type == event::FieldType::Flag) return index != 0 ? "yes" : "no";
  return base::text_from_int(index);
}

std::string expected_words(const Case& about) {
  const bool lo = about.lo_si > -kHuge;
  const bool hi = about.hi_si < kHuge;
  if (lo && hi && about.lo_si == about.hi_si) return in_words(about.lo_si, about.dimension);
  // signs, not words: the sentence around it may be in any language
  if (lo && hi) return in_words(about.lo_si, about.dimension) + " – " + in_words(about.hi_si, about.dimension);
  return lo ? "≥ " + in_words(about.lo_si, about.dimension) : "≤ " + in_words(about.hi_si, about.dimension);
}

std::string listed(const std::vector<std::string>& words) {
  std::string text;
  for (std::size_t i = 0; i < words.size(); ++i) {
    if (i > 0) text += ", ";
    text += words[i];
  }
  return text;
}

class Filler {
 public:
  Filler(const RuleProgram& program, const Report& report, RuleIndex index, const Case* about)
      : program_(program),
        rule_(program.rules[static_cast<std::size_t>(index)]),
        result_(report.rules[static_cast<std::size_t>(index)]),
        about_(about) {}

  [[nodiscard]] std::string fill(const std::vector<TextPiece>& pieces) const {
    std::string text;
    std::vector<bool> shown;  // of the conditions around this piece
    for (const TextPiece& piece : pieces) {
      if (piece.what == What::IfRole || piece.what == What::IfMissing) {
        shown.push_back((shown.empty() || shown.back()) && is_there(piece));
      } else if (piece.what == What::EndIf) {
        shown.pop_back();
      } else if (shown.empty() || shown.back()) {
        text += words(piece);
      }
    }
    return text;
  }

 private:
  [[nodiscard]] bool is_there(const TextPiece& piece) const {
    if (about_ == nullptr) return false;
    return piece.what == What::IfMissing ? !about_->missing.empty() : cited(piece.role) != nullptr;
  }

  // x of an order is its first step
  [[nodiscard]] const Cite* cited(Role role) const {
    if (about_ == nullptr) return nullptr;
    const Cite* found = about_->cited(role);
    if (found == nullptr && role == Role::X) found = about_->cited(Role::Step);
    return found;
  }

  [[nodiscard]] std::string time(base::Tick tick) const {
    return tick < 0 ? "?" : time_words(tick, program_.ticks_per_s);
  }

  [[nodiscard]] std::string figure(double value_si) const {
    return about_ != nullptr && about_->has_figures ? in_words(value_si, about_->dimension) : std::string("?");
  }

  [[nodiscard]] std::string item_of(const Case& of) const {
    const std::int32_t field = rule_.per >= 0 ? rule_.per : rule_.same_x;
    const event::Kind& kind = program_.vocabulary.kinds[rule_.x.kind];
    if (field < 0 || of.key < 0) return "?";
    return words_of_item(program_.vocabulary, kind.fields[static_cast<std::size_t>(field)], of.key);
  }

  [[nodiscard]] std::string missing() const {
    std::vector<std::string> all;
    if (about_ == nullptr) return "";
    for (std::int64_t index : about_->missing) {
      if (rule_.kind == RuleKind::Order) {
        all.push_back(program_.vocabulary.kinds[rule_.steps[static_cast<std::size_t>(index)].kind].name);
        continue;
      }
      const std::int32_t field = rule_.kind == RuleKind::Rounds ? rule_.item : rule_.distinct;
      const event::Kind& kind = program_.vocabulary.kinds[rule_.x.kind];
      all.push_back(words_of_item(program_.vocabulary, kind.fields[static_cast<std::size_t>(field)], index));
    }
    return listed(all);
  }

  [[nodiscard]] std::string field(const TextPiece& piece) const {
    const Cite* cite = cited(piece.role);
    if (cite == nullptr || !cite->has_record) return "?";
    return value_words(program_.vocabulary, cite->record, static_cast<std::size_t>(piece.index));
  }

  [[nodiscard]] std::string worst(What what) const {
    if (!result_.worst) return "?";
    const Case& of = *result_.worst;
    if (what == What::WorstItem) return item_of(of);
    if (what == What::WorstTime) return time(of.anchor_tick);
    return of.has_figures ? in_words(of.found_si, of.dimension) : "?";
  }

  [[nodiscard]] std::string sheet(const TextPiece& piece) const {
    const SheetFigure& figure = program_.sheet[static_cast<std::size_t>(piece.index)];
    const bool tolerance = piece.what == What::SheetTolerance;
    return in_words(tolerance ? *figure.tolerance_si : figure.value.value_si, figure.value.dimension);
  }

  [[nodiscard]] std::string words(const TextPiece& piece) const {
    switch (piece.what) {
      case What::Words:
        return piece.words;
      case What::Field:
        return field(piece);
      case What::Time: {
        const Cite* cite = cited(piece.role);
        return time(cite == nullptr ? kNoTick : cite->tick);
      }
      case What::Sheet:
      case What::SheetTolerance:
        return sheet(piece);
      case What::Expected:
        return about_ != nullptr && about_->has_figures ? expected_words(*about_) : "?";
      case What::Found:
        return figure(about_ != nullptr ? about_->found_si : 0.0);
      case What::Margin: {
        const double margin_si = about_ != nullptr ? about_->margin_si : 0.0;
        return figure(margin_si < 0.0 ? -margin_si : margin_si);
      }
      case What::Item:
        return about_ != nullptr ? item_of(*about_) : "?";
      case What::Count:
        return base::text_from_int(result_.bad);
      case What::OkCount:
        return base::text_from_int(result_.ok);
      case What::Cases:
        return base::text_from_int(result_.cases);
      case What::Slips:
        return base::text_from_int(result_.slips);
      case What::Missing:
        return missing();
      case What::WorstValue:
      case What::WorstItem:
      case What::WorstTime:
        return worst(piece.what);
      case What::Settled:
        return time(about_ != nullptr ? about_->settled_tick : kNoTick);
      case What::Points:
        return base::text_for_people(static_cast<double>(rule_.points_milli) / 1000.0, 6);
      case What::IfRole:
      case What::IfMissing:
      case What::EndIf:
        break;
    }
    return "";
  }

  const RuleProgram& program_;
  const Rule& rule_;
  const RuleResult& result_;
  const Case* about_;
};

const FilledText* find_text(const std::vector<FilledText>& texts, Verdict verdict, std::string_view language) {
  const FilledText* any = nullptr;
  for (const FilledText& text : texts) {
    if (text.verdict != verdict) continue;
    if (text.language == language) return &text;
    if (any == nullptr) any = &text;
  }
  return any;
}

std::string filled(const RuleProgram& program, const Report& report, RuleIndex rule, std::string_view language,
                   const Case* about) {
  const std::vector<FilledText>& texts = program.texts[static_cast<std::size_t>(rule)];
  Verdict verdict = report.rules[static_cast<std::size_t>(rule)].verdict;
  const FilledText* text = find_text(texts, verdict, language);
  // a rule that was excused or could not be judged was lost all the same where it has a lost case
  if (text == nullptr && (verdict == Verdict::Partial || (verdict == Verdict::Excused && about != nullptr))) {
    text = find_text(texts, Verdict::Fail, language);
  }
  return text == nullptr ? std::string() : Filler(program, report, rule, about).fill(text->pieces);
}

}  // namespace

std::string fill_text(const RuleProgram& program, const Report& report, RuleIndex rule, std::string_view language) {
  const RuleResult& result = report.rules[static_cast<std::size_t>(rule)];
  const Case* about = nullptr;
  for (const Case& made : result.bad_cases) {
    if (about == nullptr && made.status == CaseStatus::Bad) about = &made;
  }
  if (about == nullptr && !result.ok_cases.empty()) about = &result.ok_cases[0];
  return filled(program, report, rule, language, about);
}

std::string fill_text(const RuleProgram& program, const Report& report, RuleIndex rule, std::string_view language,
                      const Case& about) {
  return filled(program, report, rule, language, &about);
}

std::string time_words(base::Tick tick, std::int64_t ticks_per_s) {
  const std::int64_t whole_s = tick / ticks_per_s;
  const std::string rest = base::text_from_int(whole_s % 60);
  return base::text_from_int(whole_s / 60) + ":" + (rest.size() < 2 ? "0" : "") + rest;
}

std::string value_words(const event::Vocabulary& vocabulary, const event::Record& record, std::size_t field) {
  const event::Field& of = vocabulary.kinds[record.kind].fields[field];
  if (!record.knows(field)) return "unknown";
  const double value_si = record.values[field];
  if (of.type == event::FieldType::Quantity) return in_words(value_si, of.dimension);
  return words_of_item(vocabulary, of, static_cast<std::int64_t>(value_si));
}

}  // namespace proofstand::rules

// Sentences with placeholders, taken apart once. A placeholder that this kind of rule cannot fill is a fault.
#include <algorithm>

#include "sim/base/words.h"
#include "sim/rules/draft.h"
#include "sim/rules/tokens.h"
#include "sim/rules/where_names.h"

namespace proofstand::rules {
namespace {

using What = TextPiece::What;

struct Named {
  std::string_view name;
  What what;
};
constexpr Named kPlain[] = {{"expected", What::Expected},    {"found", What::Found},
                            {"margin", What::Margin},        {"item", What::Item},
                            {"count", What::Count},          {"ok", What::OkCount},
                            {"cases", What::Cases},          {"slips", What::Slips},
                            {"missing", What::Missing},      {"worst.value", What::WorstValue},
                            {"worst.item", What::WorstItem}, {"worst.time", What::WorstTime},
                            {"settled", What::Settled},      {"points", What::Points}};

class TextReader {
 public:
  TextReader(const Draft& draft, Rule& rule, const Text& text) : draft_(draft), rule_(rule), text_(text) {}

  std::vector<TextPiece> read() {
    std::string_view text = text_.text;
    std::string words;
    std::size_t at = 0;
    int inside = 0;
    while (at < text.size()) {
      const char c = text[at];
      if (c == '}' && inside > 0) {
        flush(words);
        add(What::EndIf);
        --inside;
        ++at;
      } else if (c == '{') {
        flush(words);
        const std::size_t end = text.find_first_of("?}", at);
        if (end == std::string_view::npos)
          return refuse(at, "a { is not closed", "close it with }"), std::move(pieces_);
        const std::string name(base::trimmed(text.substr(at + 1, end - at - 1)));
        if (text[end] == '?') {
          condition(at, name);
          ++inside;
        } else {
          placeholder(at, name);
        }
        at = end + 1;
      } else {
        words += c;
        ++at;
      }
    }
    flush(words);
    if (inside > 0) refuse(text.size(), "a {..? is not closed", "close it with }");
    return std::move(pieces_);
  }

 private:
  void flush(std::string& words) {
    if (words.empty()) return;
    pieces_.push_back({What::Words, Role::X, 0, words});
    words.clear();
  }
  void add(What what, Role role = Role::X, std::int32_t index = 0) { pieces_.push_back({what, role, index, ""}); }
  void refuse(std::size_t at, const std::string& what, const std::string& instead) {
    draft_.fault("E34", place_in(text_, at), what, instead);
  }

  // the selector that a letter stands for, or nothing
  [[nodiscard]] const Selector* selector(std::string_view letter, Role& role) const {
    if (letter == "x") {
      role = Role::X;
      return rule_.steps.empty() ? &rule_.x : &rule_.steps[0];
    }
    role = letter == "y" ? Role::Y : Role::Void;
    if (letter == "y") return &rule_.y;
    return letter == "z" ? &rule_.voided_by : nullptr;
  }

  [[nodiscard]] bool has_figures() const {
    switch (rule_.kind) {
      case RuleKind::Must:
      case RuleKind::Never:
      case RuleKind::Order:
      case RuleKind::Rounds:
      case RuleKind::AnyOf:
      case RuleKind::AllOf:
      case RuleKind::AtLeast:
        return false;
      default:
        return true;
    }
  }
  [[nodiscard]] bool has_items() const { return rule_.same_x >= 0 || rule_.per >= 0; }
  [[nodiscard]] bool has_missing() const {
    return rule_.kind == RuleKind::Rounds || rule_.kind == RuleKind::Order ||
           (rule_.kind == RuleKind::Count && rule_.set_size > 0);
  }

  void condition(std::size_t at, const std::string& name) {
    Role role = Role::X;
    if (name == "missing" && has_missing()) return add(What::IfMissing);
    const Selector* of = name.size() == 1 ? selector(name, role) : nullptr;
    add(What::IfRole, role);
    if (of == nullptr || !of->given()) unbound(at, name + "?");
  }

  void placeholder(std::size_t at, const std::string& name) {
    for (const Named& row : kPlain) {
      if (row.name != name) continue;
      const bool figures = row.what == What::Expected || row.what == What::Found || row.what == What::Margin ||
                           row.what == What::WorstValue;
      const bool items = row.what == What::Item || row.what == What::WorstItem;
      if ((figures && !has_figures()) || (items && !has_items()) || (row.what == What::Missing && !has_missing())) {
        return unbound(at, name);
      }
      return add(row.what);
    }
    if (name.rfind("sheet.", 0) == 0) return sheet(at, name.substr(6));
    Role role = Role::X;
    const Selector* of = name.size() > 2 && name[1] == '.' ? selector(name.substr(0, 1), role) : nullptr;
    if (of == nullptr || !of->given()) return unbound(at, name);
    if (name.substr(2) == "time") return add(What::Time, role);
    if (!rule_.steps.empty()) return unbound(at, name);
    const event::Kind& kind = draft_.program.vocabulary.kinds[of->kind];
    const auto field = event::Vocabulary::find_field(kind, name.substr(2));
    if (!field) {
      std::vector<std::string_view> known = {"time"};
      for (const event::Field& row : kind.fields) known.push_back(row.name);
      return refuse(at, "{" + name + "}: the event " + kind.name + " has no field '" + name.substr(2) + "'",
                    "write one of its fields" + nearest_hint(name.substr(2), known));
    }
    if (role == Role::X) rule_.keep_x = true;
    if (role == Role::Y) rule_.keep_y = true;
    if (role == Role::Void) rule_.keep_z = true;
    add(What::Field, role, static_cast<std::int32_t>(*field));
  }

  void sheet(std::size_t at, std::string name) {
    constexpr std::string_view kTolerance = ".tolerance";
    const bool tolerance = name.size() > kTolerance.size() && name.ends_with(kTolerance);
    if (tolerance) name.resize(name.size() - kTolerance.size());
    std::vector<std::string_view> known;
    for (std::size_t i = 0; i < draft_.program.sheet.size(); ++i) {
      const SheetFigure& figure = draft_.program.sheet[i];
      known.push_back(figure.name);
      if (figure.name != name || (tolerance && !figure.tolerance_si)) continue;
      return add(tolerance ? What::SheetTolerance : What::Sheet, Role::X, static_cast<std::int32_t>(i));
    }
    refuse(at, "{sheet." + name + "}: the maker's sheet has no such figure",
           "write one of its figures" + nearest_hint(name, known));
  }

  void unbound(std::size_t at, const std::string& name) {
    refuse(at,
           "{" + name + "} has no meaning in a rule of kind " +
               std::string(rule_kind_words()[static_cast<std::size_t>(rule_.kind)]),
           "use {x.time}, {count}, {sheet.NAME} or what this kind finds out");
  }

  const Draft& draft_;
  Rule& rule_;
  const Text& text_;
  std::vector<TextPiece> pieces_;
};

void compile_rule_texts(const Draft& draft, std::size_t index) {
  const RuleSpec& spec = draft.program.specs[index];
  std::vector<FilledText>& texts = draft.program.texts[index];
  for (const SaySpec& say : spec.say) {
    FilledText text;
    text.language = say.language;
    if (say.verdict == "fail") {
      text.verdict = Verdict::Fail;
    } else if (say.verdict == "partial") {
      text.verdict = Verdict::Partial;
    } else if (say.verdict == "pass") {
      text.verdict = Verdict::Pass;
    } else if (say.verdict == "idle") {
      text.verdict = Verdict::NotApplicable;
    } else {
      draft.fault("E34", say.text.at, "'" + say.verdict + "' is no occasion to say something",
                  "write say.fail, say.partial, say.pass or say.idle");
    }
    text.pieces = TextReader(draft, draft.program.rules[index], say.text).read();
    texts.push_back(std::move(text));
  }
}

}  // namespace

void compile_texts(const Draft& draft) {
  const RuleProgram& program = draft.program;
  std::vector<bool> inside(program.rules.size(), false);
  for (const Rule& rule : program.rules) {
    for (RuleIndex child : rule.children) inside[static_cast<std::size_t>(child)] = true;
  }
  for (std::size_t i = 0; i < program.rules.size(); ++i) {
    compile_rule_texts(draft, i);
    if (inside[i]) continue;
    for (const std::string& language : draft.input.languages) {
      const bool there = std::any_of(program.texts[i].begin(), program.texts[i].end(), [&](const FilledText& text) {
        return text.language == language && text.verdict == Verdict::Fail && !text.pieces.empty();
      });
      if (there) continue;
      draft.fault("E35", program.specs[i].id.at,
                  "'" + program.specs[i].id.text + "' does not say in '" + language + "' why it was lost",
                  "write say.fail for this language");
    }
  }
}

}  // namespace proofstand::rules

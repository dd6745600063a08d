#include "sim/rules/program.h"

namespace proofstand::rules {

const std::vector<std::string_view>& rule_kind_words() {
  static const std::vector<std::string_view> words = {"must",  "never",  "count",  "needs",   "leads",  "order",
                                                      "hold",  "steady", "keep",   "measure", "rounds", "within",
                                                      "recur", "any_of", "all_of", "at_least"};
  return words;
}

const std::vector<std::string_view>& scope_words() {
  static const std::vector<std::string_view> words = {"run",         "after_first", "after_last", "before_first",
                                                      "until_first", "between",     "from_to"};
  return words;
}

const std::vector<std::string_view>& severity_words() {
  static const std::vector<std::string_view> words = {"note", "minor", "major", "critical"};
  return words;
}

const std::string& RuleProgram::id_of(RuleIndex rule) const { return specs[static_cast<std::size_t>(rule)].id.text; }

std::optional<RuleIndex> RuleProgram::find_rule(std::string_view id) const {
  for (std::size_t i = 0; i < specs.size(); ++i) {
    if (specs[i].id.text == id) return static_cast<RuleIndex>(i);
  }
  return std::nullopt;
}

Truth matches(const RuleProgram& program, const Selector& selector, const event::Record& record,
              const std::vector<Fluent>& fluents) {
  if (selector.kind != record.kind) return Truth::No;
  if (selector.where < 0) return Truth::Yes;
  return truth_of(program.expressions[static_cast<std::size_t>(selector.where)], &record, fluents);
}

}  // namespace proofstand::rules

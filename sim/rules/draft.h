// A program while it is being compiled, with the small questions that every part of the compiler asks. Private to the
// compiler.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "sim/base/result.h"
#include "sim/rules/compile.h"
#include "sim/rules/where_parser.h"

namespace proofstand::rules {

struct Draft {
  const CompileInput& input;
  RuleProgram& program;
  base::Faults& faults;

  void fault(std::string code, const SourcePos& at, std::string what, std::string instead) const;
  /// Index of a word in a list; E02 with the nearest word otherwise. An empty text gives `otherwise`.
  [[nodiscard]] std::optional<std::size_t> word(const Text& text, const std::vector<std::string_view>& words,
                                                std::string_view what,
                                                std::optional<std::size_t> otherwise = std::nullopt) const;
  [[nodiscard]] WhereContext context(event::KindId kind) const;
  /// Compiled, or an empty selector and a fault.
  [[nodiscard]] Selector selector(const SelectorSpec& spec) const;
  /// Index into expressions, -1 with a fault.
  [[nodiscard]] std::int32_t keep(const base::Result<Expression>& made) const;
  std::int32_t keep(Expression made) const;
  /// Ticks of a duration; E08 wrong unit, E09 negative or not a whole number of ticks. -1 when not given or wrong.
  [[nodiscard]] base::Tick ticks(const Text& text) const;
  /// Field of a kind by name; E05 otherwise, -1.
  [[nodiscard]] std::int32_t field(event::KindId kind, const Text& name) const;
  [[nodiscard]] const event::Field& field_of(event::KindId kind, std::int32_t field) const;
};

/// Parts of the compiler, in the order they run.
void compile_rule(const Draft& draft, const RuleSpec& spec, Rule& rule);  ///< everything but links between rules
void compile_kind(const Draft& draft, const RuleSpec& spec, Rule& rule);  ///< what its kind reads
void compile_rounds(const Draft& draft, const RuleSpec& spec, Rule& rule);
void check_unread(const Draft& draft, const RuleSpec& spec, RuleKind kind);  ///< fields that the kind does not read
void compile_links(const Draft& draft);                                      ///< children, excuses, circles
void check_points(const Draft& draft);                                       ///< totals, free points
void compile_texts(const Draft& draft);                                      ///< sentences and their placeholders
void build_dispatch(RuleProgram& program);                                   ///< who reads which kind

}  // namespace proofstand::rules

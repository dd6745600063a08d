// Reads conditions, sums, ranges and durations as authors write them, checks types and units, and makes expressions.
//
//     condition := condition or condition | condition and condition | not condition | ( condition )
//                | sum == sum    (also != < <= > >=)   | sum in range | word in [word, word] | flag | known(name)
//     range     := sum .. sum | sum .. | .. sum | sum +- sum | sheet.NAME (when the sheet gives a tolerance)
//     sum       := terms with + - * / ( ), units checked
//     term      := 5 N·m | field | fluent | sheet.NAME | sheet.NAME.tolerance | word | 'words with blanks' | yes | no
//
// A number without a unit is only a count or a ratio. Words are compared with item and choice fields only.
#pragma once

#include <optional>
#include <string_view>
#include <vector>

#include "sim/base/result.h"
#include "sim/event/vocabulary.h"
#include "sim/rules/expression.h"
#include "sim/rules/spec.h"

namespace proofstand::rules {

/// What names can mean.
struct WhereContext {
  const event::Vocabulary& vocabulary;
  const std::vector<SheetFigure>& sheet;
  event::KindId kind = event::kNoKind;  ///< whose fields; kNoKind: fluents and sheet figures only
};

/// A number to be worked out, with its dimension.
struct NumberExpression {
  Expression expression;
  base::Dimension dimension = base::Dimension::Number;
};

/// Bounds, each optional, in the same dimension.
struct RangeExpression {
  std::optional<Expression> lo;
  std::optional<Expression> hi;
};

/// errors: E04 .. E10, E09 for an empty range; `where` is the column of the word meant.
base::Result<Expression> parse_condition(const WhereContext& context, const Text& text);
/// A number or sum. errors: as above
base::Result<NumberExpression> parse_number(const WhereContext& context, const Text& text);
/// A range in the dimension given. errors: as above
base::Result<RangeExpression> parse_range(const WhereContext& context, const Text& text, base::Dimension dimension);
/// A number that no record changes, such as a duration: SI. errors: as above
base::Result<double> parse_fixed(const WhereContext& context, const Text& text, base::Dimension dimension);

}  // namespace proofstand::rules

// The typing of conditions: which terms may be joined by which sign, and the code that comes of it. Private to the
// parser of conditions.
#pragma once

#include <optional>

#include "sim/base/result.h"
#include "sim/rules/tokens.h"
#include "sim/rules/typed_term.h"
#include "sim/rules/where_parser.h"

namespace proofstand::rules {

struct Types {
  const WhereContext& context;
  const Text& text;

  /// A fault at a token's place.
  [[nodiscard]] base::Error fault(std::string code, const Token& at, std::string what, std::string instead) const;
  [[nodiscard]] Term literal(const Token& token) const;
  [[nodiscard]] Term quoted(const Token& token) const;
  /// left sign right, for every sign but "in". errors: E05 E07 E08 E10
  [[nodiscard]] base::Result<Term> combine(const Token& sign, Term left, Term right) const;
  [[nodiscard]] base::Result<Term> negated(const Token& sign, Term term) const;
  [[nodiscard]] base::Result<Term> minus(const Token& sign, Term term) const;
  [[nodiscard]] base::Result<Term> known(const Term& term) const;
  /// value within the bounds given. errors: E08 E09 E10
  [[nodiscard]] base::Result<Term> inside(const Term& value, const std::optional<Term>& lo,
                                          const std::optional<Term>& hi) const;
  /// The expression; errors: E07 too deep for the stack
  [[nodiscard]] base::Result<Expression> finished(Term term) const;
};

}  // namespace proofstand::rules

#include "sim/rules/where_parser.h"

#include "sim/rules/tokens.h"
#include "sim/rules/typed_term.h"
#include "sim/rules/where_names.h"
#include "sim/rules/where_types.h"

namespace proofstand::rules {
namespace {

constexpr int kDeepestNesting = 24;

struct Bounds {
  std::optional<Term> lo;
  std::optional<Term> hi;
};

int strength_of(const Token& token) {
  if (token.kind != TokenKind::Sign) return 0;
  const std::string& s = token.text;
  if (s == "or") return 1;
  if (s == "and") return 2;
  if (s == "==" || s == "!=" || s == "<" || s == "<=" || s == ">" || s == ">=" || s == "in") return 4;
  if (s == "+" || s == "-") return 6;
  if (s == "*" || s == "/") return 7;
  return 0;
}
constexpr int kNotStrength = 3;
constexpr int kSumStrength = 6;

class Parser {
 public:
  Parser(const WhereContext& context, const Text& text, std::vector<Token> tokens)
      : types_{context, text}, tokens_(std::move(tokens)) {}

  // precedence climbing: everything that binds at least this strongly
  base::Result<Term> expression(int strength) {
    if (++nesting_ > kDeepestNesting) return types_.fault("E07", here(), "nested too deeply", "split it in two rules");
    base::Result<Term> left = operand();
    while (left.has_value()) {
      const int mine = strength_of(here());
      if (mine == 0 || mine < strength) break;
      const Token sign = next();
      if (sign.text == "in") {
        left = membership(*left);
        continue;
      }
      base::Result<Term> right = expression(mine + 1);
      if (!right.has_value()) return right;
      left = types_.combine(sign, std::move(*left), std::move(*right));
    }
    --nesting_;
    return left;
  }

  base::Result<Bounds> range() {
    Bounds bounds;
    if (!is_sign("..")) {
      base::Result<Term> lo = expression(kSumStrength);
      if (!lo.has_value()) return lo.error();
      if (is_sign("+-")) return around(std::move(*lo));
      if (!is_sign("..") && lo->tolerance_si != nullptr) return with_tolerance(*lo);
      bounds.lo = std::move(*lo);
    }
    if (!is_sign("..")) {
      return types_.fault("E09", here(), "a range is expected here",
                          "write from..to, middle +- tolerance, or a sheet figure that has a tolerance");
    }
    next();
    if (here().kind != TokenKind::End && !is_sign(")") && strength_of(here()) == 0) {
      base::Result<Term> hi = expression(kSumStrength);
      if (!hi.has_value()) return hi.error();
      bounds.hi = std::move(*hi);
    }
    return bounds;
  }

  base::Result<base::Done> end() {
    if (here().kind == TokenKind::End) return base::Done{};
    return types_.fault("E07", here(), "'" + here().text + "' is not expected here",
                        "end the text here, or join conditions with and, or");
  }
  const Token& here() const { return tokens_[at_]; }
  Types& types() { return types_; }

 private:
  bool is_sign(std::string_view text) const { return here().kind == TokenKind::Sign && here().text == text; }
  Token next() { return tokens_[at_].kind == TokenKind::End ? tokens_[at_] : tokens_[at_++]; }

  base::Result<Term> operand() {
    const Token token = next();
    if (token.kind == TokenKind::Name && token.text == "known" && is_sign("(")) return known_test();
    if (token.kind == TokenKind::Name) return term_of_name(types_.context, types_.text, token);
    if (token.kind == TokenKind::Number) return types_.literal(token);
    if (token.kind == TokenKind::Quoted) return types_.quoted(token);
    if (token.kind == TokenKind::Sign && token.text == "(") return parenthesis();
    if (token.kind == TokenKind::Sign && token.text == "not") {
      base::Result<Term> inner = expression(kNotStrength);
      if (!inner.has_value()) return inner;
      return types_.negated(token, std::move(*inner));
    }
    if (token.kind == TokenKind::Sign && token.text == "-") {
      base::Result<Term> inner = expression(kSumStrength + 1);
      if (!inner.has_value()) return inner;
      return types_.minus(token, std::move(*inner));
    }
    return types_.fault(
        "E07", token,
        token.kind == TokenKind::End ? "the text ends too early" : "'" + token.text + "' cannot stand here",
        "write a field, a number with its unit, or a word");
  }

  base::Result<Term> parenthesis() {
    base::Result<Term> inner = expression(1);
    if (!inner.has_value()) return inner;
    if (!is_sign(")")) return types_.fault("E07", here(), "a ) is missing", "close the bracket");
    next();
    return inner;
  }

  base::Result<Term> known_test() {
    next();
    const Token name = next();
    base::Result<Term> term = term_of_name(types_.context, types_.text, name);
    if (!term.has_value()) return term;
    if (!is_sign(")")) return types_.fault("E07", here(), "known takes one name", "write known(name)");
    next();
    return types_.known(*term);
  }

  base::Result<Term> membership(const Term& value) {
    if (!is_sign("[")) {
      base::Result<Bounds> bounds = range();
      if (!bounds.has_value()) return bounds.error();
      return types_.inside(value, bounds->lo, bounds->hi);
    }
    base::Result<Term> any = types_.fault("E07", here(), "this list is empty", "write the words it may be");
    next();
    bool first = true;
    while (!is_sign("]")) {
      base::Result<Term> word = expression(kSumStrength);
      if (!word.has_value()) return word;
      Token sign;
      sign.kind = TokenKind::Sign;
      sign.offset = word->offset;
      sign.text = "==";
      base::Result<Term> equal = types_.combine(sign, value, std::move(*word));
      if (!equal.has_value()) return equal;
      sign.text = "or";
      any = first ? std::move(equal) : types_.combine(sign, std::move(*any), std::move(*equal));
      first = false;
      if (is_sign(",")) next();
      if (here().kind == TokenKind::End) return types_.fault("E07", here(), "a ] is missing", "close the list");
    }
    next();
    return any;
  }

  base::Result<Bounds> around(Term middle) {
    const Token sign = next();
    base::Result<Term> tolerance = expression(kSumStrength);
    if (!tolerance.has_value()) return tolerance.error();
    Token minus = sign;
    minus.text = "-";
    Token plus = sign;
    plus.text = "+";
    base::Result<Term> lo = types_.combine(minus, middle, *tolerance);
    if (!lo.has_value()) return lo.error();
    base::Result<Term> hi = types_.combine(plus, std::move(middle), std::move(*tolerance));
    if (!hi.has_value()) return hi.error();
    return Bounds{std::move(*lo), std::move(*hi)};
  }

  base::Result<Bounds> with_tolerance(const Term& figure) {
    Bounds bounds{figure, figure};
    bounds.lo->code[0].value_si -= *figure.tolerance_si;
    bounds.hi->code[0].value_si += *figure.tolerance_si;
    return bounds;
  }

  Types types_;
  std::vector<Token> tokens_;
  std::size_t at_ = 0;
  int nesting_ = 0;
};

base::Result<Parser> parser_for(const WhereContext& context, const Text& text) {
  base::Result<std::vector<Token>> tokens = tokens_of(text);
  if (!tokens.has_value()) return tokens.error();
  return Parser(context, text, std::move(*tokens));
}

}  // namespace

base::Result<Expression> parse_condition(const WhereContext& context, const Text& text) {
  base::Result<Parser> parser = parser_for(context, text);
  if (!parser.has_value()) return parser.error();
  base::Result<Term> term = parser->expression(1);
  if (!term.has_value()) return term.error();
  if (const auto end = parser->end(); !end.has_value()) return end.error();
  if (term->type == TermType::Word) return unknown_name(context, text, *term);
  if (term->type != TermType::Truth) {
    return base::Error{"E07", place_words(place_in(text, term->offset)),
                       "this is " + type_words(*term, context.vocabulary) + ", not a condition",
                       "compare it with something, such as " + term->text + " == ..."};
  }
  return parser->types().finished(std::move(*term));
}

base::Result<NumberExpression> parse_number(const WhereContext& context, const Text& text) {
  base::Result<Parser> parser = parser_for(context, text);
  if (!parser.has_value()) return parser.error();
  base::Result<Term> term = parser->expression(kSumStrength);
  if (!term.has_value()) return term.error();
  if (const auto end = parser->end(); !end.has_value()) return end.error();
  if (term->type == TermType::Word) return unknown_name(context, text, *term);
  if (term->type != TermType::Number) {
    return base::Error{"E07", place_words(place_in(text, term->offset)),
                       "this is " + type_words(*term, context.vocabulary) + ", not a number",
                       "write a quantity, a count, or a sum of them"};
  }
  const base::Dimension dimension = term->dimension;
  base::Result<Expression> made = parser->types().finished(std::move(*term));
  if (!made.has_value()) return made.error();
  return NumberExpression{std::move(*made), dimension};
}

base::Result<RangeExpression> parse_range(const WhereContext& context, const Text& text, base::Dimension dimension) {
  base::Result<Parser> parser = parser_for(context, text);
  if (!parser.has_value()) return parser.error();
  base::Result<Bounds> bounds = parser->range();
  if (!bounds.has_value()) return bounds.error();
  if (const auto end = parser->end(); !end.has_value()) return end.error();
  Term like;
  like.type = TermType::Number;
  like.dimension = dimension;
  // the check of types and of order is that of "value in range"
  like.code.push_back({Op::Field, 0, 0.0});
  const base::Result<Term> checked = parser->types().inside(like, bounds->lo, bounds->hi);
  if (!checked.has_value()) return checked.error();
  RangeExpression range;
  if (bounds->lo) range.lo = Expression{std::move(bounds->lo->code)};
  if (bounds->hi) range.hi = Expression{std::move(bounds->hi->code)};
  return range;
}

base::Result<double> parse_fixed(const WhereContext& context, const Text& text, base::Dimension dimension) {
  base::Result<NumberExpression> number = parse_number(context, text);
  if (!number.has_value()) return number.error();
  const std::string where = place_words(text.at);
  if (number->dimension != dimension) {
    return base::Error{"E08", where,
                       "'" + text.text + "' is " + std::string(base::dimension_words(number->dimension)) + "; " +
                           std::string(base::dimension_words(dimension)) + " is expected",
                       "write a number in " + std::string(base::everyday_unit(dimension))};
  }
  if (!number->expression.is_constant()) {
    return base::Error{"E07", where, "'" + text.text + "' changes with the record; a fixed figure is expected",
                       "write a number or a figure of the sheet"};
  }
  return number->expression.code[0].value_si;
}

}  // namespace proofstand::rules

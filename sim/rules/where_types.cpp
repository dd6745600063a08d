#include "sim/rules/where_types.h"

#include "sim/rules/where_names.h"

namespace proofstand::rules {
namespace {

constexpr double kHuge = 1.7976931348623157e308;

std::optional<Op> op_of(std::string_view sign) {
  struct Row {
    std::string_view sign;
    Op op;
  };
  static constexpr Row kRows[] = {{"==", Op::Equal},     {"!=", Op::NotEqual}, {"<", Op::Less},
                                  {"<=", Op::LessEqual}, {">", Op::Greater},   {">=", Op::GreaterEqual},
                                  {"and", Op::And},      {"or", Op::Or},       {"+", Op::Add},
                                  {"-", Op::Subtract},   {"*", Op::Multiply},  {"/", Op::Divide}};
  for (const Row& row : kRows) {
    if (row.sign == sign) return row.op;
  }
  return std::nullopt;
}

Term joined(Op op, Term left, const Term& right) {
  left.code.insert(left.code.end(), right.code.begin(), right.code.end());
  left.code.push_back({op, 0, 0.0});
  left.field = nullptr;
  left.tolerance_si = nullptr;
  return left;
}

// a sum of fixed numbers is a fixed number, so that ranges and durations may be written as sums
void fold(Term& term) {
  if (term.code.size() != 3 || term.code[0].op != Op::Constant || term.code[1].op != Op::Constant) return;
  const Value value = evaluate(Expression{term.code}, nullptr, {});
  if (value.known) term.code = {{Op::Constant, 0, value.value_si}};
}

bool is_worded(const Term& term) { return term.type == TermType::Item || term.type == TermType::Choice; }

base::Result<Term> sum(const Types& types, const Token& sign, Op op, Term left, const Term& right) {
  const WhereContext& context = types.context;
  for (const Term* term : {static_cast<const Term*>(&left), &right}) {
    if (term->type == TermType::Word) return unknown_name(context, types.text, *term);
    if (term->type != TermType::Number) {
      return types.fault(
          "E07", sign,
          "'" + sign.text + "' needs numbers, and '" + term->text + "' is " + type_words(*term, context.vocabulary),
          "compare words with == or in");
    }
  }
  using base::Dimension;
  Dimension dimension = left.dimension;
  bool fits = left.dimension == right.dimension;
  if (op == Op::Multiply) {
    fits = left.dimension == Dimension::Number || right.dimension == Dimension::Number;
    if (dimension == Dimension::Number) dimension = right.dimension;
  } else if (op == Op::Divide) {
    if (fits) dimension = Dimension::Number;
    fits = fits || right.dimension == Dimension::Number;
  }
  if (!fits) {
    return types.fault("E08", sign,
                       "'" + left.text + "' is " + type_words(left, context.vocabulary) + " and '" + right.text +
                           "' is " + type_words(right, context.vocabulary) + "; they cannot be joined by " + sign.text,
                       "use figures of one kind");
  }
  left.dimension = dimension;
  Term made = joined(op, std::move(left), right);
  fold(made);
  return made;
}

// a figure far outside of what the field can be is a slip of the pen: 40 kN·m for 40 N·m
std::optional<base::Error> out_of_reach(const Types& types, const Term& value, const Term& figure) {
  if (value.field == nullptr || !figure.is_constant() || !(value.field->lo_si < value.field->hi_si))
    return std::nullopt;
  const double figure_si = figure.code[0].value_si;
  if (figure_si >= value.field->lo_si && figure_si <= value.field->hi_si) return std::nullopt;
  Token at;
  at.offset = figure.offset;
  return types.fault("E10", at,
                     "'" + figure.text + "' is outside of what " + value.field->name + " can be (" +
                         base::quantity_words(value.field->lo_si, value.dimension) + " to " +
                         base::quantity_words(value.field->hi_si, value.dimension) + ")",
                     "check the unit and the figure");
}

base::Result<Term> compare(const Types& types, const Token& sign, Op op, Term left, Term right) {
  const WhereContext& context = types.context;
  if (left.type == TermType::Word && is_worded(right)) std::swap(left, right);
  const bool literal = right.type == TermType::Word || (right.type == TermType::Number && right.is_constant());
  if (is_worded(left) && literal) {
    base::Result<Term> word = word_as(context, types.text, right, left);
    if (!word.has_value()) return word;
    right = std::move(*word);
  }
  for (const Term* term : {static_cast<const Term*>(&left), static_cast<const Term*>(&right)}) {
    if (term->type == TermType::Word) return unknown_name(context, types.text, *term);
  }
  const std::string pair = "'" + left.text + "' is " + type_words(left, context.vocabulary) + " and '" + right.text +
                           "' is " + type_words(right, context.vocabulary);
  if (left.type != right.type || left.set != right.set) {
    return types.fault("E07", sign, pair + "; they cannot be compared", "compare like with like");
  }
  if (left.type == TermType::Choice && *left.choices != *right.choices) {
    return types.fault("E07", sign, pair + "; they cannot be compared", "compare like with like");
  }
  if (left.type != TermType::Number && op != Op::Equal && op != Op::NotEqual) {
    return types.fault("E07", sign, "words have no order", "use == != or in");
  }
  if (left.type == TermType::Number) {
    if (left.dimension != right.dimension) {
      return types.fault("E08", sign, pair, "write the figure in " + std::string(base::everyday_unit(left.dimension)));
    }
    if (const auto error = out_of_reach(types, left, right)) return *error;
    if (const auto error = out_of_reach(types, right, left)) return *error;
  }
  Term made = joined(op, std::move(left), right);
  made.type = TermType::Truth;
  made.dimension = base::Dimension::Number;
  made.set = event::kNoSet;
  made.choices = nullptr;
  return made;
}

std::size_t deepest(const std::vector<Instruction>& code) {
  std::size_t depth = 0;
  std::size_t most = 0;
  for (const Instruction& step : code) {
    switch (step.op) {
      case Op::Constant:
      case Op::Field:
      case Op::FluentValue:
      case Op::KnownField:
      case Op::KnownFluent:
        most = ++depth > most ? depth : most;
        break;
      case Op::Not:
        break;
      case Op::Inside:
        depth -= 2;
        break;
      default:
        --depth;
        break;
    }
  }
  return most;
}

}  // namespace

base::Error Types::fault(std::string code, const Token& at, std::string what, std::string instead) const {
  return {std::move(code), place_words(place_in(text, at.offset)), std::move(what), std::move(instead)};
}

Term Types::literal(const Token& token) const {
  Term term;
  term.type = TermType::Number;
  term.dimension = token.quantity.dimension;
  term.code.push_back({Op::Constant, 0, token.quantity.value_si});
  term.text = token.text;
  term.offset = token.offset;
  return term;
}

Term Types::quoted(const Token& token) const {
  Term term;
  term.text = token.text;
  term.offset = token.offset;
  term.quoted = true;
  return term;
}

base::Result<Term> Types::combine(const Token& sign, Term left, Term right) const {
  const std::optional<Op> op = op_of(sign.text);
  STAND_ASSERT(op.has_value());
  if (*op == Op::Add || *op == Op::Subtract || *op == Op::Multiply || *op == Op::Divide) {
    return sum(*this, sign, *op, std::move(left), right);
  }
  if (*op != Op::And && *op != Op::Or) return compare(*this, sign, *op, std::move(left), std::move(right));
  for (const Term* term : {static_cast<const Term*>(&left), static_cast<const Term*>(&right)}) {
    if (term->type == TermType::Word) return unknown_name(context, text, *term);
    if (term->type != TermType::Truth) {
      return fault("E07", sign,
                   "'" + term->text + "' is " + type_words(*term, context.vocabulary) + ", not a condition",
                   "compare it with something first");
    }
  }
  return joined(*op, std::move(left), right);
}

base::Result<Term> Types::negated(const Token& sign, Term term) const {
  if (term.type == TermType::Word) return unknown_name(context, text, term);
  if (term.type != TermType::Truth) {
    return fault("E07", sign, "only a condition can be turned round by not", "write not (a == b)");
  }
  term.code.push_back({Op::Not, 0, 0.0});
  term.field = nullptr;
  return term;
}

base::Result<Term> Types::minus(const Token& sign, Term term) const {
  Term zero;
  zero.type = TermType::Number;
  zero.dimension = term.dimension;
  zero.code.push_back({Op::Constant, 0, 0.0});
  zero.text = "0";
  zero.offset = sign.offset;
  const std::string written = "-" + term.text;
  Token subtract = sign;
  base::Result<Term> made = combine(subtract, std::move(zero), std::move(term));
  if (made.has_value()) made->text = written;
  return made;
}

base::Result<Term> Types::known(const Term& term) const {
  if (term.type == TermType::Word) return unknown_name(context, text, term);
  Term made;
  made.type = TermType::Truth;
  made.text = term.text;
  made.offset = term.offset;
  made.code = term.code;
  Instruction& step = made.code[0];
  if (step.op == Op::Field) {
    step.op = Op::KnownField;
  } else if (step.op == Op::FluentValue) {
    step.op = Op::KnownFluent;
  } else {
    step = {Op::Constant, 0, 1.0};
  }
  return made;
}

base::Result<Term> Types::inside(const Term& value, const std::optional<Term>& lo,
                                 const std::optional<Term>& hi) const {
  const Term& any = lo ? *lo : (hi ? *hi : value);
  Token at;
  at.offset = any.offset;
  if (!lo && !hi) return fault("E09", at, "a range without any bound leaves everything", "write from..to");
  Term made = value;
  for (const std::optional<Term>* bound : {&lo, &hi}) {
    if (bound->has_value()) {
      Token sign;
      sign.text = "<=";
      sign.offset = (*bound)->offset;
      const base::Result<Term> checked = combine(sign, value, **bound);
      if (!checked.has_value()) return checked;
      made.code.insert(made.code.end(), (*bound)->code.begin(), (*bound)->code.end());
    } else {
      made.code.push_back({Op::Constant, 0, bound == &lo ? -kHuge : kHuge});
    }
  }
  if (lo && hi && lo->is_constant() && hi->is_constant() && lo->code[0].value_si > hi->code[0].value_si) {
    return fault("E09", at,
                 "the range from " + base::quantity_words(lo->code[0].value_si, lo->dimension) + " to " +
                     base::quantity_words(hi->code[0].value_si, hi->dimension) + " is empty",
                 "write the smaller figure first");
  }
  made.code.push_back({Op::Inside, 0, 0.0});
  made.type = TermType::Truth;
  made.dimension = base::Dimension::Number;
  made.field = nullptr;
  made.tolerance_si = nullptr;
  return made;
}

base::Result<Expression> Types::finished(Term term) const {
  if (deepest(term.code) > Expression::kDeepest) {
    Token at;
    return fault("E07", at, "this condition is too deep", "split it in two rules");
  }
  return Expression{std::move(term.code)};
}

}  // namespace proofstand::rules

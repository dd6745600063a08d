#include "sim/rules/expression.h"

#include <array>

#include "sim/base/assert.h"

namespace proofstand::rules {
namespace {

// a comparison with NaN would be false; the engine must say "unknown" instead
Value known_number(double value_si) { return {value_si, value_si == value_si}; }

Value truth_value(bool yes) { return {yes ? 1.0 : 0.0, true}; }

Value both(const Value& a, const Value& b) {
  if ((a.known && a.value_si == 0.0) || (b.known && b.value_si == 0.0)) return truth_value(false);
  return a.known && b.known ? truth_value(true) : Value{};
}

Value either(const Value& a, const Value& b) {
  if ((a.known && a.value_si != 0.0) || (b.known && b.value_si != 0.0)) return truth_value(true);
  return a.known && b.known ? truth_value(false) : Value{};
}

Value binary(Op op, const Value& a, const Value& b) {
  if (op == Op::And) return both(a, b);
  if (op == Op::Or) return either(a, b);
  if (!a.known || !b.known) return {};
  const double x = a.value_si;
  const double y = b.value_si;
  switch (op) {
    case Op::Equal:
      return truth_value(x == y);
    case Op::NotEqual:
      return truth_value(x != y);
    case Op::Less:
      return truth_value(x < y);
    case Op::LessEqual:
      return truth_value(x <= y);
    case Op::Greater:
      return truth_value(x > y);
    case Op::GreaterEqual:
      return truth_value(x >= y);
    case Op::Add:
      return known_number(x + y);
    case Op::Subtract:
      return known_number(x - y);
    case Op::Multiply:
      return known_number(x * y);
    case Op::Divide:
      return y == 0.0 ? Value{} : known_number(x / y);
    default:
      break;
  }
  STAND_ASSERT(false);
  return {};
}

Value inside(const Value& value, const Value& lo, const Value& hi) {
  return both(binary(Op::GreaterEqual, value, lo), binary(Op::LessEqual, value, hi));
}

Value field_value(const event::Record* record, std::size_t field) {
  STAND_ASSERT(record != nullptr);
  if (!record->knows(field)) return {};
  return known_number(record->values[field]);
}

}  // namespace

Value evaluate(const Expression& expression, const event::Record* record, const std::vector<Fluent>& fluents) {
  if (expression.code.empty()) return truth_value(true);
  std::array<Value, Expression::kDeepest> stack;
  std::size_t depth = 0;
  for (const Instruction& step : expression.code) {
    switch (step.op) {
      case Op::Constant:
        stack[depth++] = known_number(step.value_si);
        break;
      case Op::Field:
        stack[depth++] = field_value(record, step.index);
        break;
      case Op::FluentValue: {
        const Fluent& fluent = fluents[step.index];
        stack[depth++] = fluent.known ? known_number(fluent.value_si) : Value{};
        break;
      }
      case Op::KnownField:
        stack[depth++] = truth_value(field_value(record, step.index).known);
        break;
      case Op::KnownFluent:
        stack[depth++] = truth_value(fluents[step.index].known);
        break;
      case Op::Not:
        if (stack[depth - 1].known) stack[depth - 1] = truth_value(stack[depth - 1].value_si == 0.0);
        break;
      case Op::Inside:
        depth -= 2;
        stack[depth - 1] = inside(stack[depth - 1], stack[depth], stack[depth + 1]);
        break;
      default:
        --depth;
        stack[depth - 1] = binary(step.op, stack[depth - 1], stack[depth]);
        break;
    }
  }
  STAND_ASSERT(depth == 1);
  return stack[0];
}

Truth truth_of(const Expression& expression, const event::Record* record, const std::vector<Fluent>& fluents) {
  const Value value = evaluate(expression, record, fluents);
  if (!value.known) return Truth::Unknown;
  return value.value_si != 0.0 ? Truth::Yes : Truth::No;
}

}  // namespace proofstand::rules

// Conditions and sums over the fields of one record and the fluents, ready to be worked out. Total, without loops:
// the cost is that of their length. A value that is not known makes what depends on it unknown, never false.
#pragma once

#include <cstdint>
#include <vector>

#include "sim/base/ticks.h"
#include "sim/event/record.h"

namespace proofstand::rules {

/// No, yes, or not known (Kleene's three values).
enum class Truth : std::uint8_t { No, Yes, Unknown };

/// The value a change record set, until the next one. Kept by kind.
struct Fluent {
  double value_si = 0.0;
  bool known = false;
};

/// A worked-out number (truths are 0 and 1).
struct Value {
  double value_si = 0.0;
  bool known = false;
};

enum class Op : std::uint8_t {
  Constant,
  Field,        ///< of the record; index = field
  FluentValue,  ///< index = kind of the change record
  KnownField,
  KnownFluent,
  Not,
  And,
  Or,
  Equal,
  NotEqual,
  Less,
  LessEqual,
  Greater,
  GreaterEqual,
  Inside,  ///< value, lo, hi: lo <= value <= hi
  Add,
  Subtract,
  Multiply,
  Divide,  ///< by zero: unknown
};

struct Instruction {
  Op op = Op::Constant;
  std::uint16_t index = 0;
  double value_si = 0.0;
};

/// Instructions in the order of a stack machine. Empty = always yes.
struct Expression {
  static constexpr std::size_t kDeepest = 32;  ///< values on the stack at once; the parser refuses more
  std::vector<Instruction> code;

  /// The same number whatever the record.
  [[nodiscard]] bool is_constant() const { return code.size() == 1 && code[0].op == Op::Constant; }
};

/// record may be nullptr when the expression reads no field; fluents [number of kinds].
Value evaluate(const Expression& expression, const event::Record* record, const std::vector<Fluent>& fluents);
Truth truth_of(const Expression& expression, const event::Record* record, const std::vector<Fluent>& fluents);

}  // namespace proofstand::rules

#include "sim/rules/satisfiable.h"

#include "sim/rules/record_space.h"

namespace proofstand::rules {
namespace {

// more combinations than this are not tried; the answer is then the harmless one
constexpr std::int64_t kMostTried = 4096;

template <class Test>
bool any_record(const RuleProgram& program, const RecordSpace& space, bool otherwise, Test&& test) {
  if (space.size > kMostTried) return otherwise;
  event::Record record;
  std::vector<Fluent> fluents(program.vocabulary.kinds.size());
  for (std::int64_t i = 0; i < space.size; ++i) {
    space.make(i, record, fluents);
    if (test(record, fluents)) return true;
  }
  return !space.exact && otherwise;
}

}  // namespace

bool can_match(const RuleProgram& program, const Selector& selector) {
  return can_match_both(program, selector, selector);
}

bool can_match_both(const RuleProgram& program, const Selector& a, const Selector& b) {
  if (a.kind != b.kind || !a.given()) return false;
  const RecordSpace space = record_space(program, a.kind, {a.where, b.where});
  return any_record(program, space, true, [&](const event::Record& record, const std::vector<Fluent>& fluents) {
    return matches(program, a, record, fluents) == Truth::Yes && matches(program, b, record, fluents) == Truth::Yes;
  });
}

bool always_matches(const RuleProgram& program, const Selector& inner, const Selector& outer) {
  if (inner.kind != outer.kind || !inner.given()) return false;
  if (outer.where < 0) return true;
  const RecordSpace space = record_space(program, inner.kind, {inner.where, outer.where});
  return !any_record(program, space, true, [&](const event::Record& record, const std::vector<Fluent>& fluents) {
    return matches(program, inner, record, fluents) == Truth::Yes &&
           matches(program, outer, record, fluents) != Truth::Yes;
  });
}

bool can_be(const RuleProgram& program, std::int32_t condition, Truth value) {
  const RecordSpace space = record_space(program, event::kNoKind, {condition});
  const Expression& expression = program.expressions[static_cast<std::size_t>(condition)];
  return any_record(program, space, true, [&](const event::Record& record, const std::vector<Fluent>& fluents) {
    return truth_of(expression, &record, fluents) == value;
  });
}

}  // namespace proofstand::rules

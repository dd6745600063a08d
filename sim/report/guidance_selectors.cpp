// What a rule's selectors speak of, found by trying records on them.
#include <algorithm>

#include "sim/report/guidance_wants.h"
#include "sim/rules/record_space.h"

namespace proofstand::report {
namespace {

constexpr std::int64_t kMostTried = 4096;  // records tried for one value
constexpr std::size_t kMostValues = 64;

std::size_t values_of_field(const event::Vocabulary& vocabulary, const event::Field& field) {
  switch (field.type) {
    case event::FieldType::Flag:
      return 2;
    case event::FieldType::Choice:
      return field.choices.size();
    case event::FieldType::Item:
      return vocabulary.sets[field.set].items.size();
    case event::FieldType::Count:
      return std::min(kMostValues, static_cast<std::size_t>(field.hi_si) + 1);
    case event::FieldType::Quantity:
      break;
  }
  return 0;
}

}  // namespace

std::vector<std::size_t> possible_values(const rules::RuleProgram& program, const rules::Selector& selector,
                                         std::string_view field) {
  std::vector<std::size_t> possible;
  const event::Kind& kind = program.vocabulary.kinds[selector.kind];
  const auto at = event::Vocabulary::find_field(kind, field);
  if (!at) return possible;
  const std::size_t most = values_of_field(program.vocabulary, kind.fields[*at]);
  std::vector<std::int32_t> conditions;
  if (selector.where >= 0) conditions.push_back(selector.where);
  const rules::RecordSpace space = rules::record_space(program, selector.kind, conditions);
  const std::int64_t tried = std::min(space.size, kMostTried);
  for (std::size_t value = 0; value < most; ++value) {
    bool found = conditions.empty();
    for (std::int64_t i = 0; i < tried && !found; ++i) {
      event::Record record;
      record.kind = selector.kind;
      std::vector<rules::Fluent> fluents(program.vocabulary.kinds.size());
      space.make(i, record, fluents);
      record.values[*at] = static_cast<double>(value);
      record.unknown = static_cast<std::uint16_t>(record.unknown & ~(1U << *at));
      found = rules::matches(program, selector, record, fluents) == rules::Truth::Yes;
    }
    if (found) possible.push_back(value);
  }
  return possible;
}

std::vector<std::string_view> fields_read(const rules::RuleProgram& program, event::KindId kind,
                                          std::int32_t expression) {
  std::vector<std::string_view> names;
  if (expression < 0) return names;
  for (const rules::Instruction& step : program.expressions[static_cast<std::size_t>(expression)].code) {
    if (step.op != rules::Op::Field && step.op != rules::Op::KnownField) continue;
    names.push_back(program.vocabulary.kinds[kind].fields[step.index].name);
  }
  return names;
}

bool is_judged(const GuideWorld& world, std::string_view kind, std::string_view field) {
  for (const rules::Rule& rule : world.program.rules) {
    for (const rules::Selector* selector : {&rule.x, &rule.y, &rule.voided_by}) {
      if (!selector->given() || world.program.vocabulary.kinds[selector->kind].name != kind) continue;
      std::vector<std::string_view> read = fields_read(world.program, selector->kind, selector->where);
      if (selector == &rule.x) {
        const auto more = fields_read(world.program, selector->kind, rule.value);
        read.insert(read.end(), more.begin(), more.end());
      }
      if (std::find(read.begin(), read.end(), field) != read.end()) return true;
    }
  }
  return false;
}

}  // namespace proofstand::report

#include "sim/rules/record_space.h"

#include <algorithm>

namespace proofstand::rules {
namespace {

const event::Field& field_of(const RuleProgram& program, event::KindId kind, const TriedName& name) {
  if (name.fluent) return program.vocabulary.kinds[name.index].fields[0];
  return program.vocabulary.kinds[kind].fields[name.index];
}

bool calculates(Op op) { return op == Op::Add || op == Op::Subtract || op == Op::Multiply || op == Op::Divide; }

void add_names(const Expression& expression, RecordSpace& space, std::vector<double>& figures_si) {
  for (const Instruction& step : expression.code) {
    if (calculates(step.op)) space.exact = false;
    if (step.op == Op::Constant) figures_si.push_back(step.value_si);
    const bool field = step.op == Op::Field || step.op == Op::KnownField;
    const bool fluent = step.op == Op::FluentValue || step.op == Op::KnownFluent;
    if (!field && !fluent) continue;
    auto there = std::find_if(space.names.begin(), space.names.end(),
                              [&](const TriedName& name) { return name.fluent == fluent && name.index == step.index; });
    if (there == space.names.end()) there = space.names.insert(there, {fluent, step.index, {}});
    if (step.op == Op::KnownField || step.op == Op::KnownFluent) there->may_lack = true;
  }
}

// the figures themselves, the ends of the range, and something between any two of them
std::vector<double> numbers_to_try(const event::Field& field, const std::vector<double>& figures_si) {
  std::vector<double> marks;
  const bool bounded = field.lo_si < field.hi_si;
  for (double figure_si : figures_si) {
    if (!bounded || (figure_si >= field.lo_si && figure_si <= field.hi_si)) marks.push_back(figure_si);
  }
  if (bounded) {
    marks.push_back(field.lo_si);
    marks.push_back(field.hi_si);
  } else if (!marks.empty()) {
    const auto [least, most] = std::minmax_element(marks.begin(), marks.end());
    const double low_si = *least - 1.0;
    const double high_si = *most + 1.0;
    marks.push_back(low_si);
    marks.push_back(high_si);
  } else {
    marks.push_back(0.0);
  }
  std::sort(marks.begin(), marks.end());
  marks.erase(std::unique(marks.begin(), marks.end()), marks.end());
  std::vector<double> values = marks;
  for (std::size_t i = 1; i < marks.size(); ++i) {
    const double middle_si = marks[i - 1] + (marks[i] - marks[i - 1]) / 2.0;
    const bool whole = field.type == event::FieldType::Count;
    if (!whole || middle_si == static_cast<double>(static_cast<std::int64_t>(middle_si))) values.push_back(middle_si);
    if (whole && marks[i] - marks[i - 1] > 1.5) values.push_back(marks[i - 1] + 1.0);
  }
  return values;
}

// words that are mentioned, and one or two that are not
std::vector<double> words_to_try(std::size_t words, const std::vector<double>& figures_si) {
  std::vector<double> values;
  int others = 0;
  for (std::size_t i = 0; i < words; ++i) {
    const double value_si = static_cast<double>(i);
    const bool mentioned = std::find(figures_si.begin(), figures_si.end(), value_si) != figures_si.end();
    if (mentioned || others++ < 2) values.push_back(value_si);
  }
  return values;
}

}  // namespace

void RecordSpace::make(std::int64_t i, event::Record& record, std::vector<Fluent>& fluents) const {
  record.kind = kind;
  record.unknown = 0;
  for (const TriedName& name : names) {
    const auto n = name.choices();
    const auto choice = static_cast<std::size_t>(i % n);
    const bool known = choice < name.values_si.size();
    const double value_si = known ? name.values_si[choice] : 0.0;
    i /= n;
    if (name.fluent) {
      fluents[name.index] = {value_si, known};
    } else {
      record.values[name.index] = value_si;
      const auto bit = static_cast<std::uint16_t>(1u << name.index);
      record.unknown = static_cast<std::uint16_t>(known ? record.unknown & ~bit : record.unknown | bit);
    }
  }
}

RecordSpace record_space(const RuleProgram& program, event::KindId kind, const std::vector<std::int32_t>& expressions) {
  RecordSpace space;
  space.kind = kind;
  std::vector<double> figures_si;
  for (std::int32_t index : expressions) {
    if (index >= 0) add_names(program.expressions[static_cast<std::size_t>(index)], space, figures_si);
  }
  for (TriedName& name : space.names) {
    const event::Field& field = field_of(program, kind, name);
    switch (field.type) {
      case event::FieldType::Flag:
        name.values_si = {0.0, 1.0};
        break;
      case event::FieldType::Item:
        name.values_si = words_to_try(program.vocabulary.sets[field.set].items.size(), figures_si);
        break;
      case event::FieldType::Choice:
        name.values_si = words_to_try(field.choices.size(), figures_si);
        break;
      case event::FieldType::Count:
      case event::FieldType::Quantity:
        name.values_si = numbers_to_try(field, figures_si);
        break;
    }
    if (name.values_si.empty()) name.values_si = {0.0};
    space.size *= name.choices();
    if (space.size > 1'000'000) space.size = 1'000'000;
  }
  return space;
}

}  // namespace proofstand::rules

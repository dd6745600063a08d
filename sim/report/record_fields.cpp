#include "sim/report/record_fields.h"

namespace proofstand::report {

std::optional<double> RecordFields::value(std::string_view field) const {
  const auto at = event::Vocabulary::find_field(*kind_, field);
  if (!at || !record_->knows(*at)) return std::nullopt;
  return record_->values[*at];
}

std::optional<std::size_t> RecordFields::index(std::string_view field) const {
  const auto number = value(field);
  if (!number || *number < 0.0) return std::nullopt;
  return static_cast<std::size_t>(*number);
}

std::string RecordFields::word(std::string_view field) const {
  const auto at = event::Vocabulary::find_field(*kind_, field);
  const auto number = index(field);
  if (!at || !number) return {};
  const event::Field& declared = kind_->fields[*at];
  if (declared.type == event::FieldType::Choice && *number < declared.choices.size()) return declared.choices[*number];
  if (declared.type == event::FieldType::Item && declared.set < vocabulary_->sets.size() &&
      *number < vocabulary_->sets[declared.set].items.size()) {
    return vocabulary_->sets[declared.set].items[*number];
  }
  return {};
}

}  // namespace proofstand::report

// Reading a record's fields by name, for the sheets. Private to this floor.
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "sim/event/record.h"
#include "sim/event/vocabulary.h"

namespace proofstand::report {

/// One record with the vocabulary that names its fields.
class RecordFields {
 public:
  RecordFields(const event::Vocabulary& vocabulary, const event::Record& record)
      : vocabulary_(&vocabulary), record_(&record), kind_(&vocabulary.kinds[record.kind]) {}
  [[nodiscard]] const std::string& kind() const { return kind_->name; }
  [[nodiscard]] bool is(std::string_view kind) const { return kind_->name == kind; }
  [[nodiscard]] base::Tick tick() const { return record_->tick; }
  /// SI, index or 0/1; nothing when the kind has no such field or it is not known.
  [[nodiscard]] std::optional<double> value(std::string_view field) const;
  [[nodiscard]] double value_or(std::string_view field, double otherwise_1) const {
    return value(field).value_or(otherwise_1);
  }
  [[nodiscard]] bool flag(std::string_view field) const { return value_or(field, 0.0) != 0.0; }
  /// As an index; nothing when not known.
  [[nodiscard]] std::optional<std::size_t> index(std::string_view field) const;
  /// The word of a choice or item; empty when not known.
  [[nodiscard]] std::string word(std::string_view field) const;

 private:
  const event::Vocabulary* vocabulary_;
  const event::Record* record_;
  const event::Kind* kind_;
};

}  // namespace proofstand::report

// The different records that a set of conditions can tell apart: one value on each side of, and on, every figure that
// they mention. Small enough to try them all.
#pragma once

#include <cstdint>
#include <vector>

#include "sim/event/record.h"
#include "sim/rules/program.h"

namespace proofstand::rules {

/// A field of the record or a fluent, and the values of it worth trying.
struct TriedName {
  bool fluent = false;
  std::uint16_t index = 0;  ///< field, or kind of the change record
  std::vector<double> values_si;
  bool may_lack = false;  ///< asked for with known(): "not known" is tried as well

  /// How many things are tried for it.
  [[nodiscard]] std::int64_t choices() const {
    return static_cast<std::int64_t>(values_si.size()) + (may_lack ? 1 : 0);
  }
};

/// All combinations of the values of the names that the conditions read.
struct RecordSpace {
  event::KindId kind = event::kNoKind;
  std::vector<TriedName> names;
  std::int64_t size = 1;  ///< combinations
  bool exact = true;      ///< false when a condition calculates, so that some records may have been missed

  /// Sets the fields and fluents of combination number i.
  void make(std::int64_t i, event::Record& record, std::vector<Fluent>& fluents) const;
};

/// kind may be kNoKind for conditions over fluents alone; expressions are indices into the program's.
RecordSpace record_space(const RuleProgram& program, event::KindId kind, const std::vector<std::int32_t>& expressions);

}  // namespace proofstand::rules

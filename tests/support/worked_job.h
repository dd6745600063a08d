// A script worked on a bench of its own, for tests: the bench afterwards, and why it got stuck if it did.
#pragma once

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

#include "sim/hand/hand_script.h"

namespace proofstand::testing {

struct WorkedJob {
  bench::Bench bench;
  bool finished = false;
  base::Error trouble;  ///< of the reader or of the hand

  /// Records of a kind, in order.
  [[nodiscard]] std::vector<event::Record> records(std::string_view kind) const;
  /// A field of a record by name; NaN when unknown.
  [[nodiscard]] double field(const event::Record& record, std::string_view name) const;
  /// All of it as text, one record a line, for messages.
  [[nodiscard]] std::string told() const;
};

/// Reads and works a script with a set of hands; the setup's strength is that set's.
WorkedJob work_job(std::string_view script, bench::BenchSetup setup, const hand::HandSkill& skill = hand::journeyman(),
                   std::uint64_t seed = 1);

}  // namespace proofstand::testing

// One thing that happened, as rules and files see it: kind, tick, and a fixed row of field values.
#pragma once

#include <array>
#include <cstdint>
#include <vector>

#include "sim/base/ticks.h"
#include "sim/event/vocabulary.h"

namespace proofstand::event {

/// One field's value. Quantities are SI doubles; flags, counts, items and choices are whole numbers held exactly in the
/// same double, so that comparing needs no type switch. A field that is not known has its bit in `unknown` set.
struct Record {
  base::Tick tick = 0;
  KindId kind = kNoKind;
  std::uint16_t unknown = 0;  ///< bit i: field i is not known
  std::array<double, Vocabulary::kMostFields> values{};

  [[nodiscard]] bool knows(std::size_t field) const { return ((unknown >> field) & 1u) == 0; }
};

/// Why a run ended.
enum class EndReason : std::uint8_t {
  Finished,  ///< the trainee handed over
  Timeout,   ///< the clock ran out
  Stopped,   ///< something that would have hurt someone stopped it
  Aborted,   ///< an outside cause: power, crash
};

/// A whole run: records in order (position is the index), the end and its reason. Ticks never decrease.
struct Trace {
  std::int64_t ticks_per_s = base::kTicksPerSecond;
  std::vector<Record> records;
  base::Tick end_tick = 0;
  EndReason end = EndReason::Finished;
};

/// "finished", "timeout", "stopped", "aborted".
std::string_view end_words(EndReason reason);

}  // namespace proofstand::event

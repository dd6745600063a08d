// A bench as it stood at a moment: of a scenario its start, of an attempt any time of it.
#pragma once

#include <cstdint>
#include <memory>
#include <optional>
#include <string>
#include <string_view>

#include "sim/base/result.h"
#include "sim/base/ticks.h"
#include "sim/bench/bench.h"
#include "sim/record/replayer.h"
#include "sim/scenario/scenario.h"

namespace proofstand::cli {

/// "83.5", "83.5 s", "1:23.5" or "1:02:03" from the beginning, as ticks.
/// errors  "time": none of these
base::Result<base::Tick> tick_from_words(std::string_view words);
/// "1:23.5"
std::string clock_words(base::Tick tick);

/// A scenario or an attempt, opened to be looked at.
class Moments {
 public:
  /// path: scenario (.toml) or attempt; told apart by their first byte. seed: of a scenario's variant
  /// errors: those of reading either; a scenario's faults are said on the way
  static base::Result<Moments> open(const std::string& path, std::int64_t seed);

  [[nodiscard]] const bench::BenchSetup& setup() const { return scenario_.setup; }
  [[nodiscard]] bool is_attempt() const { return is_attempt_; }
  /// The last one; 0 of a scenario.
  [[nodiscard]] base::Tick end() const { return end_; }
  /// errors  "time": after the end
  base::Result<const bench::Bench*> at(base::Tick tick);

 private:
  Moments(scenario::DrawnScenario scenario, std::vector<event::Action> actions, bool is_attempt, base::Tick end);
  scenario::DrawnScenario scenario_;
  std::unique_ptr<record::Replayer> replayer_;
  bool is_attempt_;
  base::Tick end_;
};

}  // namespace proofstand::cli

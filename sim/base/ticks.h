// Time on the bench: an integer number of fixed ticks. Seconds are computed from it, never summed up.
#pragma once

#include <cstdint>

namespace proofstand::base {

using Tick = std::int64_t;
inline constexpr Tick kTicksPerSecond = 240;

constexpr double seconds(Tick ticks) { return static_cast<double>(ticks) / static_cast<double>(kTicksPerSecond); }
/// Whole ticks nearest to a duration; time_s >= 0.
constexpr Tick ticks_from(double time_s) {
  return static_cast<Tick>(time_s * static_cast<double>(kTicksPerSecond) + 0.5);
}

}  // namespace proofstand::base

#include "sim/physics/friction_condition.h"

#include <array>

#include "sim/base/assert.h"
#include "sim/base/math.h"

namespace proofstand::physics {
namespace {

constexpr std::string_view kHandbook = "MIL-HDBK-60 Appendix B table II; range from memory";
constexpr std::string_view kMemory = "from memory";
constexpr double kScatterLubricated_1 = 0.25;
constexpr double kScatterDry_1 = 0.35;

// in the order of ThreadCondition
constexpr std::array<FrictionRow, kThreadConditionCount> kRows = {{
    {0.20, 0.14, 0.30, 0.20, 0.14, 0.28, kScatterDry_1, kMemory},
    {0.15, 0.11, 0.20, 0.15, 0.11, 0.20, kScatterDry_1, kHandbook},
    {0.14, 0.10, 0.18, 0.14, 0.10, 0.18, kScatterLubricated_1, "basis of published torque tables; range from memory"},
    {0.15, 0.11, 0.20, 0.15, 0.11, 0.20, kScatterDry_1, kMemory},
    {0.15, 0.11, 0.20, 0.17, 0.13, 0.22, kScatterDry_1, kMemory},
    {0.20, 0.15, 0.28, 0.20, 0.15, 0.26, kScatterDry_1, "effect published, size common practice, no source"},
    {0.13, 0.10, 0.16, 0.13, 0.10, 0.16, kScatterLubricated_1, kMemory},
    {0.11, 0.08, 0.14, 0.11, 0.08, 0.14, kScatterLubricated_1, kHandbook},
    {0.22, 0.15, 0.34, 0.22, 0.15, 0.34, 0.50, kMemory},
}};
constexpr std::array<std::string_view, kThreadConditionCount> kWords = {
    "dry", "as received", "reference", "patch", "locker wet", "locker set", "oiled", "greased", "wet with alcohol"};

}  // namespace

std::string_view condition_words(ThreadCondition condition) { return kWords[static_cast<std::size_t>(condition)]; }

FrictionRow friction_row(ThreadCondition condition) { return kRows[static_cast<std::size_t>(condition)]; }

BoltFriction sample_friction(ThreadCondition condition, double z_1) {
  STAND_ASSERT(z_1 >= -6.0 && z_1 <= 6.0);
  const FrictionRow row = friction_row(condition);
  const double factor_1 = base::exp_1(base::clamp_1(z_1, -2.5, 2.5) * row.scatter_1 / 2.0);
  return {base::clamp_1(row.thread_1 * factor_1, row.thread_low_1, row.thread_high_1),
          base::clamp_1(row.head_1 * factor_1, row.head_low_1, row.head_high_1)};
}

BoltFriction mixed_friction(const BoltFriction& bare, const BoltFriction& film, double covered_1) {
  const double share_1 = base::clamp_1(covered_1, 0.0, 1.0);
  return {bare.thread_1 + (film.thread_1 - bare.thread_1) * share_1,
          bare.head_1 + (film.head_1 - bare.head_1) * share_1};
}

}  // namespace proofstand::physics

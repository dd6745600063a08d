#include "sim/physics/friction_condition.h"

#include <array>

#include "sim/base/math.h"

namespace proofstand::physics {
namespace {

constexpr std::array<ConditionRow, 8> kRows = {{
    {ThreadCondition::Dry, "dry", {0.20, 0.20}, 0.35, true, "VDI 2230 class C/D, from memory"},
    {ThreadCondition::Clean, "clean", {0.14, 0.14}, 0.25, true, "published torque tables are based on 0.14"},
    {ThreadCondition::Patch, "patch", {0.14, 0.15}, 0.25, true, "as clean; MIL-HDBK-60 table II for the head (0.15)"},
    {ThreadCondition::LockerWet, "locker-wet", {0.15, 0.17}, 0.35, true, "from memory; published texts disagree"},
    {ThreadCondition::LockerSet,
     "locker-set",
     {0.19, 0.19},
     0.50,
     false,
     "nut factor up by a fifth: common practice, no source"},
    {ThreadCondition::Oiled,
     "oiled",
     {0.13, 0.13},
     0.25,
     true,
     "below MIL-HDBK-60 table II machine oil (0.15), from memory"},
    {ThreadCondition::Greased,
     "greased",
     {0.11, 0.11},
     0.25,
     true,
     "MIL-HDBK-60 table II, molybdenum disulphide grease"},
    {ThreadCondition::AlcoholWet,
     "alcohol-wet",
     {0.20, 0.20},
     0.50,
     false,
     "as dry, erratic: MIL-HDBK-60 110.2, size from memory"},
}};

}  // namespace

const ConditionRow& condition_row(ThreadCondition condition) { return kRows[static_cast<std::size_t>(condition)]; }

const ConditionRow* condition_from_name(std::string_view name) {
  for (const ConditionRow& row : kRows) {
    if (row.name == name) return &row;
  }
  return nullptr;
}

Friction drawn_friction(ThreadCondition condition, double z_1) {
  const ConditionRow& row = condition_row(condition);
  const double factor = base::exp_1(0.5 * row.scatter_1 * base::clamp_1(z_1, -2.5, 2.5));
  return {row.mode.thread_1 * factor, row.mode.bearing_1 * factor};
}

}  // namespace proofstand::physics

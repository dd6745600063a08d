// How slippery a fastener is, by the condition of its thread and head; with scatter.
#pragma once

#include <cstdint>
#include <string_view>

#include "sim/physics/preload.h"

namespace proofstand::physics {

enum class ThreadCondition : std::uint8_t {
  Dry,        ///< degreased steel in aluminium, dry head
  Clean,      ///< as received, a trace of oil
  Patch,      ///< locking patch, head as received
  LockerWet,  ///< liquid locker on the thread, head dry
  LockerSet,  ///< tightened again on a cured film
  Oiled,
  Greased,
  AlcoholWet,  ///< freshly wiped, solvent not yet gone
};

/// Figures of one condition. Scatter is the half-range of the nut factor that 5020B uses (read as two standard
/// deviations).
struct ConditionRow {
  ThreadCondition condition = ThreadCondition::Clean;
  std::string_view name;
  Friction mode;
  double scatter_1 = 0.35;
  bool trusted = true;      ///< may a preload computed from torque be relied on?
  std::string_view source;  ///< of the mode values
};
/// Rows in the order of the enum. Sources: MIL-HDBK-60 table II for oil, grease and zinc; NASA-STD-5020B table 3 for
/// scatter; the wet locker's figures are provisional (published texts disagree); see each row.
const ConditionRow& condition_row(ThreadCondition condition);
/// By name ("clean"); nullptr when unknown.
const ConditionRow* condition_from_name(std::string_view name);

/// Friction of one drawn fastener: mode × exp(scatter/2 · z), thread and head alike.
/// z_1 [1] standard normal, −2.5..2.5 · source: own choice (log-normal, two standard deviations = the published
/// half-range)
Friction drawn_friction(ThreadCondition condition, double z_1);

}  // namespace proofstand::physics

// Does a replay give what was recorded? Divergence is an answer, not a crash.
#pragma once

#include <functional>
#include <optional>
#include <string>

#include "sim/record/attempt.h"
#include "sim/scenario/scenario.h"

namespace proofstand::record {

/// Where a replay first differs.
struct Divergence {
  base::Tick tick = 0;
  std::string field;  ///< "tightened, peak_torque of event 41: recorded 5.1, replayed 5.2"
};

/// What came of a replay.
struct ReplayCheck {
  std::optional<Divergence> first;  ///< nothing: equal
  std::size_t states = 0;           ///< state hashes compared
  std::size_t events = 0;           ///< compared; 0 for an attempt that was not closed
  event::Trace trace;               ///< as replayed
};

/// Called now and then with the tick reached.
using ReplayProgress = std::function<void(base::Tick)>;

/// errors: other-bench: recorded with another bench version, so that a replay says nothing
base::Result<ReplayCheck> check_replay(const Attempt& attempt, const scenario::DrawnScenario& scenario,
                                       const ReplayProgress& progress = {});

/// First difference of two traces in the same vocabulary, by record and field; nothing when equal.
std::optional<Divergence> first_difference(const event::Vocabulary& vocabulary,
                                           const std::vector<event::Record>& recorded,
                                           const std::vector<event::Record>& replayed);

}  // namespace proofstand::record

// Actions that no person would do in that order: a hand that tries everything, sensible or not, and numbers that mean
// nothing. The bench must refuse or suffer all of it, always alike.
#pragma once

#include <cstdint>
#include <vector>

#include "sim/event/actions.h"
#include "tests/support/six_bolt_setup.h"

namespace proofstand::testing {

/// A draw of `count` actions; the same seed gives the same ones. Ticks never go back.
/// nonsense_1 [1] share of actions whose numbers are drawn without regard to what they count
std::vector<event::Action> random_actions(const SixBolt& job, std::uint64_t seed, std::size_t count, double nonsense_1);

}  // namespace proofstand::testing

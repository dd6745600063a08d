// A refusal as people say it: the thing and what stands in its way, then one thing that would free it. No blame, no
// order of work, twelve words a sentence at most.
#pragma once

#include <optional>
#include <string>

#include "sim/bench/bench.h"

namespace proofstand::desk {

struct RefusalWords {
  std::string stands;  ///< what stands in the way
  std::string frees;   ///< what would free it; not shown in an exam; may be empty
};

/// The words for an action that the bench has just refused.
RefusalWords refusal_words(const bench::Bench& bench, const event::Action& action, bench::Refusal why);
/// For Space while both hands are on one thing.
RefusalWords both_hands_words(const bench::Bench& bench);
/// The last refusal that the bench told since an event count, if any: its code.
std::optional<bench::Refusal> refused_since(const bench::Bench& bench, std::size_t events_before);

}  // namespace proofstand::desk

// Counting cases, and keeping the few that are shown. Private to the engine.
#pragma once

#include "sim/rules/program.h"
#include "sim/rules/state.h"

namespace proofstand::rules {

/// Would a case of this kind be kept whole? Asked before one is made, because most need only be counted.
bool wants_ok(const Tally& tally, const EvidenceLimit& limit);
bool wants_bad(const Tally& tally, const EvidenceLimit& limit);

/// A case that is not kept whole.
void count_ok(Tally& tally);
void count_bad(Tally& tally, std::int32_t score_ppm, base::Tick settled, base::Tick since);

/// Counts a case and keeps it while there is room.
void add_case(Tally& tally, const EvidenceLimit& limit, Case made);

/// Cases of a stretch that counts join those that already do.
void merge(Tally& into, Tally&& from, const EvidenceLimit& limit);

}  // namespace proofstand::rules

// Counting cases, and keeping the few that are shown. Private to the engine.
#pragma once

#include "sim/rules/program.h"
#include "sim/rules/state.h"

namespace proofstand::rules {

/// Remembers since when something is lost.
inline void note_bad(Tally& tally, base::Tick settled, base::Tick since) {
  if (tally.bad_settled == kNoTick || settled < tally.bad_settled) tally.bad_settled = settled;
  if (tally.bad_since == kNoTick || since < tally.bad_since) tally.bad_since = since;
}

/// Would a case of this kind be kept whole? The first ones are; asked before one is made, because most need only be
/// counted.
inline bool wants_ok(const Tally& tally, const EvidenceLimit& limit) { return tally.ok < limit.ok_cases; }

inline bool wants_bad(const Tally& tally, const EvidenceLimit& limit) {
  return tally.bad + tally.unknown < limit.bad_cases;
}

/// A case that is not kept whole.
inline void count_ok(Tally& tally) {
  ++tally.cases;
  ++tally.ok;
  tally.sum_ppm += kFullPpm;
}

inline void count_bad(Tally& tally, std::int32_t score_ppm, base::Tick settled, base::Tick since) {
  ++tally.cases;
  ++tally.bad;
  tally.sum_ppm += score_ppm;
  if (score_ppm < tally.min_ppm) tally.min_ppm = score_ppm;
  note_bad(tally, settled, since);
}

/// Counts a case and keeps it while there is room.
void add_case(Tally& tally, const EvidenceLimit& limit, Case made);

/// Cases of a stretch that counts join those that already do.
void merge(Tally& into, Tally&& from, const EvidenceLimit& limit);

}  // namespace proofstand::rules

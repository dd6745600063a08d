#include "sim/rules/tally.h"

#include <utility>

namespace proofstand::rules {
namespace {

// lower score first, then farther outside
bool is_worse(const Case& a, const Case& b) {
  if (a.score_ppm != b.score_ppm) return a.score_ppm < b.score_ppm;
  return a.has_figures && b.has_figures && a.margin_si < b.margin_si;
}

}  // namespace

void add_case(Tally& tally, const EvidenceLimit& limit, Case made) {
  ++tally.unnamed;
  // asked before it is counted: the first ones are kept
  const bool keep_ok = wants_ok(tally, limit);
  const bool keep_bad = wants_bad(tally, limit);
  if (made.status == CaseStatus::Ok) {
    count_ok(tally);
    if (keep_ok) tally.ok_cases.push_back(std::move(made));
    return;
  }
  if (made.status == CaseStatus::Unknown) {
    ++tally.cases;
    ++tally.unknown;
    if (keep_bad) tally.bad_cases.push_back(std::move(made));
    return;
  }
  count_bad(tally, made.score_ppm, made.settled_tick, made.since_tick);
  if (tally.worst.empty()) {
    tally.worst.push_back(made);
  } else if (is_worse(made, tally.worst[0])) {
    tally.worst[0] = made;
  }
  if (keep_bad) tally.bad_cases.push_back(std::move(made));
}

void merge(Tally& into, Tally&& from, const EvidenceLimit& limit) {
  // the room left before the counts go up
  auto room_bad = static_cast<std::int64_t>(limit.bad_cases) - (into.bad + into.unknown);
  auto room_ok = static_cast<std::int64_t>(limit.ok_cases) - into.ok;
  into.cases += from.cases;
  into.ok += from.ok;
  into.bad += from.bad;
  into.unknown += from.unknown;
  into.slips += from.slips;
  into.sum_ppm += from.sum_ppm;
  if (from.min_ppm < into.min_ppm) into.min_ppm = from.min_ppm;
  if (from.bad > 0) note_bad(into, from.bad_settled, from.bad_since);
  for (Case& made : from.bad_cases) {
    if (room_bad-- > 0) into.bad_cases.push_back(std::move(made));
  }
  for (Case& made : from.ok_cases) {
    if (room_ok-- > 0) into.ok_cases.push_back(std::move(made));
  }
  if (!from.worst.empty() && (into.worst.empty() || is_worse(from.worst[0], into.worst[0]))) {
    into.worst = std::move(from.worst);
  }
}

}  // namespace proofstand::rules

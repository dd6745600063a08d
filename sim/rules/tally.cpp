#include "sim/rules/tally.h"

#include <utility>

namespace proofstand::rules {
namespace {

void note_bad(Tally& tally, base::Tick settled, base::Tick since) {
  if (tally.bad_settled == kNoTick || settled < tally.bad_settled) tally.bad_settled = settled;
  if (tally.bad_since == kNoTick || since < tally.bad_since) tally.bad_since = since;
}

// lower score first, then farther outside
bool is_worse(const Case& a, const Case& b) {
  if (a.score_ppm != b.score_ppm) return a.score_ppm < b.score_ppm;
  return a.has_figures && b.has_figures && a.margin_si < b.margin_si;
}

}  // namespace

bool wants_ok(const Tally& tally, const EvidenceLimit& limit) {
  return static_cast<std::int32_t>(tally.ok_cases.size()) < limit.ok_cases;
}

bool wants_bad(const Tally& tally, const EvidenceLimit& limit) {
  return static_cast<std::int32_t>(tally.bad_cases.size()) < limit.bad_cases;
}

void count_ok(Tally& tally) {
  ++tally.cases;
  ++tally.ok;
  tally.sum_ppm += kFullPpm;
}

void count_bad(Tally& tally, std::int32_t score_ppm, base::Tick settled, base::Tick since) {
  ++tally.cases;
  ++tally.bad;
  tally.sum_ppm += score_ppm;
  if (score_ppm < tally.min_ppm) tally.min_ppm = score_ppm;
  note_bad(tally, settled, since);
}

void add_case(Tally& tally, const EvidenceLimit& limit, Case made) {
  if (made.status == CaseStatus::Ok) {
    count_ok(tally);
    if (wants_ok(tally, limit)) tally.ok_cases.push_back(std::move(made));
    return;
  }
  if (made.status == CaseStatus::Unknown) {
    ++tally.cases;
    ++tally.unknown;
    if (wants_bad(tally, limit)) tally.bad_cases.push_back(std::move(made));
    return;
  }
  count_bad(tally, made.score_ppm, made.settled_tick, made.since_tick);
  if (tally.worst.empty()) {
    tally.worst.push_back(made);
  } else if (is_worse(made, tally.worst[0])) {
    tally.worst[0] = made;
  }
  if (wants_bad(tally, limit)) tally.bad_cases.push_back(std::move(made));
}

void merge(Tally& into, Tally&& from, const EvidenceLimit& limit) {
  into.cases += from.cases;
  into.ok += from.ok;
  into.bad += from.bad;
  into.unknown += from.unknown;
  into.slips += from.slips;
  into.sum_ppm += from.sum_ppm;
  if (from.min_ppm < into.min_ppm) into.min_ppm = from.min_ppm;
  if (from.bad > 0) note_bad(into, from.bad_settled, from.bad_since);
  for (Case& made : from.bad_cases) {
    if (wants_bad(into, limit)) into.bad_cases.push_back(std::move(made));
  }
  for (Case& made : from.ok_cases) {
    if (wants_ok(into, limit)) into.ok_cases.push_back(std::move(made));
  }
  if (!from.worst.empty() && (into.worst.empty() || is_worse(from.worst[0], into.worst[0]))) {
    into.worst = std::move(from.worst);
  }
}

}  // namespace proofstand::rules

// must, never, count: how often something happened in a stretch.
#include <algorithm>

#include "sim/rules/kinds.h"

namespace proofstand::rules {
namespace {

constexpr std::size_t kMostCites = 8;

PresenceState& state_of(const Work& work) { return work.state.presence[static_cast<std::size_t>(work.rule.slot)]; }

// false when this value was seen before
bool is_new_value(std::vector<double>& values_si, double value_si) {
  const auto at = std::lower_bound(values_si.begin(), values_si.end(), value_si);
  if (at != values_si.end() && *at == value_si) return false;
  values_si.insert(at, value_si);
  return true;
}

std::int32_t lost_score(const Rule& rule, std::int64_t n) {
  if (rule.kind == RuleKind::Never) {
    if (rule.per_slip_ppm <= 0) return 0;
    const std::int64_t left = kFullPpm - rule.per_slip_ppm * n;
    return left > 0 ? static_cast<std::int32_t>(left) : 0;
  }
  if (rule.kind != RuleKind::Count) return 0;
  const std::int64_t miss = n < rule.count_lo ? rule.count_lo - n : n - rule.count_hi;
  if (!rule.bands.empty()) return score_of_miss(rule, static_cast<double>(miss));
  return rule.partial && n < rule.count_lo ? share_ppm(n, rule.count_lo) : 0;
}

void name_missing(const Rule& rule, const PresenceState& state, Case& made) {
  if (rule.distinct < 0) return;
  for (std::int32_t item = 0; item < rule.set_size; ++item) {
    const double value_si = static_cast<double>(item);
    if (!std::binary_search(state.values_si.begin(), state.values_si.end(), value_si)) made.missing.push_back(item);
  }
}

}  // namespace

void open_presence(const Work& work) {
  PresenceState& state = state_of(work);
  state.n = 0;
  state.hits = 0;
  state.settled = kNoTick;
  state.values_si.clear();
  state.cites.clear();
}

void take_presence(const Work& work, const Happening& now) {
  if (!now.is(kBitX)) return;
  const Rule& rule = work.rule;
  PresenceState& state = state_of(work);
  ++state.hits;
  if (rule.distinct >= 0) {
    const auto field = static_cast<std::size_t>(rule.distinct);
    if (!now.record.knows(field)) {
      work.scope.doubt = true;
      return;
    }
    if (!is_new_value(state.values_si, now.record.values[field])) return;
  }
  ++state.n;
  const bool over = rule.count_hi >= 0 && state.n == rule.count_hi + 1;
  const bool reached = rule.count_hi < 0 && state.n == rule.count_lo;
  if (over || reached) state.settled = now.tick;
  const EvidenceLimit& limit = work.program.evidence;
  if (state.cites.size() >= kMostCites || !(wants_bad(work.tally(), limit) || wants_ok(work.tally(), limit))) return;
  Cite cited;
  cited.position = now.position;
  cited.tick = now.tick;
  if (rule.keep_x) {
    cited.has_record = true;
    cited.record = now.record;
  }
  state.cites.push_back(cited);
}

void close_presence(const Work& work, const Ending& ending) {
  const Rule& rule = work.rule;
  const PresenceState& state = state_of(work);
  Tally& tally = work.tally();
  if (rule.kind == RuleKind::Never) tally.slips += state.n;
  const bool few = state.n < rule.count_lo;
  const bool many = rule.count_hi >= 0 && state.n > rule.count_hi;
  const base::Tick settled = state.settled != kNoTick ? state.settled : ending.tick;
  const EvidenceLimit& limit = work.program.evidence;
  if (!few && !many && !wants_ok(tally, limit)) return count_ok(tally);
  if (many && !wants_bad(tally, limit)) return count_bad(tally, lost_score(rule, state.n), settled, settled);
  Case made = stretch_case(work);
  made.cites = state.cites;
  made.settled_tick = settled;
  made.window_to = ending.tick;
  if (rule.kind == RuleKind::Count) {
    const double lo_1 = static_cast<double>(rule.count_lo);
    const double hi_1 = static_cast<double>(rule.count_hi);
    set_figures(made, base::Dimension::Number, &lo_1, rule.count_hi >= 0 ? &hi_1 : nullptr,
                static_cast<double>(state.n));
  }
  if (few) name_missing(rule, state, made);
  if (few && ending.cut_off) {
    made.status = CaseStatus::Unknown;
    made.reason = Reason::CutOff;
    made.score_ppm = 0;
  } else if (few || many) {
    made.status = CaseStatus::Bad;
    made.score_ppm = lost_score(rule, state.n);
    made.reason = many ? Reason::TooMany : Reason::TooFew;
    if (rule.kind == RuleKind::Must) made.reason = Reason::NeverCame;
    if (rule.kind == RuleKind::Never) made.reason = Reason::Happened;
    if (many) made.since_tick = settled;
  }
  add_case(tally, limit, std::move(made));
}

}  // namespace proofstand::rules

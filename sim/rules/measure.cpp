// measure: a figure of an event must lie in a range.
#include <algorithm>

#include "sim/rules/keys.h"
#include "sim/rules/kinds.h"

namespace proofstand::rules {
namespace {

MeasureState& state_of(const Work& work) { return work.state.measures[static_cast<std::size_t>(work.rule.slot)]; }

constexpr double kHuge = 1.7976931348623157e308;

Picked pick_of(const Work& work, const Happening& now) {
  const Rule& rule = work.rule;
  const auto worked_out = [&](std::int32_t expression, double open_si) -> Value {
    if (expression < 0) return {open_si, true};
    return evaluate(work.program.expressions[static_cast<std::size_t>(expression)], &now.record, work.state.fluents);
  };
  Picked picked;
  picked.x = {now.position, now.tick};
  const Value value = worked_out(rule.value, 0.0);
  const Value lo = worked_out(rule.range_lo, -kHuge);
  const Value hi = worked_out(rule.range_hi, kHuge);
  picked.known = value.known && lo.known && hi.known;
  // nothing unknown is ever stored as a number
  if (value.known) picked.value_si = value.value_si;
  if (lo.known) picked.lo_si = lo.value_si;
  if (hi.known) picked.hi_si = hi.value_si;
  if (rule.per >= 0) picked.key_si = now.record.values[static_cast<std::size_t>(rule.per)];
  if (rule.keep_x) picked.record.push_back(now.record);
  return picked;
}

void judge_pick(const Work& work, const Picked& picked, base::Tick settled) {
  const Rule& rule = work.rule;
  Tally& tally = work.tally();
  const bool ok = picked.known && picked.lo_si <= picked.value_si && picked.value_si <= picked.hi_si;
  if (ok && !wants_ok(tally, work.program.evidence)) return count_ok(tally);
  Case made = record_case(work, picked.x);
  made.settled_tick = settled;
  if (rule.per >= 0) made.key = static_cast<std::int64_t>(picked.key_si);
  cite(made, Role::X, picked.x, picked.record.empty() ? nullptr : &picked.record[0]);
  if (!picked.known) {
    made.status = CaseStatus::Unknown;
    made.reason = Reason::ValueMissing;
    made.score_ppm = 0;
    return add_case(tally, work.program.evidence, std::move(made));
  }
  set_figures(made, rule.dimension, rule.range_lo >= 0 ? &picked.lo_si : nullptr,
              rule.range_hi >= 0 ? &picked.hi_si : nullptr, picked.value_si);
  if (!ok) {
    made.status = CaseStatus::Bad;
    const bool below = picked.value_si < picked.lo_si;
    made.reason = below ? Reason::Below : Reason::Above;
    made.score_ppm = score_of_miss(rule, below ? picked.lo_si - picked.value_si : picked.value_si - picked.hi_si);
  }
  add_case(tally, work.program.evidence, std::move(made));
}

}  // namespace

void open_measure(const Work& work) { state_of(work).picked.clear(); }

void take_measure(const Work& work, const Happening& now) {
  if (!now.is(kBitX)) return;
  const Rule& rule = work.rule;
  if (rule.per >= 0 && !now.record.knows(static_cast<std::size_t>(rule.per))) {
    work.scope.doubt = true;
    return;
  }
  Picked picked = pick_of(work, now);
  if (rule.pick == Pick::Each) return judge_pick(work, picked, now.tick);
  std::vector<Picked>& all = state_of(work).picked;
  const auto at = std::lower_bound(all.begin(), all.end(), picked.key_si,
                                   [](const Picked& a, double key_si) { return a.key_si < key_si; });
  const bool there = at != all.end() && at->key_si == picked.key_si;
  if (rule.pick == Pick::First) {
    if (there) return;
    judge_pick(work, picked, now.tick);
  }
  if (there) {
    *at = std::move(picked);
  } else {
    all.insert(at, std::move(picked));
  }
}

void close_measure(const Work& work, const Ending& ending) {
  if (work.rule.pick != Pick::Last) return;
  for (const Picked& picked : state_of(work).picked) judge_pick(work, picked, ending.tick);
}

}  // namespace proofstand::rules

// within, recur: time limits over a stretch.
#include "sim/rules/kinds.h"

namespace proofstand::rules {
namespace {

LimitState& state_of(const Work& work) { return work.state.limits[static_cast<std::size_t>(work.rule.slot)]; }

const event::Record* kept(const LimitState& state, std::size_t which) {
  return state.records.size() > which ? &state.records[which] : nullptr;
}

void judge_within(const Work& work, const LimitState& state, const Ending* ending) {
  const Rule& rule = work.rule;
  Case made = record_case(work, state.x);
  cite(made, Role::X, state.x, rule.keep_x ? kept(state, 0) : nullptr);
  const double hi_s = duration_s(work, rule.within);
  const base::Tick due = state.x.tick + rule.within;
  if (ending == nullptr) {
    cite(made, Role::Y, state.y, rule.keep_y ? kept(state, 1) : nullptr);
    const base::Tick took = state.y.tick - state.x.tick;
    set_figures(made, base::Dimension::Time, nullptr, &hi_s, duration_s(work, took));
    made.settled_tick = took > rule.within ? due + 1 : state.y.tick;
    made.window_to = state.y.tick;
    if (took > rule.within) {
      made.status = CaseStatus::Bad;
      made.reason = Reason::Late;
      made.score_ppm = score_of_miss(rule, duration_s(work, took - rule.within));
    }
    return add_case(work.tally(), work.program.evidence, std::move(made));
  }
  const bool late = due < ending->tick;
  set_figures(made, base::Dimension::Time, nullptr, &hi_s, duration_s(work, ending->tick - state.x.tick));
  made.settled_tick = late ? due + 1 : ending->tick;
  made.window_to = ending->tick;
  made.score_ppm = 0;
  made.status = ending->cut_off && !late ? CaseStatus::Unknown : CaseStatus::Bad;
  made.reason = ending->cut_off && !late ? Reason::CutOff : (late ? Reason::Late : Reason::EndedOpen);
  add_case(work.tally(), work.program.evidence, std::move(made));
}

void take_within(const Work& work, const Happening& now, LimitState& state) {
  const bool waiting = state.x.position != kNoPosition && state.y.position == kNoPosition;
  if (now.is(kBitY) && waiting) {
    state.y = {now.position, now.tick};
    state.settled = now.tick;
    if (work.rule.keep_y) {
      state.records.resize(2);
      state.records[1] = now.record;
    }
    return judge_within(work, state, nullptr);
  }
  if (!now.is(kBitX) || state.x.position != kNoPosition) return;
  state.x = {now.position, now.tick};
  if (work.rule.keep_x || work.rule.keep_y) state.records.assign(1, now.record);
}

// the stretch of time from the last x to this tick
void count_gap(const Work& work, LimitState& state, base::Tick tick) {
  const base::Tick from = state.x.tick;
  const base::Tick gap = tick - from;
  if (gap > work.rule.duration && state.settled == kNoTick) state.settled = from + work.rule.duration + 1;
  if (gap <= state.worst && state.worst_from != kNoTick) return;
  state.worst = gap;
  state.worst_from = from;
}

void close_recur(const Work& work, const Ending& ending, LimitState& state) {
  count_gap(work, state, ending.tick);
  Case made = stretch_case(work);
  const double hi_s = duration_s(work, work.rule.duration);
  set_figures(made, base::Dimension::Time, nullptr, &hi_s, duration_s(work, state.worst));
  made.window_from = state.worst_from;
  made.window_to = state.worst_from + state.worst;
  made.settled_tick = state.settled != kNoTick ? state.settled : ending.tick;
  if (state.worst > work.rule.duration) {
    made.status = CaseStatus::Bad;
    made.reason = Reason::GapTooLong;
    made.score_ppm = 0;
    made.since_tick = made.settled_tick;
  }
  add_case(work.tally(), work.program.evidence, std::move(made));
}

}  // namespace

void open_limit(const Work& work) {
  LimitState& state = state_of(work);
  state = LimitState{};
  if (work.rule.kind == RuleKind::Recur) state.x.tick = work.scope.a_tick;
}

void take_limit(const Work& work, const Happening& now) {
  LimitState& state = state_of(work);
  if (work.rule.kind == RuleKind::Within) return take_within(work, now, state);
  if (!now.is(kBitX)) return;
  count_gap(work, state, now.tick);
  state.x = {now.position, now.tick};
  ++state.n;
}

void close_limit(const Work& work, const Ending& ending) {
  LimitState& state = state_of(work);
  if (work.rule.kind == RuleKind::Recur) return close_recur(work, ending, state);
  if (state.x.position != kNoPosition && state.y.position == kNoPosition) judge_within(work, state, &ending);
}

}  // namespace proofstand::rules

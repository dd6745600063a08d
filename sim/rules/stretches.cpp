// hold, steady, keep: how long a condition was true or false. Time is counted when it has passed, so an interval of no
// length counts for nothing.
#include <algorithm>

#include "sim/rules/kinds.h"

namespace proofstand::rules {
namespace {

ConditionState& state_of(const Work& work) { return work.state.conditions[static_cast<std::size_t>(work.rule.slot)]; }

Truth condition_now(const Work& work) {
  const Expression& condition = work.program.expressions[static_cast<std::size_t>(work.rule.condition)];
  return truth_of(condition, nullptr, work.state.fluents);
}

void count_yes(const Work& work, ConditionState& state, base::Tick tick) {
  if (work.scope.open && work.rule.kind == RuleKind::Hold) {
    const base::Tick from = std::max({state.no_end, state.unknown_end, work.scope.a_tick});
    const base::Tick length = tick - from;
    if (length > state.best) {
      state.best = length;
      state.best_from = from;
    }
    if (length >= work.rule.duration && state.settled == kNoTick) state.settled = from + work.rule.duration;
  }
  state.yes_end = tick;
}

void count_no(const Work& work, ConditionState& state, base::Tick tick) {
  if (work.scope.open) {
    const base::Tick from = std::max(state.to, work.scope.a_tick);
    const base::Tick length = tick - from;
    const base::Tick budget = work.rule.budget;
    const bool keeps = work.rule.kind == RuleKind::Keep;
    if (keeps && state.no_ticks <= budget && state.no_ticks + length > budget) {
      state.settled = from + (budget - state.no_ticks) + 1;
    }
    if (state.no_ticks == 0 && length > 0) state.first_no = {state.turned.position, from};
    state.no_ticks += length;
    const base::Tick since = std::max({state.yes_end, state.unknown_end, work.scope.a_tick});
    if (tick - since > state.longest_no) {
      state.longest_no = tick - since;
      state.longest_no_from = since;
    }
  }
  state.no_end = tick;
}

void close_hold(const Work& work, const Ending& ending, const ConditionState& state, Case& made) {
  const Rule& rule = work.rule;
  const double lo_s = duration_s(work, rule.duration);
  set_figures(made, base::Dimension::Time, &lo_s, nullptr, duration_s(work, state.best));
  if (state.best_from != kNoTick) {
    made.window_from = state.best_from;
    made.window_to = state.best_from + state.best;
  }
  if (state.best >= rule.duration) {
    made.settled_tick = state.settled;
    made.since_tick = state.settled;
    return;
  }
  made.score_ppm = 0;
  if (state.unknown_ticks > 0 || ending.cut_off) {
    made.status = CaseStatus::Unknown;
    made.reason = state.unknown_ticks > 0 ? Reason::ValueMissing : Reason::CutOff;
    return;
  }
  made.status = CaseStatus::Bad;
  made.reason = Reason::TooShort;
  if (!rule.bands.empty()) {
    made.score_ppm = score_of_miss(rule, duration_s(work, rule.duration - state.best));
  } else if (rule.partial) {
    made.score_ppm = share_ppm(state.best, rule.duration);
  }
}

void close_keep(const Work& work, const ConditionState& state, Case& made) {
  const Rule& rule = work.rule;
  const double hi_s = duration_s(work, rule.budget);
  set_figures(made, base::Dimension::Time, nullptr, &hi_s, duration_s(work, state.no_ticks));
  if (state.first_no.position != kNoPosition) cite(made, Role::False, state.first_no, nullptr);
  if (state.longest_no_from != kNoTick) {
    made.window_from = state.longest_no_from;
    made.window_to = state.longest_no_from + state.longest_no;
  }
  const base::Tick excess = state.no_ticks - rule.budget;
  if (excess <= 0) {
    if (excess + state.unknown_ticks <= 0) return;
    made.status = CaseStatus::Unknown;
    made.reason = Reason::ValueMissing;
    made.score_ppm = 0;
    return;
  }
  made.status = CaseStatus::Bad;
  made.reason = Reason::NotKept;
  made.settled_tick = state.settled;
  made.since_tick = state.settled;
  made.score_ppm = 0;
  if (!rule.bands.empty()) {
    made.score_ppm = score_of_miss(rule, duration_s(work, excess));
  } else if (rule.partial) {
    made.score_ppm = share_ppm(rule.budget - excess, rule.budget);
  }
}

}  // namespace

void open_condition(const Work& work, base::Tick tick) {
  ConditionState& state = state_of(work);
  if (tick == 0 && state.to == 0) state.value = condition_now(work);
  state.best = 0;
  state.best_from = kNoTick;
  state.settled = kNoTick;
  state.no_ticks = 0;
  state.unknown_ticks = 0;
  state.first_no = {};
  state.longest_no = 0;
  state.longest_no_from = kNoTick;
}

void pass_time_condition(const Work& work, base::Tick tick) {
  ConditionState& state = state_of(work);
  if (tick <= state.to) return;
  switch (state.value) {
    case Truth::Yes:
      count_yes(work, state, tick);
      break;
    case Truth::No:
      count_no(work, state, tick);
      break;
    case Truth::Unknown:
      if (work.scope.open) state.unknown_ticks += tick - std::max(state.to, work.scope.a_tick);
      state.unknown_end = tick;
      break;
  }
  state.to = tick;
}

void turn_condition(const Work& work, const Happening& now) {
  ConditionState& state = state_of(work);
  const Truth value = condition_now(work);
  if (value == state.value) return;
  state.value = value;
  state.turned = {now.position, now.tick};
}

void take_steady(const Work& work, const Happening& now) {
  if (work.rule.kind != RuleKind::Steady || !now.is(kBitX)) return;
  const ConditionState& state = state_of(work);
  const Rule& rule = work.rule;
  const base::Tick from = now.tick - rule.duration;
  Case made = record_case(work, {now.position, now.tick});
  cite(made, Role::X, {now.position, now.tick}, rule.keep_x ? &now.record : nullptr);
  made.window_from = from;
  const double lo_s = duration_s(work, rule.duration);
  const double found_s = duration_s(work, now.tick - std::max(state.no_end, state.unknown_end));
  set_figures(made, base::Dimension::Time, &lo_s, nullptr, found_s);
  if (from < 0 || state.no_end > from) {
    made.status = CaseStatus::Bad;
    made.reason = Reason::TooShort;
    made.score_ppm = 0;
  } else if (state.unknown_end > from) {
    made.status = CaseStatus::Unknown;
    made.reason = Reason::ValueMissing;
    made.score_ppm = 0;
  }
  add_case(work.tally(), work.program.evidence, std::move(made));
}

void close_condition(const Work& work, const Ending& ending) {
  if (work.rule.kind == RuleKind::Steady) return;
  pass_time_condition(work, ending.tick);
  const ConditionState& state = state_of(work);
  Case made = stretch_case(work);
  made.settled_tick = ending.tick;
  made.window_to = ending.tick;
  if (work.rule.kind == RuleKind::Hold) {
    close_hold(work, ending, state, made);
  } else {
    close_keep(work, state, made);
  }
  add_case(work.tally(), work.program.evidence, std::move(made));
}

}  // namespace proofstand::rules

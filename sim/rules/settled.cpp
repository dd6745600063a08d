#include "sim/rules/settled.h"

#include <algorithm>

namespace proofstand::rules {
namespace {

// deadline passed: lost from the first moment after it
base::Tick after(base::Tick due, base::Tick now) { return now > due ? due + 1 : kNoTick; }

base::Tick broken_condition(const Rule& rule, const ConditionState& state, const ScopeState& scope, base::Tick now) {
  if (rule.kind != RuleKind::Keep) return kNoTick;
  if (state.no_ticks > rule.budget) return state.settled;
  if (state.value != Truth::No) return kNoTick;
  const base::Tick from = std::max(state.to, scope.a_tick);
  return after(from + (rule.budget - state.no_ticks), now);
}

// what an open stretch has already lost, though its case is only made at its end
base::Tick broken_open(const EngineState& state, const Rule& rule, const ScopeState& scope) {
  const auto slot = static_cast<std::size_t>(rule.slot);
  switch (rule.kind) {
    case RuleKind::Must:
    case RuleKind::Never:
    case RuleKind::Count: {
      const PresenceState& presence = state.presence[slot];
      return rule.count_hi >= 0 && presence.n > rule.count_hi ? presence.settled : kNoTick;
    }
    case RuleKind::Leads: {
      const base::Tick due = state.leads[slot].next_due;
      return due == kNoTick ? kNoTick : after(due, state.tick);
    }
    case RuleKind::Hold:
    case RuleKind::Steady:
    case RuleKind::Keep:
      return broken_condition(rule, state.conditions[slot], scope, state.tick);
    case RuleKind::Rounds: {
      const RoundsState& rounds = state.rounds[slot];
      return rule.strict && rounds.conforming < rounds.complete ? rounds.settled : kNoTick;
    }
    case RuleKind::Within: {
      const LimitState& limit = state.limits[slot];
      const bool waiting = limit.x.position != kNoPosition && limit.y.position == kNoPosition;
      return waiting ? after(limit.x.tick + rule.within, state.tick) : kNoTick;
    }
    case RuleKind::Recur: {
      const LimitState& limit = state.limits[slot];
      return limit.settled != kNoTick ? limit.settled : after(limit.x.tick + rule.duration, state.tick);
    }
    case RuleKind::Needs:
    case RuleKind::Order:
    case RuleKind::Measure:
    case RuleKind::AnyOf:
    case RuleKind::AllOf:
    case RuleKind::AtLeast:
      return kNoTick;
  }
  return kNoTick;
}

base::Tick met_hold(const Rule& rule, const ConditionState& state, const ScopeState& scope, base::Tick now) {
  if (state.settled != kNoTick) return state.settled;
  if (state.value != Truth::Yes) return kNoTick;
  const base::Tick from = std::max({state.no_end, state.unknown_end, scope.a_tick});
  return now >= from + rule.duration ? from + rule.duration : kNoTick;
}

base::Tick met_order(const Rule& rule, const OrderState& order) {
  if (!rule.first) {
    const bool whole = order.longest == static_cast<std::int32_t>(rule.steps.size());
    return whole ? order.chains[static_cast<std::size_t>(order.longest_end)].back().tick : kNoTick;
  }
  base::Tick last = 0;
  for (const Mark& first : order.firsts) {
    if (first.position == kNoPosition) return kNoTick;
    last = std::max(last, first.tick);
  }
  return last;
}

base::Tick met_measure(const Rule& rule, const MeasureState& measure) {
  const std::size_t wanted = rule.per < 0 ? 1 : static_cast<std::size_t>(rule.set_size);
  if (rule.pick != Pick::First || wanted == 0 || measure.picked.size() < wanted) return kNoTick;
  base::Tick last = 0;
  for (const Picked& picked : measure.picked) last = std::max(last, picked.x.tick);
  return last;
}

base::Tick met_open(const EngineState& state, const Rule& rule, const ScopeState& scope) {
  const auto slot = static_cast<std::size_t>(rule.slot);
  switch (rule.kind) {
    case RuleKind::Must:
    case RuleKind::Count: {
      const PresenceState& presence = state.presence[slot];
      if (rule.count_hi >= 0 || presence.n < rule.count_lo) return kNoTick;
      return rule.count_lo == 0 ? scope.a_tick : presence.settled;
    }
    case RuleKind::Hold:
      return met_hold(rule, state.conditions[slot], scope, state.tick);
    case RuleKind::Order:
      return met_order(rule, state.orders[slot]);
    case RuleKind::Measure:
      return met_measure(rule, state.measures[slot]);
    case RuleKind::Rounds: {
      const RoundsState& rounds = state.rounds[slot];
      const bool sure = !rule.strict && rule.per_slip_ppm == 0 && rounds.conforming >= rule.passes;
      return sure ? rounds.settled : kNoTick;
    }
    case RuleKind::Within: {
      const LimitState& limit = state.limits[slot];
      return limit.y.position != kNoPosition ? limit.settled : kNoTick;
    }
    default:
      return kNoTick;
  }
}

}  // namespace

base::Tick broken_since(const RuleProgram& program, const EngineState& state, RuleIndex index) {
  const auto i = static_cast<std::size_t>(index);
  const Rule& rule = program.rules[i];
  const ScopeState& scope = state.scopes[i];
  // a stretch that may still be thrown away proves nothing
  const base::Tick open = scope.open && !rule.discards ? broken_open(state, rule, scope) : kNoTick;
  const base::Tick kept = state.kept[i].bad > 0 ? state.kept[i].bad_settled : kNoTick;
  if (open == kNoTick || kept == kNoTick) return open == kNoTick ? kept : open;
  return std::min(open, kept);
}

base::Tick met_since(const RuleProgram& program, const EngineState& state, RuleIndex index) {
  const auto i = static_cast<std::size_t>(index);
  const Rule& rule = program.rules[i];
  const ScopeState& scope = state.scopes[i];
  const Tally& tally = state.kept[i];
  if (scope.doubt || tally.bad > 0 || tally.unknown > 0) return kNoTick;
  const bool once = rule.form == ScopeForm::BeforeFirst || rule.form == ScopeForm::UntilFirst;
  if (once && scope.over && tally.cases > 0) {
    return tally.ok_cases.empty() ? state.tick : std::max(tally.ok_cases[0].b_tick, base::Tick{0});
  }
  const bool single =
      rule.form == ScopeForm::Run || rule.form == ScopeForm::AfterFirst || rule.form == ScopeForm::UntilFirst;
  return single && scope.open ? met_open(state, rule, scope) : kNoTick;
}

}  // namespace proofstand::rules

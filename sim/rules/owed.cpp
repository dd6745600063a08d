// What a rule still waits for.
#include "sim/rules/owed.h"

#include <algorithm>

namespace proofstand::rules {
namespace {

Owed owe(Role role, std::int64_t item = -1, base::Tick due = kNoTick) {
  Owed owed;
  owed.role = role;
  owed.item = item;
  owed.due_tick = due;
  return owed;
}

void owe_presence(const Rule& rule, const PresenceState& state, std::vector<Owed>& owed) {
  if (state.n >= rule.count_lo) return;
  if (rule.distinct < 0 || rule.set_size == 0) return owed.push_back(owe(Role::X));
  for (std::int32_t item = 0; item < rule.set_size; ++item) {
    const double value_si = static_cast<double>(item);
    if (!std::binary_search(state.values_si.begin(), state.values_si.end(), value_si))
      owed.push_back(owe(Role::X, item));
  }
}

bool serves_next(const Rule& rule, const NeedsKey& key) {
  return key.last.position != kNoPosition && key.undone.position <= key.last.position &&
         !(rule.fresh && key.last.position <= key.previous_x);
}

// what must come before the next x
void owe_needs(const Rule& rule, const NeedsState& state, std::vector<Owed>& owed) {
  if (rule.same_x < 0) {
    if (!serves_next(rule, state.only)) owed.push_back(owe(Role::Y));
    return;
  }
  for (std::int32_t item = 0; item < rule.set_size; ++item) {
    bool serves = false;
    for (std::size_t k = 0; k < state.keys.size(); ++k) {
      if (state.key_values_si[k] == static_cast<double>(item)) serves = serves_next(rule, state.keys[k]);
    }
    if (!serves) owed.push_back(owe(Role::Y, item));
  }
}

void owe_leads(const Rule& rule, const LeadsState& state, std::vector<Owed>& owed) {
  for (std::size_t k = 0; k < state.keys.size(); ++k) {
    for (std::size_t w = state.from[k]; w < state.keys[k].size(); ++w) {
      const Waiting& waiting = state.keys[k][w];
      const base::Tick due = rule.within >= 0 ? waiting.x.tick + rule.within : kNoTick;
      owed.push_back(owe(Role::Y, rule.same_x >= 0 ? static_cast<std::int64_t>(waiting.key_si) : -1, due));
    }
  }
}

void owe_order(const Rule& rule, const OrderState& state, std::vector<Owed>& owed) {
  std::vector<bool> reached(rule.steps.size(), false);
  if (rule.first) {
    for (std::size_t s = 0; s < state.firsts.size(); ++s) reached[s] = state.firsts[s].position != kNoPosition;
  } else if (state.longest > 0) {
    for (std::int32_t s : state.chain_steps[static_cast<std::size_t>(state.longest_end)]) {
      reached[static_cast<std::size_t>(s)] = true;
    }
  }
  for (std::size_t s = 0; s < reached.size(); ++s) {
    if (reached[s]) continue;
    Owed step = owe(Role::Step);
    step.step = static_cast<std::int32_t>(s);
    owed.push_back(step);
  }
}

void owe_hold(const Rule& rule, const ConditionState& state, const ScopeState& scope, base::Tick now,
              std::vector<Owed>& owed) {
  if (rule.kind != RuleKind::Hold || state.best >= rule.duration) return;
  base::Tick held = 0;
  if (state.value == Truth::Yes) held = now - std::max({state.no_end, state.unknown_end, scope.a_tick});
  if (held >= rule.duration) return;
  Owed more = owe(Role::X);
  more.still_ticks = rule.duration - held;
  owed.push_back(more);
}

void owe_measure(const Rule& rule, const MeasureState& state, std::vector<Owed>& owed) {
  if (rule.pick != Pick::Last) return;
  for (const Picked& picked : state.picked) {
    const bool inside = picked.known && picked.lo_si <= picked.value_si && picked.value_si <= picked.hi_si;
    if (!inside) owed.push_back(owe(Role::X, rule.per >= 0 ? static_cast<std::int64_t>(picked.key_si) : -1));
  }
}

void owe_rounds(const Rule& rule, const RoundsState& state, std::vector<Owed>& owed) {
  if (state.conforming >= rule.passes || (state.x == 0 && rule.if_any)) return;
  for (std::int32_t item = 0; item < rule.set_size; ++item) {
    if ((state.seen >> item & 1u) == 0) owed.push_back(owe(Role::X, item));
  }
}

void owe_limit(const Rule& rule, const LimitState& state, std::vector<Owed>& owed) {
  if (rule.kind == RuleKind::Recur) return owed.push_back(owe(Role::X, -1, state.x.tick + rule.duration));
  if (state.x.position == kNoPosition || state.y.position != kNoPosition) return;
  owed.push_back(owe(Role::Y, -1, state.x.tick + rule.within));
}

}  // namespace

std::vector<Owed> owed_by(const RuleProgram& program, const EngineState& state, RuleIndex index) {
  const auto i = static_cast<std::size_t>(index);
  const Rule& rule = program.rules[i];
  const ScopeState& scope = state.scopes[i];
  std::vector<Owed> owed;
  if (!scope.open) {
    if (rule.required && scope.counted == 0 && !scope.over && rule.open.given()) owed.push_back(owe(Role::Open));
    return owed;
  }
  const auto slot = static_cast<std::size_t>(rule.slot);
  switch (rule.kind) {
    case RuleKind::Must:
    case RuleKind::Never:
    case RuleKind::Count:
      owe_presence(rule, state.presence[slot], owed);
      break;
    case RuleKind::Needs:
      owe_needs(rule, state.needs[slot], owed);
      break;
    case RuleKind::Leads:
      owe_leads(rule, state.leads[slot], owed);
      break;
    case RuleKind::Order:
      owe_order(rule, state.orders[slot], owed);
      break;
    case RuleKind::Hold:
    case RuleKind::Steady:
    case RuleKind::Keep:
      owe_hold(rule, state.conditions[slot], scope, state.tick, owed);
      break;
    case RuleKind::Measure:
      owe_measure(rule, state.measures[slot], owed);
      break;
    case RuleKind::Rounds:
      owe_rounds(rule, state.rounds[slot], owed);
      break;
    case RuleKind::Within:
    case RuleKind::Recur:
      owe_limit(rule, state.limits[slot], owed);
      break;
    case RuleKind::AnyOf:
    case RuleKind::AllOf:
    case RuleKind::AtLeast:
      break;
  }
  return owed;
}

}  // namespace proofstand::rules

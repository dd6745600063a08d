// What of a state can still matter. Ages are cut off behind the bounds, counts behind what is asked.
#include <algorithm>

#include "sim/rules/search_parts.h"

namespace proofstand::rules {
namespace {

class Shape {
 public:
  Shape(const RuleProgram& program, const EngineState& state) : program_(program), state_(state) {}

  std::string words() {
    for (const Fluent& fluent : state_.fluents) {
      put(fluent.known ? 1 : 0);
      if (fluent.known) real(fluent.value_si);
    }
    for (std::size_t i = 0; i < program_.rules.size(); ++i) rule(i);
    return std::move(text_);
  }

 private:
  void put(std::int64_t number) {
    for (int byte = 0; byte < 4; ++byte) text_.push_back(static_cast<char>(number >> (8 * byte)));
  }
  void real(double number) { text_.append(reinterpret_cast<const char*>(&number), sizeof number); }
  void capped(std::int64_t number, std::int64_t most) { put(std::min(number, most)); }

  // longest bound of the rule: an age beyond it is as good as any other
  void age(const Rule& rule, const Mark& mark) {
    if (mark.position == kNoPosition) return put(-1);
    const base::Tick bound = std::max({rule.within, rule.gap, rule.duration, base::Tick{0}});
    capped(bound > 0 ? state_.tick - mark.tick : 0, bound + 1);
  }

  void rule(std::size_t i) {
    const Rule& rule = program_.rules[i];
    const ScopeState& scope = state_.scopes[i];
    for (const Tally* tally : {&state_.kept[i], &state_.current[i]}) {
      put((tally->ok > 0 ? 1 : 0) + (tally->bad > 0 ? 2 : 0) + (tally->unknown > 0 ? 4 : 0));
    }
    put((scope.open ? 1 : 0) + (scope.over ? 2 : 0) + (scope.counted > 0 ? 4 : 0));
    const auto slot = static_cast<std::size_t>(rule.slot);
    switch (rule.kind) {
      case RuleKind::Must:
      case RuleKind::Never:
      case RuleKind::Count: {
        const PresenceState& presence = state_.presence[slot];
        capped(presence.n, std::max(rule.count_lo, rule.count_hi + 1));
        for (double value_si : presence.values_si) real(value_si);
        break;
      }
      case RuleKind::Needs:
        needs(rule, state_.needs[slot]);
        break;
      case RuleKind::Leads:
        leads(rule, state_.leads[slot]);
        break;
      case RuleKind::Order:
        for (std::int32_t best : state_.orders[slot].best) put(best);
        for (const Mark& first : state_.orders[slot].firsts) put(first.position == kNoPosition ? 0 : 1);
        break;
      case RuleKind::Hold:
      case RuleKind::Steady:
      case RuleKind::Keep:
        condition(rule, state_.conditions[slot]);
        break;
      case RuleKind::Measure:
        for (const Picked& picked : state_.measures[slot].picked) {
          real(picked.key_si);
          put(picked.lo_si <= picked.value_si && picked.value_si <= picked.hi_si ? 1 : 0);
        }
        break;
      case RuleKind::Rounds: {
        const RoundsState& rounds = state_.rounds[slot];
        for (std::uint8_t item : rounds.pass) put(item);
        put(-1);
        capped(rounds.conforming, rule.passes);
        put((rounds.x > 0 ? 1 : 0) + (rounds.slips > 0 ? 2 : 0) + (rounds.conforming < rounds.complete ? 4 : 0));
        break;
      }
      case RuleKind::Within:
      case RuleKind::Recur: {
        const LimitState& limit = state_.limits[slot];
        age(rule, limit.x);
        put((limit.y.position != kNoPosition ? 1 : 0) + (limit.settled != kNoTick ? 2 : 0));
        if (rule.kind == RuleKind::Recur) capped(state_.tick - limit.x.tick, rule.duration + 1);
        break;
      }
      case RuleKind::AnyOf:
      case RuleKind::AllOf:
      case RuleKind::AtLeast:
        break;
    }
  }

  void needs_key(const Rule& rule, const NeedsKey& key) {
    age(rule, key.last);
    age(rule, key.ripe);
    put((key.undone.position > key.last.position ? 1 : 0) + (key.undone.position > key.ripe.position ? 2 : 0) +
        (key.last.position <= key.previous_x ? 4 : 0) + (key.ripe.position <= key.previous_x ? 8 : 0));
    for (std::size_t y = key.young_from; y < key.young.size(); ++y) age(rule, key.young[y]);
  }
  void needs(const Rule& rule, const NeedsState& state) {
    needs_key(rule, state.only);
    for (std::size_t k = 0; k < state.keys.size(); ++k) {
      real(state.key_values_si[k]);
      needs_key(rule, state.keys[k]);
    }
  }

  void leads(const Rule& rule, const LeadsState& state) {
    for (std::size_t k = 0; k < state.keys.size(); ++k) {
      // without one_each the oldest speaks for all that wait
      const std::size_t n = state.keys[k].size() - state.from[k];
      real(state.key_values_si[k]);
      put(static_cast<std::int64_t>(rule.one_each ? n : std::min<std::size_t>(n, 1)));
      if (n > 0) age(rule, state.keys[k][state.from[k]].x);
    }
  }

  void condition(const Rule& rule, const ConditionState& state) {
    put(static_cast<std::int64_t>(state.value));
    const base::Tick held = state_.tick - std::max(state.no_end, state.unknown_end);
    capped(held, std::max(rule.duration, rule.budget) + 1);
    capped(state.no_ticks, rule.budget + 1);
    put(state.best >= rule.duration ? 1 : 0);
  }

  const RuleProgram& program_;
  const EngineState& state_;
  std::string text_;
};

}  // namespace

std::string shape_of(const RuleProgram& program, const EngineState& state) { return Shape(program, state).words(); }

}  // namespace proofstand::rules

#include "sim/rules/engine.h"

#include <algorithm>

#include "sim/rules/fast_paths.h"
#include "sim/rules/scopes.h"
#include "sim/rules/settled.h"
#include "sim/rules/verdicts.h"

namespace proofstand::rules {
namespace {

struct Roles {
  std::uint8_t bits = 0;
  std::int8_t step = -1;
};

Roles try_probes(const RuleProgram& program, EngineState& state, const Subscription& reader,
                 const event::Record& record) {
  Roles roles{reader.bits, reader.step};
  for (std::uint16_t i = 0; i < reader.probes; ++i) {
    const Probe& probe = program.probes[reader.first_probe + i];
    const Expression& where = program.expressions[static_cast<std::size_t>(probe.where)];
    switch (truth_of(where, &record, state.fluents)) {
      case Truth::Yes:
        roles.bits = static_cast<std::uint8_t>(roles.bits | probe.bits);
        if (probe.step >= 0) roles.step = probe.step;
        break;
      case Truth::Unknown: {
        // only where the answer would have mattered
        ScopeState& scope = state.scopes[static_cast<std::size_t>(reader.rule)];
        const bool delimits = (probe.bits & (kBitOpen | kBitClose)) != 0;
        const bool looks = program.rules[static_cast<std::size_t>(reader.rule)].look_run;
        if (scope.open || delimits || looks) scope.doubt = true;
        break;
      }
      case Truth::No:
        break;
    }
  }
  return roles;
}

void take(const RuleProgram& program, EngineState& state, const event::Record& record, Position position,
          std::vector<event::Record>& made) {
  if (record.kind >= program.is_fluent.size()) return;
  if (program.is_fluent[record.kind] != 0) {
    state.fluents[record.kind] = {record.knows(0) ? record.values[0] : 0.0,
                                  record.knows(0) && record.values[0] == record.values[0]};
  }
  const std::uint32_t end = program.first_of_kind[record.kind + 1u];
  for (std::uint32_t s = program.first_of_kind[record.kind]; s < end; ++s) {
    const Subscription& reader = program.subscriptions[s];
    if (take_fast(program, state, reader, record, position)) continue;
    Roles roles{reader.bits, reader.step};
    if (reader.probes > 0) roles = try_probes(program, state, reader, record);
    if (roles.bits == 0 && roles.step < 0) continue;
    const auto i = static_cast<std::size_t>(reader.rule);
    const Work work{program, state, reader.rule, program.rules[i], state.scopes[i], &made};
    step_rule(work, {record, position, record.tick, roles.bits, roles.step});
  }
}

}  // namespace

EngineState start(const RuleProgram& program) {
  EngineState state;
  const std::size_t n = program.rules.size();
  state.fluents.resize(program.vocabulary.kinds.size());
  state.scopes.resize(n);
  state.kept.resize(n);
  state.current.resize(n);
  for (const Rule& rule : program.rules) {
    switch (rule.kind) {
      case RuleKind::Must:
      case RuleKind::Never:
      case RuleKind::Count:
        state.presence.emplace_back();
        break;
      case RuleKind::Needs:
        state.needs.emplace_back();
        break;
      case RuleKind::Leads:
        state.leads.emplace_back();
        break;
      case RuleKind::Order:
        state.orders.emplace_back();
        break;
      case RuleKind::Hold:
      case RuleKind::Steady:
      case RuleKind::Keep:
        state.conditions.emplace_back();
        break;
      case RuleKind::Measure:
        state.measures.emplace_back();
        break;
      case RuleKind::Rounds:
        state.rounds.emplace_back();
        break;
      case RuleKind::Within:
      case RuleKind::Recur:
        state.limits.emplace_back();
        break;
      case RuleKind::AnyOf:
      case RuleKind::AllOf:
      case RuleKind::AtLeast:
        break;
    }
  }
  for (std::size_t i = 0; i < n; ++i) begin_scope(work_on(program, state, static_cast<RuleIndex>(i)));
  return state;
}

void feed(const RuleProgram& program, EngineState& state, const event::Record& record) {
  STAND_ASSERT(record.tick >= state.tick);
  state.tick = record.tick;
  const Position position = state.next++;
  // records that rules make follow at once, and may make more
  std::vector<event::Record> made;
  take(program, state, record, position, made);
  for (std::size_t i = 0; i < made.size(); ++i) {
    const event::Record follows = made[i];
    take(program, state, follows, position, made);
  }
}

void advance(const RuleProgram& program, EngineState& state, base::Tick tick) {
  STAND_ASSERT(tick >= state.tick);
  state.tick = tick;
  for (RuleIndex index : program.timed) pass_time(work_on(program, state, index), tick);
}

Report finish(const RuleProgram& program, const EngineState& state, base::Tick end_tick, event::EndReason end) {
  STAND_ASSERT(end_tick >= state.tick);
  EngineState last = state;
  const bool cut_off = end == event::EndReason::Aborted || end == event::EndReason::Stopped;
  const Ending ending{last.next, end_tick, cut_off};
  Report report;
  report.end_tick = end_tick;
  report.end = end;
  report.rules.resize(program.rules.size());
  // composites come after their children in this order
  for (RuleIndex index : program.children_first) {
    const auto i = static_cast<std::size_t>(index);
    if (!program.rules[i].children.empty()) {
      judge_composite(program, index, end_tick, report.rules);
      continue;
    }
    end_scope(work_on(program, last, index), ending);
    report.rules[i] = result_of(program, last, index, end_tick, cut_off);
  }
  apply_excuses(program, last, report.rules);
  add_up(program, report);
  return report;
}

Report judge(const RuleProgram& program, const event::Trace& trace) {
  EngineState state = start(program);
  for (const event::Record& record : trace.records) feed(program, state, record);
  return finish(program, state, trace.end_tick, trace.end);
}

std::optional<StopRequest> stop_asked(const RuleProgram& program, const EngineState& state) {
  for (RuleIndex index : program.stops) {
    const base::Tick broken = broken_since(program, state, index);
    if (broken != kNoTick && broken <= state.tick) return StopRequest{index, broken};
  }
  return std::nullopt;
}

}  // namespace proofstand::rules

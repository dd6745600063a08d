#include "sim/record/replay_check.h"

#include "sim/base/hash.h"
#include "sim/base/number_text.h"
#include "sim/bench/bench.h"
#include "sim/event/job_events.h"

namespace proofstand::record {
namespace {

std::string value_text(const event::Record& record, std::size_t field) {
  return record.knows(field) ? base::text_from_double(record.values[field]) : "unknown";
}

std::string event_number(std::size_t index) { return base::text_from_int(static_cast<std::int64_t>(index)); }

// an attempt that was stopped from outside ends at the recorded tick, not at an action
void run_out(bench::Bench& bench, base::Tick end) {
  if (!bench.over() && bench.tick() < end) bench.advance_to(end);
}

}  // namespace

std::optional<Divergence> first_difference(const event::Vocabulary& vocabulary,
                                           const std::vector<event::Record>& recorded,
                                           const std::vector<event::Record>& replayed) {
  const std::size_t both = recorded.size() < replayed.size() ? recorded.size() : replayed.size();
  for (std::size_t i = 0; i < both; ++i) {
    const event::Record& a = recorded[i];
    const event::Record& b = replayed[i];
    const std::string& name = vocabulary.kinds[a.kind].name;
    if (a.kind != b.kind) {
      return Divergence{
          a.tick, "event " + event_number(i) + ": recorded " + name + ", replayed " + vocabulary.kinds[b.kind].name};
    }
    if (a.tick != b.tick) {
      return Divergence{a.tick < b.tick ? a.tick : b.tick, name + ", tick of event " + event_number(i) + ": recorded " +
                                                               base::text_from_int(a.tick) + ", replayed " +
                                                               base::text_from_int(b.tick)};
    }
    const std::vector<event::Field>& fields = vocabulary.kinds[a.kind].fields;
    for (std::size_t f = 0; f < fields.size(); ++f) {
      const bool same = a.knows(f) == b.knows(f) && (!a.knows(f) || a.values[f] == b.values[f]);
      if (same) continue;
      return Divergence{a.tick, name + ", " + fields[f].name + " of event " + event_number(i) + ": recorded " +
                                    value_text(a, f) + ", replayed " + value_text(b, f)};
    }
  }
  if (recorded.size() == replayed.size()) return std::nullopt;
  const bool more = replayed.size() > recorded.size();
  const event::Record& extra = more ? replayed[both] : recorded[both];
  return Divergence{extra.tick, "event " + event_number(both) + " (" + vocabulary.kinds[extra.kind].name +
                                    ") was only " + (more ? "replayed" : "recorded")};
}

base::Result<ReplayCheck> check_replay(const Attempt& attempt, const scenario::DrawnScenario& scenario,
                                       const ReplayProgress& progress) {
  if (attempt.head.bench != bench::kBenchVersion) {
    return base::Error{"other-bench", "",
                       "this attempt was recorded with bench version " + base::text_from_int(attempt.head.bench) +
                           "; this program has version " + base::text_from_int(bench::kBenchVersion),
                       "it can still be marked from its events; replay it with the edition that recorded it"};
  }
  ReplayCheck check;
  bench::Bench bench(scenario.setup);
  std::optional<Divergence> state_differs;
  std::size_t next_state = 0;
  base::Tick last_same = 0;
  for (std::size_t i = 0; i <= attempt.actions.size(); ++i) {
    while (next_state < attempt.states.size() && attempt.states[next_state].actions_before == i) {
      const StateMark& mark = attempt.states[next_state++];
      run_out(bench, mark.tick);
      const bool same = base::digest_text(bench.state_hash()) == mark.hash;
      ++check.states;
      if (same) last_same = mark.tick;
      if (!same && !state_differs) {
        state_differs = Divergence{mark.tick, "state of the bench between tick " + base::text_from_int(last_same) +
                                                  " and tick " + base::text_from_int(mark.tick) + " (line " +
                                                  base::text_from_int(static_cast<std::int64_t>(mark.line)) + ")"};
      }
    }
    if (i == attempt.actions.size()) break;
    if (!bench.over()) bench.apply(attempt.actions[i]);
    if (progress && i % 256 == 0) progress(bench.tick());
  }
  const base::Tick end = attempt.closing ? attempt.closing->end : attempt.last_tick;
  run_out(bench, end);
  check.trace.records = bench.events();
  check.trace.end_tick = end;
  check.trace.end = attempt.closing ? attempt.closing->reason : event::EndReason::Aborted;
  if (attempt.closing) {
    auto recorded = in_vocabulary(attempt.closing->trace, bench.vocabulary());
    if (!recorded) return recorded.error();
    check.events = recorded->size();
    check.first = first_difference(bench.vocabulary(), *recorded, bench.events());
  }
  // an event names the field; only where none differs by then is the state all there is to name
  if (state_differs && (!check.first || state_differs->tick < check.first->tick)) {
    if (check.first) state_differs->field += "; first event that differs: " + check.first->field;
    check.first = state_differs;
  }
  return check;
}

}  // namespace proofstand::record

// Everything the engine remembers while a run goes on: plain values, so that a copy is a snapshot. Callers treat it as
// a closed box; live.h and engine.h read it.
#pragma once

#include <cstdint>
#include <vector>

#include "sim/base/ticks.h"
#include "sim/rules/case.h"
#include "sim/rules/expression.h"

namespace proofstand::rules {

/// Cases so far, counted; only the first few are kept whole.
struct Tally {
  std::int64_t cases = 0;
  std::int64_t ok = 0;
  std::int64_t bad = 0;
  std::int64_t unknown = 0;
  std::int64_t slips = 0;
  std::int64_t sum_ppm = 0;
  std::int32_t min_ppm = kFullPpm;
  std::int32_t unnamed = 0;          ///< kept cases whose stretch has not ended yet
  base::Tick bad_since = kNoTick;    ///< least since_tick of the bad ones
  base::Tick bad_settled = kNoTick;  ///< least settled_tick of the bad ones
  std::vector<Case> bad_cases;       ///< bad and unknown ones
  std::vector<Case> ok_cases;
  std::vector<Case> worst;  ///< none or one
};

/// The stretch a rule is in.
struct ScopeState {
  bool open = false;
  bool over = false;   ///< no further stretch can begin
  bool doubt = false;  ///< a condition on some record could not be told
  Position a = kNoPosition;
  base::Tick a_tick = 0;
  std::int64_t opened = 0;
  std::int64_t counted = 0;  ///< stretches whose cases count
};

/// must, never, count.
struct PresenceState {
  std::int64_t n = 0;
  std::int64_t hits = 0;          ///< records, where n counts different values
  base::Tick settled = kNoTick;   ///< when the bound was reached or passed
  std::vector<double> values_si;  ///< different values, sorted
  std::vector<Cite> cites;        ///< the first few
};

/// A record remembered by its place alone, or whole when a text needs it.
struct Mark {
  Position position = kNoPosition;
  base::Tick tick = kNoTick;
};

/// needs: what is known about the y of one key.
struct NeedsKey {
  Mark last;    ///< the latest y
  Mark undone;  ///< the latest void
  Position previous_x = kNoPosition;
  Mark ripe;                ///< the latest y that is at least `gap` old
  std::vector<Mark> young;  ///< y not yet `gap` old; from young_from on
  std::size_t young_from = 0;
  std::vector<event::Record> young_records;  ///< as young, when texts speak of them
  std::vector<event::Record> records;        ///< none, or [last, ripe, undone] when texts speak of them
};
struct NeedsState {
  NeedsKey only;                      ///< without `same`
  Mark any_y;                         ///< latest y whatever its key
  std::vector<double> key_values_si;  ///< sorted
  std::vector<NeedsKey> keys;
};

/// leads: x still waiting, oldest first.
struct Waiting {
  Mark x;
  double key_si = 0.0;
  std::vector<event::Record> record;  ///< none or one
};
struct LeadsState {
  std::vector<double> key_values_si;  ///< sorted
  std::vector<std::vector<Waiting>> keys;
  std::vector<std::size_t> from;  ///< first one still waiting, by key
  base::Tick next_due = kNoTick;  ///< earliest deadline, -1 = none
};

/// order.
struct OrderState {
  std::vector<std::int32_t> best;         ///< longest chain that ends with this step
  std::vector<std::vector<Mark>> chains;  ///< its records
  std::vector<std::vector<std::int32_t>> chain_steps;
  std::vector<Mark> firsts;  ///< first record of each step
  std::int32_t longest = 0;
  std::int32_t longest_end = -1;  ///< step it ends with
};

/// hold, steady, keep: the condition over time. Intervals of no length count for nothing.
struct ConditionState {
  Truth value = Truth::Unknown;
  base::Tick to = 0;       ///< counted up to here
  base::Tick yes_end = 0;  ///< end of the latest interval with that value
  base::Tick no_end = 0;
  base::Tick unknown_end = 0;
  Mark turned;          ///< the latest record that changed it
  base::Tick best = 0;  ///< hold: longest yes in this stretch of the scope
  base::Tick best_from = kNoTick;
  base::Tick settled = kNoTick;
  base::Tick no_ticks = 0;  ///< in this stretch of the scope
  base::Tick unknown_ticks = 0;
  Mark first_no;  ///< keep: what made it false first
  base::Tick longest_no = 0;
  base::Tick longest_no_from = kNoTick;
};

/// measure: the picked x of one key.
struct Picked {
  Mark x;
  bool known = false;
  double value_si = 0.0;
  double lo_si = 0.0;
  double hi_si = 0.0;
  double key_si = 0.0;
  std::vector<event::Record> record;  ///< none or one
};
struct MeasureState {
  std::vector<Picked> picked;  ///< sorted by key
};

/// rounds.
struct RoundsState {
  std::uint64_t seen = 0;  ///< items of the pass that is going on
  std::vector<std::uint8_t> pass;
  std::vector<Mark> marks;  ///< its records
  std::int64_t x = 0;       ///< records
  std::int32_t complete = 0;
  std::int32_t conforming = 0;
  std::int64_t slips = 0;
  base::Tick settled = kNoTick;
  std::vector<std::int32_t> best_ppm;    ///< best passes, highest first, at most `passes`
  std::vector<std::uint8_t> good_items;  ///< of the first conforming passes
  std::vector<Mark> good_marks;
  std::vector<std::uint8_t> wrong_items;  ///< of the first pass that does not conform
  std::vector<Mark> wrong_marks;
  std::int32_t wrong_number = 0;  ///< which pass that was, from 1
  std::int32_t wrong_at = -1;     ///< index of its first wrong item
  std::int32_t last = -1;         ///< item that ended the pass before: taken again at once it begins no new one
};

/// within, recur.
struct LimitState {
  Mark x;                ///< within: first x · recur: latest x
  Mark y;                ///< within: the answer
  base::Tick worst = 0;  ///< recur: longest gap
  base::Tick worst_from = kNoTick;
  base::Tick settled = kNoTick;
  std::int64_t n = 0;
  std::vector<event::Record> records;  ///< within: [x] or [x, y] when texts speak of them
};

/// The state of all rules of one program.
struct EngineState {
  Position next = 0;  ///< records taken
  base::Tick tick = 0;
  std::vector<Fluent> fluents;     ///< [kinds]
  std::vector<ScopeState> scopes;  ///< [rules]
  std::vector<Tally> kept;         ///< [rules] cases that count
  std::vector<Tally> current;      ///< [rules] cases of the open stretch that may still be thrown away
  std::vector<PresenceState> presence;
  std::vector<NeedsState> needs;
  std::vector<LeadsState> leads;
  std::vector<OrderState> orders;
  std::vector<ConditionState> conditions;
  std::vector<MeasureState> measures;
  std::vector<RoundsState> rounds;
  std::vector<LimitState> limits;
};

}  // namespace proofstand::rules

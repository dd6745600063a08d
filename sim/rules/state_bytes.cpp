// The engine's state as bytes, field by field in declared order, and back. One list of fields serves both ways, so that
// writing and reading cannot drift apart.
#include <type_traits>

#include "sim/rules/engine.h"

namespace proofstand::rules {
namespace {

constexpr std::uint64_t kVersion = 1;
constexpr std::int64_t kMostWhole = std::int64_t{1} << 52;
constexpr std::int64_t kMostCount = std::int64_t{1} << 40;

class Out {
 public:
  explicit Out(base::ByteWriter& bytes) : bytes_(bytes) {}
  static constexpr bool kReads = false;
  void whole(std::int64_t number) { bytes_.put(number); }
  void bits(std::uint64_t word) { bytes_.put(word); }
  void real(double number_si) { bytes_.put(number_si); }
  void flag(bool yes) { bytes_.put(yes); }
  std::size_t size(std::size_t n) {
    bytes_.put(static_cast<std::uint64_t>(n));
    return n;
  }

 private:
  base::ByteWriter& bytes_;
};

class In {
 public:
  explicit In(base::ByteReader& bytes) : bytes_(bytes) {}
  static constexpr bool kReads = true;
  // no run is so long that sums of its ticks and counts could run over; a number beyond that is damage
  std::int64_t whole() {
    const std::int64_t number = bytes_.number();
    if (number > -kMostWhole && number < kMostWhole) return number;
    broken_ = true;
    return 0;
  }
  std::uint64_t bits() { return bytes_.word(); }
  double real() { return bytes_.real(); }
  bool flag() { return bytes_.flag(); }
  // a damaged length must not ask for all memory: nothing here is longer than a long run
  std::size_t size() {
    const std::uint64_t n = bytes_.word();
    if (n <= 50'000'000 && !bytes_.failed()) return static_cast<std::size_t>(n);
    broken_ = true;
    return 0;
  }
  [[nodiscard]] bool good() const { return !broken_ && !bytes_.failed(); }

 private:
  base::ByteReader& bytes_;
  bool broken_ = false;
};

template <class Io, class T>
void item(Io& io, T& value);

template <class Io, class T>
void row(Io& io, std::vector<T>& values) {
  if constexpr (Io::kReads) {
    const std::size_t n = io.size();
    values.clear();
    // grows as it is read, and stops at the end of the bytes
    for (std::size_t i = 0; i < n && io.good(); ++i) item(io, values.emplace_back());
  } else {
    io.size(values.size());
    for (T& value : values) item(io, value);
  }
}

template <class Io, class... T>
void items(Io& io, T&... values) {
  (item(io, values), ...);
}

template <class Io>
void fields(Io& io, event::Record& r) {
  items(io, r.tick, r.kind, r.unknown);
  for (double& value_si : r.values) item(io, value_si);
}
template <class Io>
void fields(Io& io, Mark& m) {
  items(io, m.position, m.tick);
}
template <class Io>
void fields(Io& io, Cite& c) {
  items(io, c.role, c.position, c.tick, c.has_record, c.record);
}
template <class Io>
void fields(Io& io, Case& c) {
  items(io, c.status, c.reason, c.score_ppm, c.segment_a, c.segment_b, c.a_tick, c.b_tick, c.anchor, c.anchor_tick,
        c.settled_tick, c.since_tick, c.window_from, c.window_to, c.dimension, c.has_figures, c.lo_si, c.hi_si,
        c.found_si, c.margin_si, c.key, c.items, c.missing, c.cites);
}
template <class Io>
void fields(Io& io, Tally& t) {
  items(io, t.cases, t.ok, t.bad, t.unknown, t.slips, t.sum_ppm, t.min_ppm, t.unnamed, t.bad_since, t.bad_settled,
        t.bad_cases, t.ok_cases, t.worst);
}
template <class Io>
void fields(Io& io, ScopeState& s) {
  items(io, s.open, s.over, s.doubt, s.a, s.a_tick, s.opened, s.counted);
}
template <class Io>
void fields(Io& io, Fluent& f) {
  items(io, f.value_si, f.known);
}
template <class Io>
void fields(Io& io, PresenceState& s) {
  items(io, s.n, s.hits, s.settled, s.values_si, s.cites);
}
template <class Io>
void fields(Io& io, NeedsKey& s) {
  items(io, s.last, s.undone, s.previous_x, s.ripe, s.young, s.young_from, s.young_records, s.records);
}
template <class Io>
void fields(Io& io, NeedsState& s) {
  items(io, s.only, s.any_y, s.key_values_si, s.keys);
}
template <class Io>
void fields(Io& io, Waiting& s) {
  items(io, s.x, s.key_si, s.record);
}
template <class Io>
void fields(Io& io, LeadsState& s) {
  items(io, s.key_values_si, s.keys, s.from, s.next_due);
}
template <class Io>
void fields(Io& io, OrderState& s) {
  items(io, s.best, s.chains, s.chain_steps, s.firsts, s.longest, s.longest_end);
}
template <class Io>
void fields(Io& io, ConditionState& s) {
  items(io, s.value, s.to, s.yes_end, s.no_end, s.unknown_end, s.turned, s.best, s.best_from, s.settled, s.no_ticks,
        s.unknown_ticks, s.first_no, s.longest_no, s.longest_no_from);
}
template <class Io>
void fields(Io& io, Picked& s) {
  items(io, s.x, s.known, s.value_si, s.lo_si, s.hi_si, s.key_si, s.record);
}
template <class Io>
void fields(Io& io, MeasureState& s) {
  items(io, s.picked);
}
template <class Io>
void fields(Io& io, RoundsState& s) {
  items(io, s.seen, s.pass, s.marks, s.x, s.complete, s.conforming, s.slips, s.settled, s.best_ppm, s.good_items,
        s.good_marks, s.wrong_items, s.wrong_marks, s.wrong_number, s.wrong_at, s.last);
}
template <class Io>
void fields(Io& io, LimitState& s) {
  items(io, s.x, s.y, s.worst, s.worst_from, s.settled, s.n, s.records);
}
template <class Io>
void fields(Io& io, EngineState& s) {
  items(io, s.next, s.tick, s.fluents, s.scopes, s.kept, s.current, s.presence, s.needs, s.leads, s.orders,
        s.conditions, s.measures, s.rounds, s.limits);
}

template <class T>
struct IsRow : std::false_type {};
template <class T>
struct IsRow<std::vector<T>> : std::true_type {};

template <class Io, class T>
void item(Io& io, T& value) {
  if constexpr (IsRow<T>::value) {
    row(io, value);
  } else if constexpr (std::is_same_v<T, bool>) {
    if constexpr (Io::kReads) {
      value = io.flag();
    } else {
      io.flag(value);
    }
  } else if constexpr (std::is_same_v<T, double>) {
    if constexpr (Io::kReads) {
      value = io.real();
    } else {
      io.real(value);
    }
  } else if constexpr (std::is_same_v<T, std::uint64_t>) {
    if constexpr (Io::kReads) {
      value = io.bits();
    } else {
      io.bits(value);
    }
  } else if constexpr (std::is_integral_v<T> || std::is_enum_v<T>) {
    if constexpr (Io::kReads) {
      value = static_cast<T>(io.whole());
    } else {
      io.whole(static_cast<std::int64_t>(value));
    }
  } else {
    fields(io, value);
  }
}

bool is_count(std::int64_t n) { return n >= 0 && n <= kMostCount; }

bool sound(const NeedsKey& key, const Rule& rule) {
  const bool records = !rule.keep_y || key.young_records.size() == key.young.size();
  return key.young_from <= key.young.size() && records && (key.records.empty() || key.records.size() == 3);
}

bool sound(const LeadsState& state) {
  bool good = state.keys.size() == state.key_values_si.size() && state.from.size() == state.keys.size();
  for (std::size_t k = 0; good && k < state.keys.size(); ++k) good = state.from[k] <= state.keys[k].size();
  // a deadline stands for somebody who waits
  bool waits = state.next_due == kNoTick;
  for (std::size_t k = 0; good && k < state.keys.size(); ++k) waits = waits || state.from[k] < state.keys[k].size();
  return good && waits;
}

bool sound(const OrderState& state, std::size_t k) {
  if (state.best.empty()) return state.chains.empty() && state.firsts.empty() && state.longest == 0;
  bool good = state.best.size() == k && state.chains.size() == k && state.chain_steps.size() == k &&
              state.firsts.size() == k && state.longest_end < static_cast<std::int32_t>(k);
  for (std::size_t step = 0; good && step < k; ++step) {
    const auto length = static_cast<std::size_t>(state.best[step]);
    good = state.best[step] >= 0 && state.chains[step].size() == length && state.chain_steps[step].size() == length;
    for (std::int32_t link : state.chain_steps[step]) good = good && link >= 0 && link < static_cast<std::int32_t>(k);
  }
  const bool any = good && state.longest > 0;
  return good &&
         (!any || (state.longest_end >= 0 && !state.chains[static_cast<std::size_t>(state.longest_end)].empty()));
}

bool sound(const RoundsState& state, std::size_t items) {
  return is_count(state.slips) && is_count(state.complete) && is_count(state.conforming) && state.pass.size() < items &&
         state.marks.size() == state.pass.size() && state.wrong_marks.size() == state.wrong_items.size() &&
         state.wrong_at >= -1 && state.wrong_at < static_cast<std::int32_t>(state.wrong_items.size());
}

bool sound(const Tally& tally) {
  return is_count(tally.cases) && is_count(tally.ok) && is_count(tally.bad) && is_count(tally.unknown) &&
         is_count(tally.slips) && tally.cases == tally.ok + tally.bad + tally.unknown && tally.sum_ppm >= 0 &&
         tally.sum_ppm <= tally.cases * kFullPpm && tally.min_ppm >= 0 && tally.min_ppm <= kFullPpm &&
         tally.worst.size() <= 1;
}

bool sound_rule(const Rule& rule, const EngineState& state) {
  const auto slot = static_cast<std::size_t>(rule.slot);
  switch (rule.kind) {
    case RuleKind::Must:
    case RuleKind::Never:
    case RuleKind::Count:
      return is_count(state.presence[slot].n) && is_count(state.presence[slot].hits);
    case RuleKind::Needs: {
      const NeedsState& needs = state.needs[slot];
      bool good = sound(needs.only, rule) && needs.keys.size() == needs.key_values_si.size();
      for (const NeedsKey& key : needs.keys) good = good && sound(key, rule);
      return good;
    }
    case RuleKind::Leads:
      return sound(state.leads[slot]);
    case RuleKind::Order:
      return sound(state.orders[slot], rule.steps.size());
    case RuleKind::Rounds:
      return sound(state.rounds[slot], static_cast<std::size_t>(rule.set_size));
    default:
      return true;
  }
}

// bytes that were not written by this program must not lead outside of its arrays
bool fits(const RuleProgram& program, const EngineState& state, const EngineState& fresh) {
  const std::size_t n = program.rules.size();
  bool good = state.fluents.size() == fresh.fluents.size() && state.scopes.size() == n && state.kept.size() == n &&
              state.current.size() == n && state.presence.size() == fresh.presence.size() &&
              state.needs.size() == fresh.needs.size() && state.leads.size() == fresh.leads.size() &&
              state.orders.size() == fresh.orders.size() && state.conditions.size() == fresh.conditions.size() &&
              state.measures.size() == fresh.measures.size() && state.rounds.size() == fresh.rounds.size() &&
              state.limits.size() == fresh.limits.size() && state.next >= 0 && state.tick >= 0;
  for (const Rule& rule : program.rules) good = good && sound_rule(rule, state);
  for (std::size_t i = 0; good && i < n; ++i) good = sound(state.kept[i]) && sound(state.current[i]);
  return good;
}

}  // namespace

void write_state(const RuleProgram& program, const EngineState& state, base::ByteWriter& out) {
  out.put(kVersion);
  out.put(program.fingerprint);
  Out io(out);
  // the list of fields takes references it may fill; writing changes nothing
  EngineState copy = state;
  item(io, copy);
}

base::Result<EngineState> read_state(const RuleProgram& program, base::ByteReader& in) {
  const std::uint64_t version = in.word();
  const std::uint64_t fingerprint = in.word();
  if (version != kVersion || fingerprint != program.fingerprint) {
    return base::Error{"state-of-other-rules", "", "this state of marking belongs to other rules or another version",
                       "mark the run again from its events"};
  }
  EngineState state;
  In io(in);
  item(io, state);
  if (!io.good() || !fits(program, state, start(program))) {
    return base::Error{"state-damaged", "", "this state of marking is damaged", "mark the run again from its events"};
  }
  return state;
}

}  // namespace proofstand::rules

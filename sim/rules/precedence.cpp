// needs: a y must have come before each x, and still hold good.
#include "sim/rules/keys.h"
#include "sim/rules/kinds.h"

namespace proofstand::rules {
namespace {

enum Kept : std::size_t { kLast = 0, kRipe = 1, kUndone = 2 };

NeedsState& state_of(const Work& work) { return work.state.needs[static_cast<std::size_t>(work.rule.slot)]; }

// what is remembered for the record's key; nullptr when the key is not known
NeedsKey* key_of(NeedsState& state, const Happening& now, std::int32_t field) {
  if (field < 0) return &state.only;
  const std::size_t place = place_of_key(state.key_values_si, now.record, field, [&](std::size_t at) {
    state.keys.insert(state.keys.begin() + static_cast<std::ptrdiff_t>(at), NeedsKey{});
  });
  return place == kNoKey ? nullptr : &state.keys[place];
}

void keep_record(NeedsKey& key, Kept which, const event::Record& record) {
  if (key.records.empty()) key.records.resize(3);
  key.records[which] = record;
}

const event::Record* kept_record(const NeedsKey& key, Kept which, bool kept) {
  return kept && !key.records.empty() ? &key.records[which] : nullptr;
}

// y that have become old enough by now; each is moved once
void ripen(const Rule& rule, NeedsKey& key, base::Tick tick) {
  while (key.young_from < key.young.size() && key.young[key.young_from].tick <= tick - rule.gap) {
    if (rule.keep_y) keep_record(key, kRipe, key.young_records[key.young_from]);
    key.ripe = key.young[key.young_from++];
  }
  if (key.young_from <= 32 || key.young_from * 2 <= key.young.size()) return;
  const auto gone = static_cast<std::ptrdiff_t>(key.young_from);
  key.young.erase(key.young.begin(), key.young.begin() + gone);
  if (rule.keep_y) key.young_records.erase(key.young_records.begin(), key.young_records.begin() + gone);
  key.young_from = 0;
}

bool serves(const Rule& rule, const NeedsKey& key, const Mark& y, base::Tick tick) {
  if (y.position == kNoPosition || key.undone.position > y.position) return false;
  if (rule.fresh && y.position <= key.previous_x) return false;
  return rule.within < 0 || tick - y.tick <= rule.within;
}

Reason why_not(const Rule& rule, const NeedsState& state, const NeedsKey& key, base::Tick tick) {
  if (key.last.position == kNoPosition) {
    return state.any_y.position == kNoPosition ? Reason::NoneBefore : Reason::OnlyOtherItems;
  }
  if (key.undone.position > key.last.position) return Reason::Undone;
  if (rule.fresh && key.last.position <= key.previous_x) return Reason::UsedUp;
  if (rule.gap >= 0 && tick - key.last.tick < rule.gap) return Reason::TooRecent;
  return Reason::TooOld;
}

Case make_case(const Work& work, const Happening& now, const NeedsState& state, const NeedsKey& key, const Mark& y,
               bool ok) {
  const Rule& rule = work.rule;
  Case made = record_case(work, {now.position, now.tick});
  cite(made, Role::X, {now.position, now.tick}, rule.keep_x ? &now.record : nullptr);
  if (rule.same_x >= 0) made.key = static_cast<std::int64_t>(now.record.values[static_cast<std::size_t>(rule.same_x)]);
  if (ok) {
    cite(made, Role::Y, y, kept_record(key, rule.gap >= 0 ? kRipe : kLast, rule.keep_y));
  } else {
    made.status = CaseStatus::Bad;
    made.score_ppm = 0;
    made.reason = why_not(rule, state, key, now.tick);
    if (made.reason == Reason::OnlyOtherItems) cite(made, Role::Y, state.any_y, nullptr);
    if (key.last.position != kNoPosition) cite(made, Role::Y, key.last, kept_record(key, kLast, rule.keep_y));
    // where there was no y at all, what would have undone it is what happened instead
    const bool instead = made.reason == Reason::NoneBefore && key.undone.position != kNoPosition;
    if (made.reason == Reason::Undone || instead) {
      cite(made, Role::Void, key.undone, kept_record(key, kUndone, rule.keep_z));
    }
  }
  const Mark& shown = ok ? y : key.last;
  if (shown.position != kNoPosition && (rule.gap >= 0 || rule.within >= 0)) {
    const double lo_s = duration_s(work, rule.gap);
    const double hi_s = duration_s(work, rule.within);
    set_figures(made, base::Dimension::Time, rule.gap >= 0 ? &lo_s : nullptr, rule.within >= 0 ? &hi_s : nullptr,
                duration_s(work, now.tick - shown.tick));
  }
  return made;
}

void take_x(const Work& work, const Happening& now, NeedsState& state) {
  const Rule& rule = work.rule;
  Tally& tally = work.tally();
  const EvidenceLimit& limit = work.program.evidence;
  NeedsKey* found = key_of(state, now, rule.same_x);
  if (found == nullptr) {
    Case made = record_case(work, {now.position, now.tick});
    cite(made, Role::X, {now.position, now.tick}, rule.keep_x ? &now.record : nullptr);
    made.status = CaseStatus::Unknown;
    made.reason = Reason::ValueMissing;
    made.score_ppm = 0;
    return add_case(tally, limit, std::move(made));
  }
  NeedsKey& key = *found;
  if (rule.gap >= 0) ripen(rule, key, now.tick);
  const Mark& y = rule.gap >= 0 ? key.ripe : key.last;
  const bool ok = serves(rule, key, y, now.tick);
  if (ok && !wants_ok(tally, limit)) {
    count_ok(tally);
  } else if (!ok && !wants_bad(tally, limit)) {
    count_bad(tally, 0, now.tick, now.tick);
  } else {
    add_case(tally, limit, make_case(work, now, state, key, y, ok));
  }
  key.previous_x = now.position;
}

void take_y(const Work& work, const Happening& now, NeedsState& state) {
  const Rule& rule = work.rule;
  state.any_y = {now.position, now.tick};
  NeedsKey* found = key_of(state, now, rule.same_y);
  if (found == nullptr) {
    work.scope.doubt = true;
    return;
  }
  NeedsKey& key = *found;
  if (rule.gap >= 0) {
    ripen(rule, key, now.tick);
    if (rule.keep_y) key.young_records.push_back(now.record);
    key.young.push_back({now.position, now.tick});
  }
  key.last = {now.position, now.tick};
  if (rule.keep_y) keep_record(key, kLast, now.record);
}

void undo(const Work& work, const Happening& now, NeedsKey& key) {
  key.undone = {now.position, now.tick};
  if (work.rule.keep_z) keep_record(key, kUndone, now.record);
}

void take_void(const Work& work, const Happening& now, NeedsState& state) {
  const Rule& rule = work.rule;
  if (rule.same_x >= 0 && rule.same_void < 0) {
    for (NeedsKey& key : state.keys) undo(work, now, key);
    return;
  }
  NeedsKey* found = key_of(state, now, rule.same_void);
  if (found == nullptr) {
    work.scope.doubt = true;
    return;
  }
  undo(work, now, *found);
}

}  // namespace

void open_needs(const Work& work) {
  NeedsState& state = state_of(work);
  if (!work.rule.look_run) {
    state.only = NeedsKey{};
    for (NeedsKey& key : state.keys) key = NeedsKey{};
    state.any_y = {};
    return;
  }
  state.only.previous_x = kNoPosition;
  for (NeedsKey& key : state.keys) key.previous_x = kNoPosition;
}

void take_needs(const Work& work, const Happening& now) {
  NeedsState& state = state_of(work);
  // x first: a record is never its own permission; void before y: what comes with y does not undo it
  if (now.is(kBitX)) take_x(work, now, state);
  if (now.is(kBitVoid)) take_void(work, now, state);
  if (now.is(kBitY)) take_y(work, now, state);
}

void note_needs(const Work& work, const Happening& now) {
  NeedsState& state = state_of(work);
  if (now.is(kBitVoid)) take_void(work, now, state);
  if (now.is(kBitY)) take_y(work, now, state);
}

}  // namespace proofstand::rules

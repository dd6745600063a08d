// leads: each x must be answered by a y in time, before something undoes it.
#include <algorithm>

#include "sim/rules/keys.h"
#include "sim/rules/kinds.h"

namespace proofstand::rules {
namespace {

LeadsState& state_of(const Work& work) { return work.state.leads[static_cast<std::size_t>(work.rule.slot)]; }

std::size_t place_of(LeadsState& state, const Happening& now, std::int32_t field) {
  return place_of_key(state.key_values_si, now.record, field, [&](std::size_t place) {
    const auto at = static_cast<std::ptrdiff_t>(place);
    state.keys.insert(state.keys.begin() + at, std::vector<Waiting>{});
    state.from.insert(state.from.begin() + at, 0);
  });
}

Waiting take_oldest(LeadsState& state, std::size_t place) {
  std::vector<Waiting>& row = state.keys[place];
  std::size_t& from = state.from[place];
  Waiting oldest = std::move(row[from++]);
  if (from == row.size()) {
    row.clear();
    from = 0;
  } else if (from > 32 && from * 2 > row.size()) {
    row.erase(row.begin(), row.begin() + static_cast<std::ptrdiff_t>(from));
    from = 0;
  }
  return oldest;
}

// the row whose oldest x came first of all; kNoKey when nobody waits
std::size_t oldest_row(const LeadsState& state) {
  std::size_t best = kNoKey;
  for (std::size_t k = 0; k < state.keys.size(); ++k) {
    if (state.from[k] >= state.keys[k].size()) continue;
    const Position position = state.keys[k][state.from[k]].x.position;
    if (best == kNoKey || position < state.keys[best][state.from[best]].x.position) best = k;
  }
  return best;
}

void renew_due(const Rule& rule, LeadsState& state) {
  const std::size_t row = rule.within >= 0 ? oldest_row(state) : kNoKey;
  state.next_due = row == kNoKey ? kNoTick : state.keys[row][state.from[row]].x.tick + rule.within;
}

Case waiting_case(const Work& work, const Waiting& waiting) {
  Case made = record_case(work, waiting.x);
  if (work.rule.same_x >= 0) made.key = static_cast<std::int64_t>(waiting.key_si);
  cite(made, Role::X, waiting.x, waiting.record.empty() ? nullptr : &waiting.record[0]);
  return made;
}

void lose(const Work& work, const Waiting& waiting, Reason reason, base::Tick settled, const Happening* undone) {
  Tally& tally = work.tally();
  if (!wants_bad(tally, work.program.evidence)) return count_bad(tally, 0, settled, waiting.x.tick);
  Case made = waiting_case(work, waiting);
  made.status = CaseStatus::Bad;
  made.reason = reason;
  made.score_ppm = 0;
  made.settled_tick = settled;
  made.window_to = settled;
  if (undone != nullptr) {
    cite(made, Role::Void, {undone->position, undone->tick}, work.rule.keep_z ? &undone->record : nullptr);
  }
  if (reason == Reason::Late) {
    const double hi_s = duration_s(work, work.rule.within);
    set_figures(made, base::Dimension::Time, nullptr, &hi_s, duration_s(work, settled - waiting.x.tick));
  }
  add_case(tally, work.program.evidence, std::move(made));
}

void answer(const Work& work, const Waiting& waiting, const Happening& now) {
  Tally& tally = work.tally();
  if (!wants_ok(tally, work.program.evidence)) return count_ok(tally);
  Case made = waiting_case(work, waiting);
  made.settled_tick = now.tick;
  made.window_to = now.tick;
  cite(made, Role::Y, {now.position, now.tick}, work.rule.keep_y ? &now.record : nullptr);
  if (work.rule.within >= 0) {
    const double hi_s = duration_s(work, work.rule.within);
    set_figures(made, base::Dimension::Time, nullptr, &hi_s, duration_s(work, now.tick - waiting.x.tick));
  }
  add_case(tally, work.program.evidence, std::move(made));
}

void take_y(const Work& work, const Happening& now, LeadsState& state) {
  const std::size_t place = place_of(state, now, work.rule.same_y);
  if (place == kNoKey) {
    work.scope.doubt = true;
    return;
  }
  bool more = true;
  while (more && state.from[place] < state.keys[place].size()) {
    answer(work, take_oldest(state, place), now);
    more = !work.rule.one_each;
  }
  renew_due(work.rule, state);
}

void take_void(const Work& work, const Happening& now, LeadsState& state) {
  const std::int32_t field = work.rule.same_void;
  const std::size_t only = field < 0 ? kNoKey : place_of(state, now, field);
  if (field >= 0 && only == kNoKey) {
    work.scope.doubt = true;
    return;
  }
  while (true) {
    std::size_t row = oldest_row(state);
    if (field >= 0) row = state.from[only] < state.keys[only].size() ? only : kNoKey;
    if (row == kNoKey) break;
    lose(work, take_oldest(state, row), Reason::Undone, now.tick, &now);
  }
  renew_due(work.rule, state);
}

void take_x(const Work& work, const Happening& now, LeadsState& state) {
  const Rule& rule = work.rule;
  const std::size_t place = place_of(state, now, rule.same_x);
  if (place == kNoKey) {
    Case made = record_case(work, {now.position, now.tick});
    cite(made, Role::X, {now.position, now.tick}, rule.keep_x ? &now.record : nullptr);
    made.status = CaseStatus::Unknown;
    made.reason = Reason::ValueMissing;
    made.score_ppm = 0;
    return add_case(work.tally(), work.program.evidence, std::move(made));
  }
  Waiting waiting;
  waiting.x = {now.position, now.tick};
  waiting.key_si = state.key_values_si[place];
  if (rule.keep_x) waiting.record.push_back(now.record);
  state.keys[place].push_back(std::move(waiting));
  if (rule.within >= 0 && state.next_due == kNoTick) state.next_due = now.tick + rule.within;
}

}  // namespace

void open_leads(const Work& work) {
  LeadsState& state = state_of(work);
  for (std::vector<Waiting>& row : state.keys) row.clear();
  for (std::size_t& from : state.from) from = 0;
  state.next_due = kNoTick;
}

void pass_time_leads(const Work& work, base::Tick tick) {
  LeadsState& state = state_of(work);
  while (state.next_due != kNoTick && state.next_due < tick) {
    const Waiting late = take_oldest(state, oldest_row(state));
    lose(work, late, Reason::Late, late.x.tick + work.rule.within + 1, nullptr);
    renew_due(work.rule, state);
  }
}

void take_leads(const Work& work, const Happening& now) {
  LeadsState& state = state_of(work);
  // y first: it answers earlier x only, and what comes with it does not undo it
  if (now.is(kBitY)) take_y(work, now, state);
  if (now.is(kBitVoid)) take_void(work, now, state);
  if (now.is(kBitX)) take_x(work, now, state);
}

void close_leads(const Work& work, const Ending& ending) {
  LeadsState& state = state_of(work);
  pass_time_leads(work, ending.tick);
  for (std::size_t row = oldest_row(state); row != kNoKey; row = oldest_row(state)) {
    const Waiting open = take_oldest(state, row);
    if (!ending.cut_off) {
      lose(work, open, Reason::EndedOpen, ending.tick, nullptr);
      continue;
    }
    Case made = waiting_case(work, open);
    made.status = CaseStatus::Unknown;
    made.reason = Reason::CutOff;
    made.score_ppm = 0;
    made.settled_tick = ending.tick;
    made.window_to = ending.tick;
    add_case(work.tally(), work.program.evidence, std::move(made));
  }
  state.next_due = kNoTick;
}

}  // namespace proofstand::rules

// rounds: every item of a set in some order, in passes. A pass collects items until all have been seen; its last item
// taken again at once belongs to it still.
#include <algorithm>

#include "sim/rules/kinds.h"
#include "sim/rules/rounds_patterns.h"

namespace proofstand::rules {
namespace {

RoundsState& state_of(const Work& work) { return work.state.rounds[static_cast<std::size_t>(work.rule.slot)]; }

bool satisfied(const Rule& rule, const RoundsState& state) {
  return state.conforming >= rule.passes && (!rule.strict || state.conforming == state.complete);
}

void announce(const Work& work, const Happening& now, std::int32_t number) {
  const RuleProgram& program = work.program;
  if (program.pass_done == event::kNoKind || work.made == nullptr) return;
  event::Record record;
  record.tick = now.tick;
  record.kind = program.pass_done;
  // field "rule" counts the rounds rules in the order of the file
  std::int32_t choice = 0;
  for (RuleIndex i = 0; i < work.index; ++i) {
    if (program.rules[static_cast<std::size_t>(i)].kind == RuleKind::Rounds) ++choice;
  }
  record.values[0] = static_cast<double>(choice);
  record.values[1] = static_cast<double>(number);
  work.made->push_back(record);
}

void end_pass(const Work& work, const Happening& now, RoundsState& state) {
  const Rule& rule = work.rule;
  const PassFit fit = fit_of_pass(rule, state.pass);
  ++state.complete;
  if (fit.conforms()) {
    ++state.conforming;
    if (state.conforming <= rule.passes) {
      state.good_items.insert(state.good_items.end(), state.pass.begin(), state.pass.end());
      state.good_marks.insert(state.good_marks.end(), state.marks.begin(), state.marks.end());
    }
    if (!rule.strict && state.conforming == rule.passes) state.settled = now.tick;
  } else if (state.wrong_number == 0) {
    state.wrong_number = state.complete;
    state.wrong_at = fit.wrong_at;
    state.wrong_items = state.pass;
    state.wrong_marks = state.marks;
    if (rule.strict) state.settled = now.tick;
  }
  const std::int32_t fit_ppm = fit.conforms() ? kFullPpm : share_ppm(fit.kept, fit.of);
  const auto at = std::upper_bound(state.best_ppm.begin(), state.best_ppm.end(), fit_ppm, std::greater<>());
  state.best_ppm.insert(at, fit_ppm);
  if (static_cast<std::int32_t>(state.best_ppm.size()) > rule.passes) state.best_ppm.pop_back();
  state.seen = 0;
  state.last = state.pass.back();
  state.pass.clear();
  state.marks.clear();
  announce(work, now, state.complete);
}

std::int32_t score_of(const Rule& rule, const RoundsState& state, bool ok) {
  std::int64_t score_ppm = ok ? kFullPpm : 0;
  if (!ok && rule.partial) {
    for (std::int32_t pass_ppm : state.best_ppm) score_ppm += pass_ppm;
    score_ppm /= rule.passes;
    if (score_ppm >= kFullPpm) score_ppm = kFullPpm - 1;
  }
  score_ppm -= rule.per_slip_ppm * state.slips;
  return score_ppm > 0 ? static_cast<std::int32_t>(score_ppm) : 0;
}

void name_evidence(const Rule& rule, const RoundsState& state, bool ok, Case& made) {
  if (ok) {
    made.items.assign(state.good_items.begin(), state.good_items.end());
    for (const Mark& mark : state.good_marks) cite(made, Role::X, mark, nullptr);
    return;
  }
  const bool wrong = state.wrong_number > 0;
  const std::vector<std::uint8_t>& items = wrong ? state.wrong_items : state.pass;
  made.items.assign(items.begin(), items.end());
  made.key = wrong ? state.wrong_number : state.complete + 1;
  // the two records of the first wrong step first: they are what one wants to see
  const std::vector<Mark>& marks = wrong ? state.wrong_marks : state.marks;
  if (wrong && state.wrong_at >= 0) {
    const auto at = static_cast<std::size_t>(state.wrong_at);
    if (at > 0) cite(made, Role::X, marks[at - 1], nullptr);
    cite(made, Role::X, marks[at], nullptr);
  } else {
    for (const Mark& mark : marks) cite(made, Role::X, mark, nullptr);
  }
  if (state.conforming >= rule.passes) return;
  for (std::int32_t item = 0; item < rule.set_size; ++item) {
    if ((state.seen >> item & 1u) == 0 && !wrong) made.missing.push_back(item);
  }
}

}  // namespace

void open_rounds(const Work& work) { state_of(work) = RoundsState{}; }

void take_rounds(const Work& work, const Happening& now) {
  if (!now.is(kBitX)) return;
  RoundsState& state = state_of(work);
  const auto field = static_cast<std::size_t>(work.rule.item);
  const double value_si = now.record.values[field];
  if (!now.record.knows(field) || !(value_si >= 0.0 && value_si < static_cast<double>(work.rule.set_size))) {
    work.scope.doubt = true;
    return;
  }
  ++state.x;
  const auto item = static_cast<std::uint8_t>(value_si);
  const std::uint64_t bit = std::uint64_t{1} << item;
  // the item that ended a pass, taken once more at once, was only looked after
  const bool looked_after = state.pass.empty() && state.last == item && work.rule.set_size > 1;
  if ((state.seen & bit) != 0 || looked_after) {
    ++state.slips;
    return;
  }
  state.seen |= bit;
  state.pass.push_back(item);
  state.marks.push_back({now.position, now.tick});
  if (static_cast<std::int32_t>(state.pass.size()) == work.rule.set_size) end_pass(work, now, state);
}

void close_rounds(const Work& work, const Ending& ending) {
  const Rule& rule = work.rule;
  const RoundsState& state = state_of(work);
  if (state.x == 0 && rule.if_any) return;
  work.tally().slips += state.slips;
  const bool ok = satisfied(rule, state);
  Case made = stretch_case(work);
  made.settled_tick = state.settled != kNoTick ? state.settled : ending.tick;
  made.window_to = ending.tick;
  made.score_ppm = score_of(rule, state, ok);
  name_evidence(rule, state, ok, made);
  const bool strictly_lost = rule.strict && state.conforming < state.complete;
  if (!ok && ending.cut_off && !strictly_lost) {
    made.status = CaseStatus::Unknown;
    made.reason = Reason::CutOff;
    made.score_ppm = 0;
  } else if (!ok) {
    made.status = CaseStatus::Bad;
    made.reason = Reason::Incomplete;
    if (state.wrong_number > 0) made.reason = Reason::WrongPattern;
    if (state.x == 0) made.reason = Reason::NeverCame;
    if (strictly_lost) made.since_tick = made.settled_tick;
  } else if (made.score_ppm < kFullPpm) {
    made.status = CaseStatus::Bad;
    made.reason = Reason::Slips;
    made.since_tick = made.settled_tick;
  }
  add_case(work.tally(), work.program.evidence, std::move(made));
}

}  // namespace proofstand::rules

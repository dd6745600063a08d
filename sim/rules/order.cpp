// order: steps in the order written. Either the longest chain in that order counts (rework is allowed), or the first of
// each step, pair by pair.
#include <algorithm>

#include "sim/rules/kinds.h"

namespace proofstand::rules {
namespace {

OrderState& state_of(const Work& work) { return work.state.orders[static_cast<std::size_t>(work.rule.slot)]; }

void take_first(const Work& work, const Happening& now, OrderState& state, std::size_t step) {
  const Rule& rule = work.rule;
  for (std::size_t u = 0; u < rule.steps.size(); ++u) {
    if (rule.group_of_step[u] >= rule.group_of_step[step]) continue;
    Case made = record_case(work, {now.position, now.tick});
    made.items = {static_cast<std::int64_t>(u), static_cast<std::int64_t>(step)};
    cite(made, Role::X, {now.position, now.tick}, nullptr);
    if (state.firsts[u].position != kNoPosition) {
      cite(made, Role::Step, state.firsts[u], nullptr);
    } else {
      made.status = CaseStatus::Bad;
      made.reason = Reason::OutOfOrder;
      made.score_ppm = 0;
      made.missing = {static_cast<std::int64_t>(u)};
    }
    add_case(work.tally(), work.program.evidence, std::move(made));
  }
}

void take_chain(OrderState& state, const Happening& now, std::size_t step) {
  std::size_t before = step;
  std::int32_t most = 0;
  for (std::size_t u = 0; u < step; ++u) {
    if (state.best[u] <= most) continue;
    most = state.best[u];
    before = u;
  }
  if (most + 1 <= state.best[step]) return;
  state.best[step] = most + 1;
  std::vector<Mark> chain;
  std::vector<std::int32_t> steps;
  if (before != step) {
    chain = state.chains[before];
    steps = state.chain_steps[before];
  }
  chain.push_back({now.position, now.tick});
  steps.push_back(static_cast<std::int32_t>(step));
  state.chains[step] = std::move(chain);
  state.chain_steps[step] = std::move(steps);
  if (state.best[step] <= state.longest) return;
  state.longest = state.best[step];
  state.longest_end = static_cast<std::int32_t>(step);
}

}  // namespace

void open_order(const Work& work) {
  OrderState& state = state_of(work);
  const std::size_t k = work.rule.steps.size();
  state.best.assign(k, 0);
  state.chains.assign(k, {});
  state.chain_steps.assign(k, {});
  state.firsts.assign(k, Mark{});
  state.longest = 0;
  state.longest_end = -1;
}

void take_order(const Work& work, const Happening& now) {
  if (now.step < 0) return;
  OrderState& state = state_of(work);
  const auto step = static_cast<std::size_t>(now.step);
  const bool first = state.firsts[step].position == kNoPosition;
  if (work.rule.first) {
    if (first) take_first(work, now, state, step);
  } else {
    take_chain(state, now, step);
  }
  if (first) state.firsts[step] = {now.position, now.tick};
}

void close_order(const Work& work, const Ending& ending) {
  if (work.rule.first) return;
  const OrderState& state = state_of(work);
  const auto k = static_cast<std::int32_t>(work.rule.steps.size());
  Case made = stretch_case(work);
  made.settled_tick = ending.tick;
  made.window_to = ending.tick;
  std::vector<bool> reached(static_cast<std::size_t>(k), false);
  if (state.longest > 0) {
    const auto end = static_cast<std::size_t>(state.longest_end);
    for (const Mark& mark : state.chains[end]) cite(made, Role::Step, mark, nullptr);
    for (std::int32_t step : state.chain_steps[end]) {
      made.items.push_back(step);
      reached[static_cast<std::size_t>(step)] = true;
    }
    made.anchor = state.chains[end].back().position;
    made.anchor_tick = state.chains[end].back().tick;
  }
  if (state.longest == k) {
    made.settled_tick = made.anchor_tick;
    made.since_tick = made.anchor_tick;
    return add_case(work.tally(), work.program.evidence, std::move(made));
  }
  bool all_came = true;
  for (std::int32_t step = 0; step < k; ++step) {
    if (!reached[static_cast<std::size_t>(step)]) made.missing.push_back(step);
    all_came = all_came && state.firsts[static_cast<std::size_t>(step)].position != kNoPosition;
  }
  made.status = ending.cut_off ? CaseStatus::Unknown : CaseStatus::Bad;
  made.reason = ending.cut_off ? Reason::CutOff : (all_came ? Reason::OutOfOrder : Reason::Incomplete);
  made.score_ppm = ending.cut_off ? 0 : share_ppm(state.longest, k);
  add_case(work.tally(), work.program.evidence, std::move(made));
}

}  // namespace proofstand::rules

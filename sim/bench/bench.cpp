#include "sim/bench/bench.h"

#include "sim/base/assert.h"
#include "sim/bench/bench_actions.h"

namespace proofstand::bench {

Bench::Bench(BenchSetup setup) {
  event::Vocabulary vocabulary = event::job_vocabulary(job_items(setup));
  inside_ = std::make_shared<const Inside>(Inside{std::move(setup), std::move(vocabulary)});
  start_state(World{inside_->setup, inside_->vocabulary, state_, events_});
}

Refusal Bench::apply(const event::Action& action) {
  if (over()) return Refusal::HandedOver;
  STAND_ASSERT(action.tick >= state_.tick);
  advance_to(action.tick);
  if (over()) return Refusal::HandedOver;
  return apply_action(World{inside_->setup, inside_->vocabulary, state_, events_}, action);
}

void Bench::advance_to(base::Tick tick) {
  const World world{inside_->setup, inside_->vocabulary, state_, events_};
  while (state_.tick < tick && !over()) {
    if (at_rest(world)) {
      const base::Tick due = next_due(world);
      if (due > tick) {
        state_.tick = tick;
        return;
      }
      state_.tick = due;
    } else {
      ++state_.tick;
    }
    step_bench(world);
  }
}

void Bench::tick_through_to(base::Tick tick) {
  const World world{inside_->setup, inside_->vocabulary, state_, events_};
  while (state_.tick < tick && !over()) {
    ++state_.tick;
    step_bench(world);
  }
}

base::Tick Bench::tick() const { return state_.tick; }

bool Bench::over() const { return state_.handed_over || state_.stopped; }

event::EndReason Bench::end_reason() const {
  return state_.stopped ? event::EndReason::Stopped : event::EndReason::Finished;
}

const BenchSetup& Bench::setup() const { return inside_->setup; }
const event::Vocabulary& Bench::vocabulary() const { return inside_->vocabulary; }
const BenchState& Bench::state() const { return state_; }
const std::vector<event::Record>& Bench::events() const { return events_; }

}  // namespace proofstand::bench

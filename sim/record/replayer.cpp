#include "sim/record/replayer.h"

#include "sim/base/assert.h"

namespace proofstand::record {
namespace {

constexpr base::Tick kSpacing = 10 * base::kTicksPerSecond;
// a long run keeps every second of its snapshots from time to time, so that memory stays where it is
constexpr std::size_t kMostSnapshots = 32;

}  // namespace

Replayer::Replayer(const bench::BenchSetup& setup, std::vector<event::Action> actions)
    : actions_(std::move(actions)), bench_(std::make_unique<bench::Bench>(setup)), spacing_(kSpacing) {
  keep_snapshot();
}

void Replayer::keep_snapshot() {
  const std::vector<event::Record>& events = bench_->events();
  seen_.insert(seen_.end(), events.begin() + static_cast<std::ptrdiff_t>(seen_.size()), events.end());
  snapshots_.push_back({bench_->tick(), next_, events.size(), bench_->snapshot()});
  if (snapshots_.size() <= kMostSnapshots) return;
  std::vector<Snapshot> kept;
  for (std::size_t i = 0; i < snapshots_.size(); i += 2) kept.push_back(std::move(snapshots_[i]));
  snapshots_ = std::move(kept);
  spacing_ *= 2;
}

void Replayer::apply_next() {
  bench_->apply(actions_[next_]);
  ++next_;
  const Snapshot& last = snapshots_.back();
  if (bench_->tick() >= last.tick + spacing_ && next_ > last.next) keep_snapshot();
}

void Replayer::go_back(base::Tick tick, std::size_t actions) {
  std::size_t i = snapshots_.size() - 1;
  while (i > 0 && (snapshots_[i].tick > tick || snapshots_[i].next > actions)) --i;
  const Snapshot& from = snapshots_[i];
  std::vector<event::Record> events(seen_.begin(), seen_.begin() + static_cast<std::ptrdiff_t>(from.events));
  auto bench = bench::Bench::restore(bench_->setup(), from.bytes, std::move(events));
  // it made this snapshot itself
  STAND_ASSERT(bench.has_value());
  *bench_ = std::move(*bench);
  next_ = from.next;
}

const bench::Bench& Replayer::after(std::size_t actions, base::Tick tick) {
  STAND_ASSERT(actions <= actions_.size());
  if (next_ > actions || (bench_->tick() > tick && !bench_->over())) go_back(tick, actions);
  while (next_ < actions && !bench_->over()) apply_next();
  if (bench_->tick() < tick && !bench_->over()) bench_->advance_to(tick);
  return *bench_;
}

const bench::Bench& Replayer::at(base::Tick tick) {
  std::size_t actions = next_;
  while (actions > 0 && actions_[actions - 1].tick > tick) --actions;
  while (actions < actions_.size() && actions_[actions].tick <= tick) ++actions;
  return after(actions, tick);
}

}  // namespace proofstand::record

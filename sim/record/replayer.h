// Works recorded actions again: to any moment, forwards and back, with snapshots on the way so that going back is
// quick.
#pragma once

#include <memory>
#include <string>
#include <vector>

#include "sim/bench/bench.h"
#include "sim/event/actions.h"

namespace proofstand::record {

class Replayer {
 public:
  /// actions: in order of their ticks.
  Replayer(const bench::BenchSetup& setup, std::vector<event::Action> actions);

  /// The bench when every action up to this tick (its own included) has been applied and time stands at the tick. The
  /// same bits whether reached straight or by going back. After the run's end it stays as it ended.
  const bench::Bench& at(base::Tick tick);
  /// The bench when exactly this many actions have been applied and time stands at the tick, which must not lie before
  /// the last of them nor after the next one.
  const bench::Bench& after(std::size_t actions, base::Tick tick);

  [[nodiscard]] const bench::Bench& bench() const { return *bench_; }
  [[nodiscard]] const std::vector<event::Action>& actions() const { return actions_; }

 private:
  struct Snapshot {
    base::Tick tick = 0;
    std::size_t next = 0;    ///< first action not yet applied
    std::size_t events = 0;  ///< how many there were
    std::string bytes;
  };
  void apply_next();
  void keep_snapshot();
  void go_back(base::Tick tick, std::size_t actions);

  std::vector<event::Action> actions_;
  std::unique_ptr<bench::Bench> bench_;
  std::size_t next_ = 0;
  std::vector<Snapshot> snapshots_;  ///< in order of time
  std::vector<event::Record> seen_;  ///< events up to the last snapshot, shared by all of them
  base::Tick spacing_ = 0;           ///< ticks between snapshots; grows with the run so that memory does not
};

}  // namespace proofstand::record

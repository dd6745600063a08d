// One go at a scenario, live: the bench, the rules that watch it, and the file it is written to. Every hand acts
// through this, so that nothing happens on the bench that is not recorded.
#pragma once

#include <functional>
#include <memory>
#include <optional>
#include <vector>

#include "sim/bench/bench.h"
#include "sim/record/recorder.h"
#include "sim/rules/engine.h"
#include "sim/rules/program.h"
#include "sim/scenario/scenario.h"

namespace proofstand::record {

class Session {
 public:
  /// Begins a new attempt. The head's scenario texts, seed and bench version are filled in here.
  /// errors: file-write; rules that cannot be compiled
  static base::Result<Session> begin(std::unique_ptr<ByteSink> sink, AttemptHead head,
                                     const scenario::DrawnScenario& scenario);
  /// Goes on with one that was cut off: works its actions again, then lets both hands go.
  /// errors: closed, other-bench, diverged: the replay is not what was recorded; file-write
  static base::Result<Session> go_on(std::unique_ptr<ByteSink> sink, const Attempt& attempt,
                                     const scenario::DrawnScenario& scenario);

  /// The bench; a hand may let its time pass, but acts through act().
  [[nodiscard]] bench::Bench& bench() { return *bench_; }
  [[nodiscard]] const bench::Bench& bench() const { return *bench_; }
  [[nodiscard]] const rules::RuleProgram& program() const { return *program_; }
  [[nodiscard]] const rules::EngineState& engine() const { return engine_; }

  /// Applies an action and keeps it for the file. Nothing happens once the run is over.
  bench::Refusal act(event::Action action);
  /// Writes what is due: the actions since the last call, a state hash when a second has passed, the closing lines when
  /// the run is over. Call it at least every quarter of a second of bench time.
  /// errors: file-write: what is written stays; the run can be gone on with later
  base::Result<base::Done> keep();
  /// Ends a run from outside: time out, power. errors: file-write
  base::Result<base::Done> end(event::EndReason reason);
  /// Practice: takes the run back to an earlier tick. errors: exam-sealed; file-write; a tick that lies ahead
  base::Result<base::Done> rewind(base::Tick to);

  /// Handed over, stopped or ended, and closed in the file.
  [[nodiscard]] bool closed() const { return closed_; }
  [[nodiscard]] event::EndReason end_reason() const { return reason_; }
  /// Actions of this branch so far.
  [[nodiscard]] const std::vector<event::Action>& actions() const { return actions_; }

 private:
  Session(Recorder recorder, const scenario::DrawnScenario& scenario, rules::RuleProgram program,
          std::unique_ptr<bench::Bench> bench);
  void watch();
  base::Result<base::Done> close(event::EndReason reason);

  Recorder recorder_;
  std::unique_ptr<bench::Bench> bench_;
  std::unique_ptr<rules::RuleProgram> program_;
  rules::EngineState engine_;
  std::size_t watched_ = 0;  ///< events that the rules have seen
  std::vector<event::Action> actions_;
  base::Tick time_limit_ = 0;
  base::Tick state_kept_ = 0;
  std::size_t kept_actions_ = 0;
  std::size_t kept_events_ = 0;
  bool stop_asked_ = false;
  bool closed_ = false;
  event::EndReason reason_ = event::EndReason::Aborted;
  std::optional<base::Error> trouble_;
};

}  // namespace proofstand::record

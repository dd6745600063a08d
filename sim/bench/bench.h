// The bench: takes actions, advances in fixed ticks, answers with events. Copyable; a copy goes its own way.
#pragma once

#include <memory>
#include <string>
#include <string_view>
#include <vector>

#include "sim/base/hash.h"
#include "sim/base/result.h"
#include "sim/bench/refusal.h"
#include "sim/bench/state.h"
#include "sim/event/actions.h"
#include "sim/event/record.h"

namespace proofstand::bench {

/// Goes up whenever the same actions could give other events; attempts name it.
inline constexpr int kBenchVersion = 1;

class Bench {
 public:
  /// A bench at tick 0, with the setup's fluents emitted. The setup must have passed the scenario's check (asserted).
  explicit Bench(BenchSetup setup);

  /// Advances to action.tick (asserted not to lie in the past), then applies it. A refusal is also an event; impossible
  /// actions change nothing else. Numbers out of range (a thing or bolt that does not exist) are refused, never
  /// asserted.
  Refusal apply(const event::Action& action);
  /// Advances to a tick; stretches in which nothing moves cost nothing.
  void advance_to(base::Tick tick);
  /// The same, tick by tick without any skipping: what advance_to must equal, for tests.
  void tick_through_to(base::Tick tick);

  [[nodiscard]] base::Tick tick() const;
  /// Handed over, or stopped: no action is taken any more.
  [[nodiscard]] bool over() const;
  [[nodiscard]] event::EndReason end_reason() const;
  [[nodiscard]] const BenchSetup& setup() const;
  [[nodiscard]] const event::Vocabulary& vocabulary() const;
  [[nodiscard]] const BenchState& state() const;
  /// All events so far, in order.
  [[nodiscard]] const std::vector<event::Record>& events() const;

  /// Hash of the state now (not of the events). Equal states give equal hashes on every machine.
  [[nodiscard]] base::Digest state_hash() const;
  /// The state and how many events there are, as bytes; restore() with the same setup goes on from there bit for bit.
  [[nodiscard]] std::string snapshot() const;
  /// errors: bytes that are no snapshot of this bench version. The events before the snapshot are passed in by the
  /// caller.
  [[nodiscard]] static base::Result<Bench> restore(BenchSetup setup, std::string_view bytes,
                                                   std::vector<event::Record> events_before);
  /// First field in which two states differ, as "hole 3 preload: 4011.2 / 4011.3"; empty when equal.
  [[nodiscard]] static std::string first_difference(const BenchState& a, const BenchState& b);

 private:
  struct Inside {  // shared and never changed: copies of a bench share it
    BenchSetup setup;
    event::Vocabulary vocabulary;
  };
  std::shared_ptr<const Inside> inside_;
  BenchState state_;
  std::vector<event::Record> events_;
  mutable std::vector<base::Digest> face_digests_;  // of untouched faces, with the version they were made at
  mutable std::vector<std::int64_t> face_digest_versions_;
};

}  // namespace proofstand::bench

// Writes an attempt line by line as it happens. The first failure ends it: what was written stays, and every later call
// gives the same error.
#pragma once

#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "sim/base/hash.h"
#include "sim/record/attempt.h"
#include "sim/record/files.h"

namespace proofstand::record {

class Recorder {
 public:
  /// Writes the first line. errors: file-write
  static base::Result<Recorder> begin(std::unique_ptr<ByteSink> sink, const AttemptHead& head);
  /// Goes on after the last good line of an attempt that was read; writes that it was resumed. errors: file-write;
  /// closed: an attempt that was closed is never written to again
  static base::Result<Recorder> go_on(std::unique_ptr<ByteSink> sink, const Attempt& attempt);

  /// Keeps an action for the batch; a batch that spans more than a quarter of a second is written first.
  base::Result<base::Done> action(const event::Action& action);
  /// Writes the batch, if there is one.
  base::Result<base::Done> flush();
  /// Writes the batch, then the state hash at a tick.
  base::Result<base::Done> state(base::Tick tick, const base::Digest& digest);
  /// Takes back to an earlier tick. errors: exam-sealed: exams cannot be taken back
  base::Result<base::Done> rewind(base::Tick from, base::Tick to);
  /// Writes the batch, the trace and the closing line. errors: file-write
  base::Result<base::Done> close(const event::Vocabulary& vocabulary, const std::vector<event::Record>& records,
                                 base::Tick end, event::EndReason reason);

  /// First tick of the batch that waits to be written; nothing when none waits.
  [[nodiscard]] std::optional<base::Tick> waiting_since() const;

 private:
  Recorder(std::unique_ptr<ByteSink> sink, Way way, std::string hash);
  base::Result<base::Done> line(const std::string& object);

  std::unique_ptr<ByteSink> sink_;
  Way way_ = Way::Practice;
  std::string hash_;
  std::vector<event::Action> batch_;
  std::optional<base::Error> failed_;
  bool closed_ = false;
};

}  // namespace proofstand::record

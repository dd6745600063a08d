// Scripts worked into attempts in memory, as the command does it with files, for tests of records.
#pragma once

#include <cstdint>
#include <memory>
#include <string>
#include <string_view>

#include "sim/record/attempt.h"
#include "sim/record/scripted_run.h"
#include "sim/scenario/scenario.h"
#include "tests/support/memory_sink.h"

namespace proofstand::testing {

/// The shipped exercise with a worn front rotor, one variant of it. A failure to load is a failure of the test.
scenario::DrawnScenario worn_front_rotor(std::uint64_t seed);
/// Its reference script, whole.
std::string reference_script();
/// A short job that is over in half a minute: two bolts cracked, a reading written, handed over.
std::string short_script();

/// What became of working a script into a file in memory.
struct ScriptedAttempt {
  std::shared_ptr<std::string> bytes = std::make_shared<std::string>();
  std::optional<base::Error> error;  ///< of the file
  std::optional<base::Error> stuck;  ///< of the hand
  bool closed = false;
};
/// fail_at, part: as MemorySink.
ScriptedAttempt work_attempt(const scenario::DrawnScenario& scenario, std::string_view script,
                             record::Way way = record::Way::Practice, std::size_t fail_at = 0, std::size_t part = 0);
/// Recovers what the bytes hold, goes on and works the script to its end; keeps count of appends as above.
ScriptedAttempt resume_attempt(const std::string& bytes, std::string_view script, std::size_t fail_at = 0,
                               std::size_t part = 0);

}  // namespace proofstand::testing

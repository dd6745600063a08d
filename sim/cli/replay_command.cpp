#include "sim/base/number_text.h"
#include "sim/cli/commands.h"
#include "sim/cli/talk.h"
#include "sim/event/job_events.h"
#include "sim/record/attempt_reader.h"
#include "sim/record/marking.h"
#include "sim/record/replay_check.h"
#include "sim/record/trace_file.h"

namespace proofstand::cli {

ExitCode replay_attempt_file(const ReplayOptions& options) {
  const auto attempt = record::load_attempt(options.attempt);
  if (!attempt) return say_error(attempt.error());
  if (attempt->torn_bytes > 0) say("proofstand: " + record::torn_words(*attempt));
  const auto scenario = record::scenario_of(*attempt);
  if (!scenario) return say_error(scenario.error());
  Progress progress("replaying");
  const auto check = record::check_replay(*attempt, *scenario, [&](base::Tick tick) {
    progress.show(base::text_from_int(tick / base::kTicksPerSecond) + " s");
  });
  if (!check) return say_error(check.error());
  if (options.events) {
    const event::Vocabulary vocabulary = event::job_vocabulary(bench::job_items(scenario->setup));
    std::string lines = record::trace_header_line(vocabulary, base::kTicksPerSecond, false) + "\n";
    for (const event::Record& record : check->trace.records)
      lines += record::trace_record_line(vocabulary, record) + "\n";
    print_data(lines + record::trace_end_line(check->trace.end_tick, check->trace.end) + "\n");
  }
  if (check->first) {
    say("proofstand: diverged at tick " + base::text_from_int(check->first->tick) + ": " + check->first->field);
    return ExitCode::Negative;
  }
  say("equal: " + base::text_from_int(static_cast<std::int64_t>(check->states)) + " states and " +
      base::text_from_int(static_cast<std::int64_t>(check->events)) + " events compared" +
      (attempt->closing ? ", trace " + attempt->closing->trace_hash.substr(0, 16) : ", the attempt is still open"));
  return ExitCode::Done;
}

}  // namespace proofstand::cli

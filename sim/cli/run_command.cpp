#include "sim/base/number_text.h"
#include "sim/cli/commands.h"
#include "sim/cli/talk.h"
#include "sim/hand/hand_script.h"
#include "sim/record/attempt_reader.h"
#include "sim/record/files.h"
#include "sim/record/marking.h"
#include "sim/record/scripted_run.h"
#include "sim/scenario/scenario.h"

namespace proofstand::cli {
namespace {

constexpr std::size_t kLargestScript = std::size_t{4} << 20;

std::string clock(base::Tick tick) {
  const std::int64_t total = tick / base::kTicksPerSecond;
  const std::string rest = base::text_from_int(total % 60);
  return base::text_from_int(total / 60) + ":" + (rest.size() < 2 ? "0" : "") + rest;
}

base::Result<scenario::DrawnScenario> draw_scenario(const RunOptions& options) {
  const scenario::Loaded loaded = scenario::load_scenario(options.scenario);
  if (!loaded.usable) {
    say_faults(loaded.faults);
    for (const base::Error& fault : loaded.faults.list) {
      if (fault.code.rfind("file-", 0) == 0) return fault;
    }
    return base::Error{"scenario", options.scenario, "the scenario has faults", "mend what is listed above"};
  }
  return scenario::draw(*loaded.file, static_cast<std::uint64_t>(options.seed));
}

// a hand that holds the script and is about to begin
base::Result<hand::ModelledHand> make_hand(const RunOptions& options, const scenario::DrawnScenario& scenario) {
  const auto text = record::load_bytes(options.script, kLargestScript);
  if (!text) return text.error();
  const auto skill = hand::skill_from_name(options.hand);
  if (!skill) return skill.error();
  hand::ReadScript read = hand::read_hand_script(*text, options.script, scenario.setup);
  say_faults(read.faults);
  if (!read.script) return base::Error{"script", options.script, "the script has faults", "mend what is listed above"};
  return hand::ModelledHand(read.script, *skill, static_cast<std::uint64_t>(options.hand_seed));
}

ExitCode finish(const RunOptions& options, const record::Session& session, const record::ScriptedRun& run) {
  const std::string when = clock(session.bench().tick());
  if (run.stuck) {
    say("proofstand: the hand got stuck at " + when + ": " + run.stuck->sentence());
    say("what was done so far is in " + options.attempt);
    return ExitCode::Negative;
  }
  if (!session.closed()) {
    say("proofstand: the script ended at " + when + " without handing over; the attempt is open in " + options.attempt);
    return ExitCode::Negative;
  }
  say(std::string(session.end_reason() == event::EndReason::Finished ? "handed over" : "ended") + " at " + when + " (" +
      std::string(event::end_words(session.end_reason())) + "), " +
      base::text_from_int(static_cast<std::int64_t>(session.bench().events().size())) + " events, recorded in " +
      options.attempt);
  return ExitCode::Done;
}

ExitCode work(const RunOptions& options, hand::ModelledHand& hand, record::Session& session) {
  Progress progress("working");
  const auto run = record::work_script(hand, session, [&](base::Tick tick, std::size_t line) {
    progress.show(clock(tick) + ", line " + base::text_from_int(static_cast<std::int64_t>(line)) + " of the script");
  });
  if (!run) {
    const ExitCode code = say_error(run.error());
    say("what was done before is in " + options.attempt + "; `run ... --resume` goes on with it");
    return code;
  }
  return finish(options, session, *run);
}

ExitCode begin(const RunOptions& options, base::Result<std::unique_ptr<record::ByteSink>> (*open)(const std::string&)) {
  const auto scenario = draw_scenario(options);
  if (!scenario) return say_error(scenario.error());
  auto hand = make_hand(options, *scenario);
  if (!hand) return say_error(hand.error());
  record::AttemptHead head;
  head.program = options.program;
  head.hand = options.hand;
  head.hand_seed = options.hand_seed;
  head.way = record::way_from_words(options.way).value_or(record::Way::Practice);
  head.who = options.who;
  auto sink = open(options.attempt);
  if (!sink) return say_error(sink.error());
  auto session = record::Session::begin(std::move(*sink), std::move(head), *scenario);
  if (!session) return say_error(session.error());
  return work(options, *hand, *session);
}

// killed before the first line was whole: there is nothing to go on from
bool is_hardly_begun(const std::string& path) {
  const auto bytes = record::load_bytes(path, record::kLargestAttempt);
  return bytes && bytes->find('\n') == std::string::npos && (bytes->empty() || bytes->front() == '{');
}

base::Result<std::unique_ptr<record::ByteSink>> open_anew(const std::string& path) {
  return record::reopen_for_append(path, 0);
}

ExitCode go_on(const RunOptions& options) {
  const auto attempt = record::load_attempt(options.attempt);
  if (!attempt && attempt.error().code == "file-missing") return begin(options, record::create_for_append);
  if (!attempt && is_hardly_begun(options.attempt)) return begin(options, open_anew);
  if (!attempt) return say_error(attempt.error());
  if (attempt->torn_bytes > 0) say("proofstand: " + record::torn_words(*attempt));
  if (attempt->closing) {
    say("proofstand: " + options.attempt + " was handed over already; nothing is left to do");
    return ExitCode::Done;
  }
  const auto scenario = record::scenario_of(*attempt);
  if (!scenario) return say_error(scenario.error());
  RunOptions same = options;
  same.hand = attempt->head.hand.empty() ? options.hand : attempt->head.hand;
  same.hand_seed = attempt->head.hand_seed;
  auto hand = make_hand(same, *scenario);
  if (!hand) return say_error(hand.error());
  const auto caught_up = record::catch_up(*hand, *attempt, *scenario);
  if (!caught_up) return say_error(caught_up.error());
  auto sink = record::reopen_for_append(options.attempt, attempt->good_bytes);
  if (!sink) return say_error(sink.error());
  auto session = record::Session::go_on(std::move(*sink), *attempt, *scenario);
  if (!session) return say_error(session.error());
  hand->begin_instruction_again();
  say("going on from " + clock(attempt->last_tick));
  return work(same, *hand, *session);
}

}  // namespace

ExitCode run_scenario(const RunOptions& options) {
  return options.resume ? go_on(options) : begin(options, record::create_for_append);
}

}  // namespace proofstand::cli

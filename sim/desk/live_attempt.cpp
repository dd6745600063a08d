#include "sim/desk/live_attempt.h"

#include <algorithm>
#include <cmath>

#include "sim/base/number_text.h"
#include "sim/bench/hold_sight.h"
#include "sim/bench/senses.h"
#include "sim/desk/asset_files.h"
#include "sim/record/attempt_reader.h"
#include "sim/record/files.h"
#include "sim/record/marking.h"

namespace proofstand::desk {
namespace {

constexpr int kMostAttempts = 100000;

base::Result<scenario::DrawnScenario> draw(const StartAsk& ask) {
  const scenario::Loaded loaded = scenario::load_scenario(ask.scenario);
  if (!loaded.usable) {
    for (const base::Error& fault : loaded.faults.list) {
      if (!fault.warning) return fault;
    }
    return base::Error{"scenario", ask.scenario, "the scenario has faults", "run the command check on it"};
  }
  return scenario::draw(*loaded.file, static_cast<std::uint64_t>(ask.seed));
}

// a file nobody has used yet: the exercise's name and a number
base::Result<std::pair<std::string, std::unique_ptr<record::ByteSink>>> open_new_file(const std::string& id) {
  const std::string folder = attempts_folder();
  if (folder.empty()) {
    return base::Error{"no-folder", "the attempt", "there is no folder to keep attempts in",
                       "name a file with --attempt, or set HOME or XDG_DATA_HOME"};
  }
  for (int number = 1; number < kMostAttempts; ++number) {
    std::string path = folder + "/" + id + "-" + base::text_from_int(number) + ".attempt";
    auto sink = record::create_for_append(path);
    if (sink) return std::make_pair(std::move(path), std::move(*sink));
    if (sink.error().code != "file-exists") return sink.error();
  }
  return base::Error{"no-folder", folder, "too many attempts lie there", "move some of them elsewhere"};
}

}  // namespace

LiveAttempt::LiveAttempt(record::Session session, scenario::DrawnScenario scenario, record::Way way, std::string path)
    : session_(std::move(session)), scenario_(std::move(scenario)), way_(way), path_(std::move(path)) {}

base::Result<std::unique_ptr<LiveAttempt>> LiveAttempt::begin(const StartAsk& ask) {
  auto drawn = draw(ask);
  if (!drawn) return drawn.error();
  std::string path = ask.attempt;
  std::unique_ptr<record::ByteSink> sink;
  if (path.empty()) {
    auto opened = open_new_file(drawn->id);
    if (!opened) return opened.error();
    path = opened->first;
    sink = std::move(opened->second);
  } else {
    auto opened = record::create_for_append(path);
    if (!opened) return opened.error();
    sink = std::move(*opened);
  }
  record::AttemptHead head;
  head.program = ask.program;
  head.way = ask.way;
  head.who = ask.who;
  head.aids = ask.aids;
  auto session = record::Session::begin(std::move(sink), std::move(head), *drawn);
  if (!session) return session.error();
  return std::unique_ptr<LiveAttempt>(
      new LiveAttempt(std::move(*session), std::move(*drawn), ask.way, std::move(path)));
}

base::Result<std::unique_ptr<LiveAttempt>> LiveAttempt::go_on(const std::string& path) {
  const auto attempt = record::load_attempt(path);
  if (!attempt) return attempt.error();
  if (attempt->closing) {
    return base::Error{"closed", path, "this attempt has been handed over", "look at its mark sheet instead"};
  }
  auto drawn = record::scenario_of(*attempt);
  if (!drawn) return drawn.error();
  auto sink = record::reopen_for_append(path, attempt->good_bytes);
  if (!sink) return sink.error();
  auto session = record::Session::go_on(std::move(*sink), *attempt, *drawn);
  if (!session) return session.error();
  return std::unique_ptr<LiveAttempt>(new LiveAttempt(std::move(*session), std::move(*drawn), attempt->head.way, path));
}

bench::Refusal LiveAttempt::act(const event::Action& action) { return session_.act(action); }

base::Tick LiveAttempt::pass(double step_s) {
  if (over() || step_s <= 0.0) return 0;
  carry_ticks_ += step_s * static_cast<double>(base::kTicksPerSecond);
  const base::Tick due = static_cast<base::Tick>(std::floor(std::min(carry_ticks_, 1e9)));
  carry_ticks_ -= static_cast<double>(due);
  const base::Tick most = is_quiet(bench()) ? kMostWaiting : kMostTicks;
  const base::Tick passed = std::min(due, most);
  session_.bench().advance_to(bench().tick() + passed);
  if (due > passed && !over()) session_.act(event::make_gap(bench().tick(), due - passed));
  return passed;
}

void LiveAttempt::pass_ticks(base::Tick ticks) {
  while (ticks > 0 && !over()) {
    const base::Tick step = std::min(ticks, kMostTicks);
    session_.bench().advance_to(bench().tick() + step);
    ticks -= step;
  }
}

void LiveAttempt::keep() {
  if (trouble_) return;
  const auto kept = session_.keep();
  if (!kept) trouble_ = kept.error();
}

base::Result<base::Done> LiveAttempt::rewind(base::Tick to) {
  carry_ticks_ = 0.0;
  return session_.rewind(to);
}

bool is_quiet(const bench::Bench& bench) {
  if (bench::see_wheel_turning(bench)) return false;
  for (const event::HandId hand : {event::HandId::Left, event::HandId::Right}) {
    const bench::HoldSight sight = bench::see_hold(bench, hand);
    if (sight.stage == bench::HandStage::Busy) return false;
    if (sight.stage == bench::HandStage::At &&
        (sight.turn_level > 0 || sight.along_level > 0 || sight.face_press_n > 0.0)) {
      return false;
    }
  }
  return true;
}

}  // namespace proofstand::desk

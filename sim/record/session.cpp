#include "sim/record/session.h"

#include "sim/base/number_text.h"
#include "sim/base/words.h"
#include "sim/record/marking.h"
#include "sim/record/replayer.h"
#include "sim/record/scripted_run.h"

namespace proofstand::record {
namespace {

// what is written must be what was applied: a text that the file could not hold is mended before
void mend(std::string& text) {
  if (base::is_clean_text(text)) return;
  for (char& c : text) {
    const auto byte = static_cast<unsigned char>(c);
    if (byte < 0x20 || byte > 0x7E) c = '?';
  }
}

base::Error diverged(base::Tick tick) {
  return {"diverged", "",
          "working the attempt again gives another bench than was recorded, at tick " + base::text_from_int(tick),
          "`replay` names the first difference; mark it as it is, or begin another attempt"};
}

}  // namespace

Session::Session(Recorder recorder, const scenario::DrawnScenario& scenario, rules::RuleProgram program,
                 std::unique_ptr<bench::Bench> bench)
    : recorder_(std::move(recorder)),
      bench_(std::move(bench)),
      program_(std::make_unique<rules::RuleProgram>(std::move(program))),
      engine_(rules::start(*program_)),
      time_limit_(scenario.time_limit) {}

base::Result<Session> Session::begin(std::unique_ptr<ByteSink> sink, AttemptHead head,
                                     const scenario::DrawnScenario& scenario) {
  auto program = program_of(scenario);
  if (!program) return program.error();
  head.scenario = scenario.id;
  head.seed = static_cast<std::int64_t>(scenario.seed);
  head.bench = bench::kBenchVersion;
  head.bench_text = scenario.bench_text;
  head.rules_text = scenario.rules_text;
  auto recorder = Recorder::begin(std::move(sink), head);
  if (!recorder) return recorder.error();
  Session session(std::move(*recorder), scenario, std::move(*program), std::make_unique<bench::Bench>(scenario.setup));
  session.watch();
  return session;
}

base::Result<Session> Session::go_on(std::unique_ptr<ByteSink> sink, const Attempt& attempt,
                                     const scenario::DrawnScenario& scenario) {
  if (attempt.head.bench != bench::kBenchVersion) {
    return base::Error{"other-bench", "", "this attempt was begun with another bench version",
                       "go on with the edition that began it"};
  }
  auto program = program_of(scenario);
  if (!program) return program.error();
  Replayer replay(scenario.setup, attempt.actions);
  for (const StateMark& mark : attempt.states) {
    const bench::Bench& bench = replay.after(mark.actions_before, mark.tick);
    if (base::digest_text(bench.state_hash()) != mark.hash) return diverged(mark.tick);
  }
  const bench::Bench& last = replay.after(attempt.actions.size(), attempt.last_tick);
  auto recorder = Recorder::go_on(std::move(sink), attempt);
  if (!recorder) return recorder.error();
  Session session(std::move(*recorder), scenario, std::move(*program), std::make_unique<bench::Bench>(last));
  session.actions_ = attempt.actions;
  session.watch();
  for (event::Action& action : let_go(*session.bench_)) {
    const auto done = session.recorder_.action(action);
    if (!done) return done.error();
    session.actions_.push_back(std::move(action));
  }
  const auto kept = session.keep();
  if (!kept) return kept.error();
  return session;
}

bench::Refusal Session::act(event::Action action) {
  if (closed_ || bench_->over() || stop_asked_) return bench::Refusal::HandedOver;
  mend(action.text);
  const bench::Refusal refusal = bench_->apply(action);
  const auto done = recorder_.action(action);
  if (!done && !trouble_) trouble_ = done.error();
  actions_.push_back(std::move(action));
  return refusal;
}

void Session::watch() {
  const std::vector<event::Record>& events = bench_->events();
  for (; watched_ < events.size(); ++watched_) rules::feed(*program_, engine_, events[watched_]);
  rules::advance(*program_, engine_, bench_->tick());
  if (rules::stop_asked(*program_, engine_)) stop_asked_ = true;
}

base::Result<base::Done> Session::keep() {
  if (trouble_) return *trouble_;
  if (closed_) return base::Done{};
  watch();
  const base::Tick now = bench_->tick();
  if (bench_->over()) return close(bench_->end_reason());
  if (stop_asked_) return close(event::EndReason::Stopped);
  if (time_limit_ > 0 && now - bench_->state().gap_ticks >= time_limit_) return end(event::EndReason::Timeout);
  auto done = recorder_.flush();
  const bool something = actions_.size() != kept_actions_ || bench_->events().size() != kept_events_;
  if (done && something && now >= state_kept_ + kStateTicks) {
    done = recorder_.state(now, bench_->state_hash());
    state_kept_ = now;
    kept_actions_ = actions_.size();
    kept_events_ = bench_->events().size();
  }
  if (!done) trouble_ = done.error();
  return done;
}

base::Result<base::Done> Session::end(event::EndReason reason) {
  if (trouble_) return *trouble_;
  if (closed_) return base::Done{};
  // what lies on the bench when time is up is what the examiner looks at
  if (reason == event::EndReason::Timeout && !bench_->over()) act(event::make_hand_over(bench_->tick()));
  watch();
  return close(reason);
}

base::Result<base::Done> Session::close(event::EndReason reason) {
  reason_ = reason;
  auto done = recorder_.flush();
  if (done) done = recorder_.state(bench_->tick(), bench_->state_hash());
  if (done) done = recorder_.close(bench_->vocabulary(), bench_->events(), bench_->tick(), reason);
  closed_ = static_cast<bool>(done);
  if (!done) trouble_ = done.error();
  return done;
}

base::Result<base::Done> Session::rewind(base::Tick to) {
  if (trouble_) return *trouble_;
  if (closed_) return base::Error{"closed", "", "the attempt has been handed over", "begin another one"};
  if (to < 0 || to > bench_->tick()) {
    return base::Error{"ahead", "", "there is nothing to take back to yet", "name an earlier moment"};
  }
  const auto done = recorder_.rewind(bench_->tick(), to);
  if (!done) {
    if (done.error().code != "exam-sealed") trouble_ = done.error();
    return done;
  }
  while (!actions_.empty() && actions_.back().tick > to) actions_.pop_back();
  Replayer replay(bench_->setup(), actions_);
  *bench_ = replay.at(to);
  engine_ = rules::start(*program_);
  watched_ = 0;
  stop_asked_ = false;
  state_kept_ = to;
  watch();
  return done;
}

}  // namespace proofstand::record

#include "sim/record/scripted_run.h"

#include "sim/base/number_text.h"
#include "sim/record/replayer.h"

namespace proofstand::record {
namespace {

using event::Action;
using event::HandId;

bool same(const Action& a, const Action& b) {
  return a.tick == b.tick && a.kind == b.kind && a.numbers == b.numbers && a.text == b.text;
}

// works a script beside the actions that were recorded from it
class CatchUp {
 public:
  CatchUp(hand::ModelledHand& hand, const Attempt& attempt, const scenario::DrawnScenario& scenario)
      : hand_(hand), attempt_(attempt), bench_(scenario.setup), replay_(scenario.setup, attempt.actions) {}

  base::Result<base::Done> run() {
    const std::vector<Resumption>& cuts = attempt_.resumptions;
    for (std::size_t i = 0; i < cuts.size(); ++i) {
      const std::size_t next = i + 1 < cuts.size() ? cuts[i + 1].actions_before : attempt_.actions.size();
      const auto done = work_to(cuts[i].actions_before);
      if (!done) return done;
      // a resumption after which nothing came to be written left no trace on the hand either
      if (next == cuts[i].actions_before) continue;
      bench_ = replay_.after(cuts[i].actions_before, cuts[i].tick);
      worked_ += let_go(bench_).size();
      hand_.begin_instruction_again();
    }
    return work_to(attempt_.actions.size());
  }

 private:
  base::Result<base::Done> work_to(std::size_t actions) {
    while (worked_ < actions) {
      bool other = false;
      const auto step = hand_.step(bench_, [&](const Action& action) {
        if (worked_ >= actions || !same(action, attempt_.actions[worked_])) other = true;
        ++worked_;
        bench_.apply(action);
      });
      if (other || (worked_ < actions && step != hand::ModelledHand::Step::Going)) return differs();
    }
    return base::Done{};
  }
  [[nodiscard]] base::Error differs() const {
    return {"other-script", "",
            "this hand would not have done what the attempt holds (action " +
                base::text_from_int(static_cast<std::int64_t>(worked_)) + ", line " +
                base::text_from_int(static_cast<std::int64_t>(hand_.line())) + " of the script)",
            "resume with the script, the hand and the seed that the attempt was begun with"};
  }

  hand::ModelledHand& hand_;
  const Attempt& attempt_;
  bench::Bench bench_;
  Replayer replay_;
  std::size_t worked_ = 0;
};

}  // namespace

std::vector<Action> let_go(bench::Bench& bench) {
  std::vector<Action> actions;
  if (bench.over()) return actions;
  for (const HandId hand : {HandId::Left, HandId::Right}) {
    const bench::HandState& state = bench.state().hands[static_cast<std::size_t>(hand)];
    if (state.stage == bench::HandStage::Busy && state.busy_until > bench.tick()) bench.advance_to(state.busy_until);
  }
  for (const HandId hand : {HandId::Left, HandId::Right}) {
    if (bench.over() || bench.state().hands[static_cast<std::size_t>(hand)].stage != bench::HandStage::At) continue;
    for (const event::ActionKind kind : {event::ActionKind::Slack, event::ActionKind::Leave}) {
      actions.push_back(event::make_plain(bench.tick(), kind, hand));
      bench.apply(actions.back());
    }
  }
  return actions;
}

base::Result<ScriptedRun> work_script(hand::ModelledHand& hand, Session& session, const ScriptProgress& progress) {
  ScriptedRun run;
  while (!session.closed()) {
    const auto step = hand.step(session.bench(), [&](const Action& action) { session.act(action); });
    const auto kept = session.keep();
    if (!kept) return kept.error();
    if (progress) progress(session.bench().tick(), hand.line());
    if (session.closed() || step == hand::ModelledHand::Step::Finished) {
      run.finished = true;
      return run;
    }
    if (step == hand::ModelledHand::Step::Stuck) {
      run.stuck = hand.trouble();
      return run;
    }
  }
  run.finished = true;
  return run;
}

base::Result<base::Done> catch_up(hand::ModelledHand& hand, const Attempt& attempt,
                                  const scenario::DrawnScenario& scenario) {
  return CatchUp(hand, attempt, scenario).run();
}

}  // namespace proofstand::record

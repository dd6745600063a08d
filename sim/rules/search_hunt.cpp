// Best first: the run that owes least is continued, until one has full marks or nothing is left to try.
#include <algorithm>
#include <queue>
#include <set>

#include "sim/base/hash.h"
#include "sim/rules/live.h"
#include "sim/rules/rounds_patterns.h"
#include "sim/rules/search_parts.h"

namespace proofstand::rules {
namespace {

struct Node {
  EngineState state;
  int length = 0;
  std::int64_t order = 0;
  std::int64_t owed = 0;
};

struct LaterFirst {
  // the queue gives its greatest: little owed, then short, then early
  bool operator()(const Node& a, const Node& b) const {
    if (a.owed * 2 + a.length != b.owed * 2 + b.length) return a.owed * 2 + a.length > b.owed * 2 + b.length;
    return a.order > b.order;
  }
};

bool is_full(const Report& report) {
  return report.overall == Overall::Passed && report.totals.earned_milli == report.totals.judged_milli;
}

class Hunter {
 public:
  Hunter(const RuleProgram& program, const SearchLimits& limits) : program_(program), limits_(limits) {
    const std::size_t n = program.rules.size();
    hunt_.had_case.assign(n, false);
    hunt_.had_full.assign(n, false);
    hunt_.had_loss.assign(n, false);
  }

  Hunt run(const std::function<bool(std::int64_t)>& asked) {
    const Alphabet alphabet = alphabet_of(program_);
    visit(start(program_), 0);
    bool cut = false;
    while (!open_.empty() && !hunt_.found) {
      if (hunt_.states >= limits_.states || !asked(hunt_.states)) {
        cut = true;
        break;
      }
      const Node node = open_.top();
      open_.pop();
      if (node.length >= limits_.length) {
        cut = true;
        continue;
      }
      grow(node, alphabet);
    }
    hunt_.exhausted = !cut && !hunt_.found && alphabet.exact;
    return std::move(hunt_);
  }

 private:
  void grow(const Node& node, const Alphabet& alphabet) {
    for (base::Tick pause : alphabet.pauses) {
      if (pause > 1) {
        EngineState waited = node.state;
        advance(program_, waited, waited.tick + pause);
        visit(std::move(waited), node.length + 1);
      }
      for (const event::Record& letter : alphabet.letters) {
        if (hunt_.found) return;
        EngineState next = node.state;
        event::Record record = letter;
        record.tick = next.tick + pause;
        feed(program_, next, record);
        visit(std::move(next), node.length + 1);
      }
    }
  }

  void visit(EngineState state, int length) {
    const std::string shape = shape_of(program_, state);
    if (!seen_.insert(base::keyed_word(1, 2, shape)).second) return;
    ++hunt_.states;
    const Report report = finish(program_, state, state.tick, event::EndReason::Finished);
    for (std::size_t i = 0; i < report.rules.size(); ++i) {
      const RuleResult& result = report.rules[i];
      if (result.cases > 0) hunt_.had_case[i] = true;
      if (result.verdict == Verdict::Pass) hunt_.had_full[i] = true;
      if (result.verdict == Verdict::Fail || result.verdict == Verdict::Partial) hunt_.had_loss[i] = true;
    }
    hunt_.found = hunt_.found || is_full(report);
    std::int64_t owed = 0;
    std::vector<RuleIndex> left;
    for (const LiveRule& live : live_view(program_, state)) {
      // what is lost for good is no way to full marks
      if (live.status == LiveStatus::Broken) return;
      if (live.status == LiveStatus::BadSoFar)
        owed += detour(state, live.rule) + 1 + static_cast<std::int64_t>(live.owed.size());
      if (live.status == LiveStatus::Idle) owed += 1;
      if (live.status == LiveStatus::BadSoFar) left.push_back(live.rule);
    }
    if (nearest_ < 0 || owed < nearest_) {
      nearest_ = owed;
      hunt_.nearest_left = std::move(left);
    }
    open_.push({std::move(state), length, hunt_.states, owed});
  }

  // what is still to be done beyond what is owed next: more of a kind, more passes; and a pass that has left its
  // pattern must be ended and done again
  [[nodiscard]] std::int64_t detour(const EngineState& state, RuleIndex index) const {
    const Rule& rule = program_.rules[static_cast<std::size_t>(index)];
    if (rule.kind == RuleKind::Must || rule.kind == RuleKind::Count) {
      return std::max<std::int64_t>(0, rule.count_lo - state.presence[static_cast<std::size_t>(rule.slot)].n);
    }
    if (rule.kind != RuleKind::Rounds) return 0;
    const RoundsState& rounds = state.rounds[static_cast<std::size_t>(rule.slot)];
    const std::int64_t passes_left = rule.passes - 1 - rounds.conforming;
    return passes_left * rule.set_size + (fit_of_pass(rule, rounds.pass).conforms() ? 0 : 2 * rule.set_size);
  }

  const RuleProgram& program_;
  const SearchLimits& limits_;
  Hunt hunt_;
  std::int64_t nearest_ = -1;
  std::set<std::uint64_t> seen_;
  std::priority_queue<Node, std::vector<Node>, LaterFirst> open_;
};

}  // namespace

Hunt hunt(const RuleProgram& program, const SearchLimits& limits, const std::function<bool(std::int64_t)>& asked) {
  return Hunter(program, limits).run(asked);
}

}  // namespace proofstand::rules

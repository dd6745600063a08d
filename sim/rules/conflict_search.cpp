#include "sim/rules/conflict_search.h"

#include <algorithm>

#include "sim/base/number_text.h"
#include "sim/rules/compile.h"
#include "sim/rules/search_parts.h"
#include "sim/rules/tokens.h"

namespace proofstand::rules {
namespace {

// a set larger than this tells an author nothing; the search was then too short
constexpr std::size_t kLargestSet = 5;

class Search {
 public:
  Search(const RuleProgram& program, const SearchLimits& limits, const SearchProgress& progress)
      : program_(program), limits_(limits), progress_(progress) {}

  SearchResult run() {
    const auto n = static_cast<RuleIndex>(program_.rules.size());
    const Hunt whole = look(program_, limits_, 0, 400);
    result_.complete = whole.found || whole.exhausted;
    for (RuleIndex i = 0; i < n && !stopped_; ++i) judge_alone(i, whole, 400 + 300 * i / n);
    if (!whole.found && !stopped_) shrink(whole);
    if (progress_) progress_(1000);
    return std::move(result_);
  }

 private:
  Hunt look(const RuleProgram& program, const SearchLimits& limits, int from_milli, int to_milli) {
    const Hunt found = hunt(program, limits, [&](std::int64_t states) {
      const auto share = static_cast<int>(states * (to_milli - from_milli) / std::max<std::int64_t>(1, limits.states));
      if (!stopped_ && progress_ && !progress_(from_milli + std::min(share, to_milli - from_milli))) stopped_ = true;
      return !stopped_;
    });
    result_.states += found.states;
    return found;
  }

  void fault(std::string code, RuleIndex rule, std::string what, std::string instead, bool proved) {
    base::Error error{std::move(code), place_words(program_.specs[static_cast<std::size_t>(rule)].id.at),
                      std::move(what), std::move(instead)};
    // what was only not found within the limits must not refuse a scenario
    error.warning = !proved;
    result_.faults.add(std::move(error));
  }

  [[nodiscard]] std::string reach(bool proved) const {
    return proved ? "" : " in any run of up to " + base::text_from_int(limits_.length) + " events that was tried";
  }

  // what the search for the whole did not see is looked for in the rule alone
  void judge_alone(RuleIndex index, const Hunt& whole, int milli) {
    const auto i = static_cast<std::size_t>(index);
    if (whole.had_full[i] && whole.had_loss[i]) return;
    if (!program_.rules[i].children.empty()) return;
    const std::optional<RuleProgram> alone = only_rules(program_, {index}, false);
    if (!alone) return;
    SearchLimits few = limits_;
    few.states = std::min<std::int64_t>(limits_.states, 2000);
    Hunt own = look(*alone, few, milli, milli);
    const bool had_case = own.had_case[0] || whole.had_case[i];
    const bool had_full = own.had_full[0] || whole.had_full[i];
    const bool had_loss = own.had_loss[0] || whole.had_loss[i];
    const std::string name = "'" + program_.id_of(index) + "'";
    if (!had_case) {
      fault("E20", index, name + " has no chance" + reach(own.exhausted), "check its scope and what it waits for",
            own.exhausted);
    } else if (!had_full) {
      fault("E21", index, name + " is never kept" + reach(own.exhausted), "loosen it", own.exhausted);
    } else if (!had_loss && own.exhausted) {
      fault("E22", index, name + " is never lost", "ask for something, or leave it out", true);
    }
  }

  void shrink(const Hunt& whole) {
    std::vector<RuleIndex> left;
    for (RuleIndex i = 0; i < static_cast<RuleIndex>(program_.rules.size()); ++i) left.push_back(i);
    SearchLimits few = limits_;
    few.states = std::max<std::int64_t>(200, limits_.states / static_cast<std::int64_t>(left.size() + 1));
    // first what is lost whatever one does; only then what can be kept by leaving the work undone
    const std::optional<RuleProgram> lenient = only_rules(program_, left, true);
    const bool idle_is_fine = lenient && !look(*lenient, few, 700, 750).found;
    bool proved = whole.exhausted;
    for (std::size_t at = 0; at < left.size() && !stopped_;) {
      std::vector<RuleIndex> without = left;
      without.erase(without.begin() + static_cast<std::ptrdiff_t>(at));
      const std::optional<RuleProgram> program =
          without.empty() ? std::nullopt : only_rules(program_, without, idle_is_fine);
      const Hunt tried = program ? look(*program, few, 750, 1000) : Hunt{};
      if (!program || tried.found) {
        ++at;
        continue;
      }
      left = std::move(without);
      proved = tried.exhausted;
    }
    std::string names;
    for (RuleIndex rule : left) names += (names.empty() ? "'" : ", '") + program_.id_of(rule) + "'";
    if (left.size() > kLargestSet || stopped_) {
      std::string nearest;
      for (RuleIndex rule : whole.nearest_left) nearest += (nearest.empty() ? "'" : ", '") + program_.id_of(rule) + "'";
      fault("E24", whole.nearest_left.empty() ? 0 : whole.nearest_left[0],
            "no run with full marks was found" + reach(whole.exhausted) + "; the nearest one still owed " + nearest,
            "let the reference script show that it can be done", whole.exhausted);
      return;
    }
    result_.conflicts.push_back(left);
    fault("E23", left[0],
          left.size() == 1 ? names + " cannot be kept" + reach(proved) : names + " cannot all be kept" + reach(proved),
          "loosen one of them; without any one of them the others can be kept", proved);
  }

  const RuleProgram& program_;
  const SearchLimits& limits_;
  const SearchProgress& progress_;
  SearchResult result_;
  bool stopped_ = false;
};

}  // namespace

std::optional<RuleProgram> only_rules(const RuleProgram& program, const std::vector<RuleIndex>& rules,
                                      bool idle_is_fine) {
  CompileInput input;
  input.vocabulary = program.vocabulary;
  if (program.pass_done != event::kNoKind) input.vocabulary.kinds.pop_back();
  input.sheet = program.sheet;
  input.marks = program.marks;
  // the declared totals are those of all rules
  input.marks.points_milli.reset();
  if (idle_is_fine) input.marks.min_coverage_milli = 0;
  for (MarksSpec::Competence& row : input.marks.competences) row.points_milli.reset();
  input.ticks_per_s = program.ticks_per_s;
  input.evidence = program.evidence;
  const auto has = [&](const Text& id) {
    return std::any_of(rules.begin(), rules.end(), [&](RuleIndex rule) { return program.id_of(rule) == id.text; });
  };
  for (RuleIndex rule : rules) {
    RuleSpec spec = program.specs[static_cast<std::size_t>(rule)];
    std::vector<Text> excuses;
    for (const Text& id : spec.after_failure_of) {
      if (has(id)) excuses.push_back(id);
    }
    spec.after_failure_of = std::move(excuses);
    for (const Text& id : spec.children) {
      if (!has(id)) return std::nullopt;
    }
    // a child without its composite has no points; a whole point keeps the sum from being nothing
    if (spec.points_milli == 0 && spec.severity.text != "note") spec.points_milli = 1000;
    if (!spec.competence.given() && !input.marks.competences.empty()) {
      spec.competence = input.marks.competences[0].name;
    }
    input.rules.push_back(std::move(spec));
  }
  return std::move(compile_rules(input).program);
}

SearchResult search_conflicts(const RuleProgram& program, const SearchLimits& limits, const SearchProgress& progress) {
  if (program.rules.empty()) return {};
  return Search(program, limits, progress).run();
}

}  // namespace proofstand::rules

#include "tests/guided/bot.h"

#include <algorithm>
#include <optional>

#include "sim/record/marking.h"
#include "sim/report/guidance.h"
#include "sim/rules/engine.h"

namespace proofstand::testing {
namespace {

constexpr std::size_t kMostSteps = 400;
constexpr std::size_t kMostAlike = 8;  // the same advice so often: nothing comes of it
constexpr base::Tick kLongest = 3 * 3600 * base::kTicksPerSecond;

class Bot {
 public:
  Bot(const scenario::DrawnScenario& scenario, const rules::RuleProgram& program, bench::BenchSetup setup,
      const hand::HandSkill& skill, std::uint64_t hand_seed)
      : scenario_(scenario),
        program_(program),
        bench_(std::move(setup)),
        skill_(skill),
        seed_(hand_seed),
        engine_(rules::start(program)) {
    watch();
  }

  GuidedJob run(std::string_view language, std::string_view spoil) {
    GuidedJob job;
    if (!spoil.empty()) work(std::string(spoil), job);
    while (job.stuck.empty() && !bench_.over()) {
      const report::Guidance guidance = report::compute_guidance(program_, engine_, scenario_, bench_, language);
      if (!guidance.next || guidance.next->lines.empty()) {
        job.stuck = guidance.next ? "no lines for: " + guidance.next->say : "no advice: " + guidance.say_stuck;
        break;
      }
      const GuidedStep step{bench_.tick(), guidance.title, guidance.next->say, guidance.next->lines};
      const auto alike = std::count_if(job.steps.begin(), job.steps.end(),
                                       [&](const GuidedStep& before) { return before.lines == step.lines; });
      job.steps.push_back(step);
      std::string text;
      for (const std::string& line : step.lines) text += line + "\n";
      work(text, job);
      if (static_cast<std::size_t>(alike) >= kMostAlike || job.steps.size() > kMostSteps)
        job.stuck = "advised again and again: " + text;
    }
    finish(job);
    return job;
  }

 private:
  void work(const std::string& text, GuidedJob& job) {
    const hand::ReadScript read = hand::read_hand_script(text, "guidance", bench_.setup());
    if (!read.script) {
      job.stuck = read.faults.list.front().sentence();
      return;
    }
    if (hand_) {
      hand_->go_on_with(read.script);
    } else {
      hand_.emplace(read.script, skill_, seed_);
    }
    hand::ModelledHand::Step step = hand::ModelledHand::Step::Going;
    while (step == hand::ModelledHand::Step::Going && bench_.tick() < kLongest) {
      step = hand_->step(bench_, [this](const event::Action& action) { bench_.apply(action); });
    }
    if (step != hand::ModelledHand::Step::Finished) job.stuck = hand_->trouble().sentence();
    watch();
  }

  void watch() {
    for (; watched_ < bench_.events().size(); ++watched_) rules::feed(program_, engine_, bench_.events()[watched_]);
    rules::advance(program_, engine_, bench_.tick());
  }

  void finish(GuidedJob& job) {
    const event::EndReason end = bench_.over() ? bench_.end_reason() : event::EndReason::Aborted;
    job.report = rules::finish(program_, engine_, bench_.tick(), end);
    for (const rules::RuleResult& result : job.report.rules) {
      const bool kept = result.verdict == rules::Verdict::Pass || result.verdict == rules::Verdict::NotApplicable;
      if (!kept && result.points_milli > 0) job.lost.push_back(program_.id_of(result.rule));
    }
  }

  const scenario::DrawnScenario& scenario_;
  const rules::RuleProgram& program_;
  bench::Bench bench_;
  hand::HandSkill skill_;
  std::uint64_t seed_;
  rules::EngineState engine_;
  std::size_t watched_ = 0;
  std::optional<hand::ModelledHand> hand_;
};

}  // namespace

bool GuidedJob::full_marks() const {
  return stuck.empty() && lost.empty() && report.end == event::EndReason::Finished &&
         report.overall == rules::Overall::Passed && report.totals.earned_milli == report.totals.judged_milli;
}

GuidedJob work_guided(const scenario::DrawnScenario& scenario, const hand::HandSkill& skill, std::uint64_t hand_seed,
                      std::string_view language, std::string_view spoil) {
  GuidedJob job;
  const auto program = record::program_of(scenario);
  if (!program) {
    job.stuck = program.error().sentence();
    return job;
  }
  bench::BenchSetup setup = scenario.setup;
  setup.strength_percentile_1 = skill.strength_percentile_1;
  return Bot(scenario, *program, std::move(setup), skill, hand_seed).run(language, spoil);
}

}  // namespace proofstand::testing

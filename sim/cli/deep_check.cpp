#include "sim/cli/deep_check.h"

#include <filesystem>

#include "sim/base/number_text.h"
#include "sim/cli/talk.h"
#include "sim/hand/hand_script.h"
#include "sim/record/files.h"
#include "sim/record/marking.h"
#include "sim/rules/conflict_search.h"
#include "sim/rules/engine.h"
#include "sim/rules/text_fill.h"

namespace proofstand::cli {
namespace {

constexpr std::size_t kLargestScript = std::size_t{4} << 20;
// a script that never ends would hang the check
constexpr base::Tick kLongestRun = 4 * 3600 * base::kTicksPerSecond;

std::string number(std::size_t value) { return base::text_from_int(static_cast<std::int64_t>(value)); }

base::Error unfair(const std::string& path, std::size_t variant, const std::string& what) {
  return {"S20", path, "variant " + number(variant) + ": the reference script " + what,
          "mend the script, the scenario or the rule: an exercise that its own reference fails is not fair"};
}

// works the script on one variant; a sentence when it does not get full marks
std::string work_variant(const std::string& script_path, const std::string& script_text,
                         const scenario::DrawnScenario& scenario) {
  hand::ReadScript read = hand::read_hand_script(script_text, script_path, scenario.setup);
  if (!read.script) {
    return "has a fault: " + (read.faults.list.empty() ? std::string("unknown") : read.faults.list.front().sentence());
  }
  const auto program = record::program_of(scenario);
  if (!program) return "cannot be judged: " + program.error().sentence();
  bench::Bench bench(scenario.setup);
  hand::ModelledHand hand(read.script, hand::journeyman(), scenario.seed);
  while (!bench.over() && bench.tick() < kLongestRun) {
    const auto step = hand.step(bench, [&](const event::Action& action) { bench.apply(action); });
    if (step == hand::ModelledHand::Step::Stuck) return "gets stuck: " + hand.trouble().sentence();
    if (step == hand::ModelledHand::Step::Finished) break;
  }
  if (!bench.over()) return "does not hand over";
  event::Trace trace;
  trace.records = bench.events();
  trace.end_tick = bench.tick();
  trace.end = bench.end_reason();
  const rules::Report report = rules::judge(*program, trace);
  for (const rules::RuleResult& result : report.rules) {
    if (result.verdict != rules::Verdict::Fail && result.verdict != rules::Verdict::Partial) continue;
    return "loses \"" + program->id_of(result.rule) + "\": " + rules::fill_text(*program, report, result.rule, "en");
  }
  if (report.overall != rules::Overall::Passed) {
    return "does not pass: " + std::string(rules::overall_reason_word(report.reason));
  }
  return {};
}

void add_conflicts(base::Faults& faults, const scenario::ScenarioFile& file) {
  const auto scenario = scenario::draw_variant(file, 0, 0);
  if (!scenario) {
    faults.add(scenario.error());
    return;
  }
  const auto program = record::program_of(*scenario);
  if (!program) {
    faults.add(program.error());
    return;
  }
  Progress progress("searching for rules that cannot all hold:");
  rules::SearchResult search = rules::search_conflicts(*program, {}, [&](int done_milli) {
    progress.show(base::text_from_int(done_milli / 10) + " %");
    return true;
  });
  for (base::Error& fault : search.faults.list) faults.add(std::move(fault));
}

}  // namespace

std::string find_reference_script(const std::string& scenario_path, const std::string& script_name) {
  namespace fs = std::filesystem;
  const fs::path folder = fs::path(scenario_path).parent_path();
  const std::string name = script_name + ".hand";
  std::error_code trouble;
  for (const fs::path& candidate :
       {folder / name, folder / ".." / ".." / "demo" / "scripts" / name, fs::path("demo") / "scripts" / name}) {
    if (fs::exists(candidate, trouble)) return candidate.lexically_normal().string();
  }
  return {};
}

base::Faults deep_faults(const std::string& path, const scenario::ScenarioFile& file) {
  base::Faults faults;
  const std::string name = scenario::reference_script(file);
  if (name.empty()) {
    add_conflicts(faults, file);
    faults.add({"S21", path, "no reference script is named, so no variant was worked",
                "name one with reference_script = \"...\"", true});
    return faults;
  }
  const std::string script_path = find_reference_script(path, name);
  if (script_path.empty()) {
    add_conflicts(faults, file);
    faults.add({"S21", path, "the reference script \"" + name + "\" was not found",
                "put " + name + ".hand beside the scenario or into demo/scripts"});
    return faults;
  }
  const auto text = record::load_bytes(script_path, kLargestScript);
  if (!text) {
    faults.add(text.error());
    return faults;
  }
  const std::size_t variants = scenario::variant_count(file);
  {
    Progress progress("working the reference script:");
    for (std::size_t variant = 0; variant < variants; ++variant) {
      progress.show_now("variant " + number(variant + 1) + " of " + number(variants));
      const auto scenario = scenario::draw_variant(file, variant, variant);
      if (!scenario) {
        faults.add(scenario.error());
        continue;
      }
      const std::string trouble = work_variant(script_path, *text, *scenario);
      if (!trouble.empty()) faults.add(unfair(path, variant, trouble));
    }
  }
  // a run that keeps every rule is the proof that all can be kept; only without one is a conflict worth looking for
  if (faults.any_error()) add_conflicts(faults, file);
  return faults;
}

}  // namespace proofstand::cli

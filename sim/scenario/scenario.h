// A scenario file read, checked and drawn: what the bench starts from, the rules that judge it, and the texts that go
// with it.
#pragma once

#include <cstdint>
#include <memory>
#include <string>
#include <string_view>
#include <vector>

#include "sim/base/result.h"
#include "sim/base/ticks.h"
#include "sim/bench/setup.h"
#include "sim/rules/compile.h"
#include "sim/rules/spec.h"
#include "sim/scenario/texts.h"

namespace proofstand::scenario {

/// A stage of the whole job, and whether it belongs to this exercise (others are shown as not part of this job).
struct Stage {
  std::string name;  ///< one of the competences' stages: "take-in" ... "record"
  bool in_this_job = true;
};

/// One variant, ready to be worked and marked.
struct DrawnScenario {
  std::string id;  ///< file name without folder and ending
  Texts title;
  Texts task;                          ///< what to do, in the words of whoever gives the job
  Texts sheet_note;                    ///< what the maker's sheet says in words
  std::vector<std::string> languages;  ///< that every text is there in; "en" first
  std::uint64_t seed = 0;
  std::size_t variant = 0;  ///< which of the variants; `variants` is how many there are
  std::size_t variants = 1;
  std::vector<std::string> drawn;  ///< what was drawn, in words, for the mark sheet after the job ("grit = boss 3")
  bench::BenchSetup setup;
  std::vector<rules::RuleSpec> rules;
  std::vector<RuleLine> rule_lines;  ///< by rule
  std::vector<rules::SheetFigure> sheet;
  rules::MarksSpec marks;
  std::vector<SheetLine> sheet_lines;
  std::vector<CardLine> card_lines;  ///< by card entry
  std::vector<Stage> stages;
  Texts cautions;                ///< one paragraph a caution
  base::Tick time_limit = 0;     ///< 0: none
  std::string reference_script;  ///< name of the script that works this exercise well; empty when none is named
  // the resolved file in two parts, as attempts embed and hash them; read_resolved() makes the same scenario of them
  std::string bench_text;
  std::string rules_text;
};

/// Everything the rule compiler needs to judge runs of this scenario.
rules::CompileInput compile_input(const DrawnScenario& scenario);

/// A scenario file with its includes, parsed; variants not yet drawn.
class ScenarioFile;

/// What reading gives: faults, and the file when nothing forbids it.
struct Loaded {
  base::Faults faults;
  bool usable = false;                  ///< no error among the faults: draw() works
  std::vector<std::string> texts_read;  ///< contents of the files read, in order
  std::shared_ptr<const ScenarioFile> file;
};

/// Reads and checks a file statically. path: a .toml under a scenarios folder; includes may not leave that file's own
/// folder and the folder of shared rule sets beside it. Every fault is listed with file, line and column; warnings
/// alone still load.
Loaded load_scenario(const std::string& path);

/// Draws the variant of a seed: deterministic; seeds 0, 1, 2 ... reach every variant within variant_count() seeds.
/// errors: variant that the check did not allow (never after a clean load)
base::Result<DrawnScenario> draw(const ScenarioFile& file, std::uint64_t seed);
/// How many variants a seed can draw (1..256).
std::size_t variant_count(const ScenarioFile& file);
/// The variant with this number, whatever the seed that draws it; the bench's own scatter still follows `seed`.
/// errors: a number that is not below variant_count()
base::Result<DrawnScenario> draw_variant(const ScenarioFile& file, std::size_t variant, std::uint64_t seed);
/// Name of the script that works this exercise well, without folder and ending; empty when the file names none.
std::string reference_script(const ScenarioFile& file);

/// Makes a scenario of an attempt's two embedded parts. errors: as load_scenario, located in the part.
base::Result<DrawnScenario> read_resolved(std::string_view bench_text, std::string_view rules_text);

}  // namespace proofstand::scenario

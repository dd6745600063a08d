// A scenario file read, checked and drawn: what the bench starts from, the rules that judge it, and the texts that go with it.
#pragma once

#include <cstdint>
#include <map>
#include <memory>
#include <string>
#include <string_view>
#include <vector>

#include "sim/base/result.h"
#include "sim/base/ticks.h"
#include "sim/bench/setup.h"
#include "sim/rules/rule_spec.h"

namespace proofstand::scenario {

/// A text in several languages, by language tag ("en", "de").
using Texts = std::map<std::string, std::string>;
/// The text in a language, or in English, or in whatever there is; empty when there is none.
std::string_view text_in(const Texts& texts, std::string_view language);

/// A stage of the whole job, and whether it belongs to this exercise (others are shown as not part of this job).
struct Stage {
  std::string name;       ///< one of the competences' stages: "take-in" ... "record"
  bool in_this_job = true;
};

/// A figure of the maker's sheet as a person reads it.
struct SheetLine {
  std::string name;       ///< as rules call it: sheet.<name>
  Texts label;
  base::Quantity value;
  double tolerance_si = 0.0;  ///< 0: none given
};

/// One variant, ready to be worked and marked.
struct DrawnScenario {
  std::string id;                 ///< file name without folder and ending
  Texts title;
  Texts task;                     ///< what to do, as the job sheet says it
  std::uint64_t seed = 0;
  std::size_t variant = 0;        ///< which of the variants; `variants` is how many there are
  std::size_t variants = 1;
  std::vector<std::string> drawn; ///< what was drawn, in words, for the mark sheet after the job ("grit = boss 3")
  bench::BenchSetup setup;
  std::vector<rules::RuleSpec> rules;
  rules::Sheet sheet;
  rules::Marks marks;
  std::vector<SheetLine> sheet_lines;
  std::vector<Stage> stages;
  Texts cautions;
  base::Tick time_limit = 0;      ///< 0: none
  // the resolved file in two parts, as attempts embed and hash them; read_resolved() makes the same scenario of them
  std::string bench_text;
  std::string rules_text;
};

/// A scenario file with its includes, parsed; variants not yet drawn.
class ScenarioFile;

/// Reads and checks a file statically. path: a .toml under a scenarios folder; includes may not leave that file's own folder and
/// the folder of shared rule sets beside it. Every fault is listed with file, line and column; warnings alone still load.
struct Loaded {
  base::Faults faults;
  bool usable = false;            ///< no error among the faults: draw() works
  std::vector<std::string> texts_read;  ///< contents of the files read, in order
  std::shared_ptr<const ScenarioFile> file;
};
Loaded load_scenario(const std::string& path);

/// Draws the variant of a seed: deterministic; seeds 0, 1, 2 ... reach every variant within variants() seeds.
/// errors: variant that the check did not allow (never after a clean load)
base::Result<DrawnScenario> draw(const ScenarioFile& file, std::uint64_t seed);
/// How many variants a seed can draw (1..256).
std::size_t variant_count(const ScenarioFile& file);
/// The variant with this number, whatever the seed that draws it; the bench's own scatter still follows `seed`.
base::Result<DrawnScenario> draw_variant(const ScenarioFile& file, std::size_t variant, std::uint64_t seed);

/// Makes a scenario of an attempt's two embedded parts. errors: as load_scenario, located in the part.
base::Result<DrawnScenario> read_resolved(std::string_view bench_text, std::string_view rules_text);

}  // namespace proofstand::scenario

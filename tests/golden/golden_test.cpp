// Danger: a change somewhere below moves marks or events and nobody notices. Each script that ships is worked and
// marked; events and mark sheet stand beside this file as text. After a change that is meant, tests/golden/accept
// writes them anew, and the commit says why.
#include <algorithm>
#include <cstdlib>
#include <filesystem>

#include "sim/event/job_events.h"
#include "sim/record/attempt_reader.h"
#include "sim/record/files.h"
#include "sim/record/marking.h"
#include "sim/record/trace_file.h"
#include "sim/report/make_mark_sheet.h"
#include "sim/report/mark_sheet_text.h"
#include "tests/support/catch.h"
#include "tests/support/scripted_attempt.h"

namespace proofstand::testing {
namespace {

namespace fs = std::filesystem;

constexpr std::size_t kLargest = std::size_t{16} << 20;
const fs::path kRoot = PROOFSTAND_ROOT;

// worn-front-rotor-thumb.hand belongs to worn-front-rotor.toml: the longest name that it begins with
std::string scenario_of_script(const std::string& script) {
  std::string best;
  for (const fs::directory_entry& entry : fs::directory_iterator(kRoot / "scenarios" / "six-bolt")) {
    const std::string stem = entry.path().stem().string();
    if (entry.path().extension() == ".toml" && script.rfind(stem, 0) == 0 && stem.size() > best.size()) best = stem;
  }
  return best;
}

std::vector<std::string> scripts() {
  std::vector<std::string> names;
  for (const fs::directory_entry& entry : fs::directory_iterator(kRoot / "demo" / "scripts")) {
    const std::string stem = entry.path().stem().string();
    if (entry.path().extension() == ".hand" && !scenario_of_script(stem).empty()) names.push_back(stem);
  }
  std::sort(names.begin(), names.end());
  return names;
}

std::string load(const fs::path& path) {
  const auto bytes = record::load_bytes(path.string(), kLargest);
  return bytes ? *bytes : std::string();
}

// the first line in which two texts differ, for the message
std::string first_change(const std::string& kept, const std::string& got) {
  std::size_t at = 0;
  while (at < kept.size() && at < got.size() && kept[at] == got[at]) ++at;
  const auto line = [&](const std::string& text) {
    const std::size_t from = at == 0 ? 0 : text.rfind('\n', at - 1) + 1;
    return from < text.size() ? text.substr(from, text.find('\n', at) - from) : std::string("(end)");
  };
  return "kept: " + line(kept) + "\ngot:  " + line(got);
}

void compare(const std::string& name, const std::string& got) {
  const fs::path path = kRoot / "tests" / "golden" / name;
  if (std::getenv("PROOFSTAND_ACCEPT") != nullptr) {
    REQUIRE(record::save_bytes(path.string(), got));
    return;
  }
  const std::string kept = load(path);
  INFO(name << "; if this is meant, run tests/golden/accept and say why in the commit");
  INFO(first_change(kept, got));
  CHECK((kept == got));
}

}  // namespace

TEST_CASE("every script that ships gives the events and the mark sheet that were accepted") {
  const std::vector<std::string> names = scripts();
  REQUIRE_FALSE(names.empty());
  for (const std::string& name : names) {
    INFO(name);
    const fs::path scenario_path = kRoot / "scenarios" / "six-bolt" / (scenario_of_script(name) + ".toml");
    const scenario::Loaded loaded = scenario::load_scenario(scenario_path.string());
    REQUIRE(loaded.usable);
    const auto scenario = scenario::draw(*loaded.file, 0);
    REQUIRE(scenario);
    const ScriptedAttempt worked = work_attempt(*scenario, load(kRoot / "demo" / "scripts" / (name + ".hand")));
    INFO((worked.stuck ? worked.stuck->sentence() : std::string()));
    CHECK_FALSE(worked.stuck);
    auto attempt = record::read_attempt(*worked.bytes, name);
    REQUIRE(attempt);
    const auto marking = record::mark_attempt(std::move(*attempt));
    REQUIRE(marking);
    const event::Vocabulary vocabulary = event::job_vocabulary(bench::job_items(scenario->setup));
    std::string events = record::trace_header_line(vocabulary, base::kTicksPerSecond, false) + "\n";
    for (const event::Record& record : marking->trace.records) {
      events += record::trace_record_line(vocabulary, record) + "\n";
    }
    compare(name + ".events", events + record::trace_end_line(marking->trace.end_tick, marking->trace.end) + "\n");
    compare(name + ".sheet", report::mark_sheet_text(report::make_mark_sheet(*marking, "en"), "en"));
  }
}

}  // namespace proofstand::testing

// Guided work leads to a good job: a bot that does only what the guidance owes next, on every variant of every shipped
// exercise, ends in full marks. Guidance that sends a trainee in circles, or past a requirement, teaches the wrong
// trade.
//
// proofstand_guided [EXERCISE [VARIANT]]: also tells every step.
#include <algorithm>
#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <sstream>
#include <string>
#include <vector>

#include "tests/guided/bot.h"
#include "tests/guided/cuts.h"

namespace {

using namespace proofstand;

std::vector<std::string> exercises() {
  std::vector<std::string> paths;
  const std::string folder = std::string(PROOFSTAND_ROOT) + "/scenarios/six-bolt";
  for (const auto& entry : std::filesystem::directory_iterator(folder)) paths.push_back(entry.path().string());
  std::sort(paths.begin(), paths.end());
  return paths;
}

// hands as in the reference jobs: skilled, and not pulling on now and then
hand::HandSkill steady_hand() {
  hand::HandSkill skill = hand::journeyman();
  skill.pull_again_1 = 0.0;
  return skill;
}

void tell(const testing::GuidedJob& job) {
  for (const testing::GuidedStep& step : job.steps) {
    std::printf("%7.1f s  %s | %s\n", base::seconds(step.tick), step.title.c_str(), step.say.c_str());
    for (const std::string& line : step.lines) std::printf("             %s\n", line.c_str());
  }
}

void explain(const std::string& name, std::size_t variant, const testing::GuidedJob& job) {
  std::printf("%s, variant %zu:", name.c_str(), variant);
  for (const std::string& rule : job.lost) std::printf(" %s", rule.c_str());
  if (!job.stuck.empty()) std::printf(" STUCK %s", job.stuck.c_str());
  std::printf(" %s\n", std::string(rules::overall_reason_word(job.report.reason)).c_str());
}

std::vector<std::string> script_lines(const std::string& name) {
  std::ifstream in(std::string(PROOFSTAND_ROOT) + "/demo/scripts/" + name + ".hand");
  std::stringstream text;
  text << in.rdbuf();
  return testing::written_out(text.str());
}

struct Count {
  std::size_t good = 0;
  std::size_t all = 0;
};

// each job taken over after each of its lines but the last, which hands over: nothing is lost that the job would not
// have lost by itself
Count take_over(const std::string& script, const scenario::DrawnScenario& scenario) {
  Count count;
  const std::vector<std::string> lines = script_lines(script);
  const std::vector<std::string> may_lose =
      testing::work_guided(scenario, steady_hand(), 1, "en", testing::cut_after(lines, lines.size())).lost;
  for (std::size_t cut = 0; cut + 1 < lines.size(); ++cut) {
    ++count.all;
    const testing::GuidedJob job =
        testing::work_guided(scenario, steady_hand(), 1, "en", testing::cut_after(lines, cut));
    bool good = job.stuck.empty();
    for (const std::string& rule : job.lost) {
      good = good && std::find(may_lose.begin(), may_lose.end(), rule) != may_lose.end();
    }
    if (good) {
      ++count.good;
    } else {
      explain(script + " left off after \"" + (cut > 0 ? lines[cut - 1] : "") + "\"", scenario.variant, job);
    }
  }
  return count;
}

constexpr const char* kTakenOver[] = {
    "mixed-tray-front",
    "ruined-or-bent",
    "worn-front-rotor",
    "worn-front-rotor-thumb-on-the-track",
    "worn-front-rotor-pulled-past-the-click",
    "worn-front-rotor-snugged-without-turning",
    "worn-front-rotor-one-face-wiped",
    "worn-front-rotor-reversed",
};

std::string exercise_of(const std::string& script) {
  return script.rfind("worn-front-rotor", 0) == 0 ? "worn-front-rotor" : script;
}

}  // namespace

int main(int argc, char** argv) {
  std::setvbuf(stdout, nullptr, _IOLBF, 1 << 16);
  const std::string only = argc > 1 ? argv[1] : "";
  const long only_variant = argc > 2 ? std::strtol(argv[2], nullptr, 10) : -1;
  std::size_t full = 0, all = 0;
  for (const std::string& path : exercises()) {
    const std::string name = std::filesystem::path(path).stem().string();
    if (!only.empty() && name != only) continue;
    const scenario::Loaded loaded = scenario::load_scenario(path);
    if (!loaded.usable) {
      ++all;
      std::printf("%s: %s\n", name.c_str(), loaded.faults.list.front().sentence().c_str());
      continue;
    }
    for (std::size_t variant = 0; variant < scenario::variant_count(*loaded.file); ++variant) {
      if (only_variant >= 0 && static_cast<long>(variant) != only_variant) continue;
      ++all;
      const auto drawn = scenario::draw_variant(*loaded.file, variant, variant + 1);
      if (!drawn.has_value()) continue;
      const std::string_view language = variant % 2 == 0 ? "en" : "de";
      const testing::GuidedJob job = testing::work_guided(drawn.value(), steady_hand(), 1, language);
      if (!only.empty()) tell(job);
      if (job.full_marks()) {
        ++full;
      } else {
        explain(name, variant, job);
      }
    }
  }
  Count taken;
  for (const char* script : kTakenOver) {
    if (!only.empty()) break;
    const scenario::Loaded loaded =
        scenario::load_scenario(std::string(PROOFSTAND_ROOT) + "/scenarios/six-bolt/" + exercise_of(script) + ".toml");
    if (!loaded.usable) continue;
    const auto drawn = scenario::draw_variant(*loaded.file, 0, 1);
    if (!drawn.has_value()) continue;
    const Count count = take_over(script, drawn.value());
    std::printf("%s: %zu of %zu\n", script, count.good, count.all);
    taken.good += count.good;
    taken.all += count.all;
  }
  std::printf("guided %zu/%zu variants in full marks; %zu/%zu jobs taken over with no other loss\n", full, all,
              taken.good, taken.all);
  return full == all && all > 0 && taken.good == taken.all ? 0 : 1;
}

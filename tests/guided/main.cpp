// Guided work leads to a good job: a bot that does only what the guidance owes next, on every variant of every shipped
// exercise, ends in full marks. Guidance that sends a trainee in circles, or past a requirement, teaches the wrong
// trade.
//
// proofstand_guided [EXERCISE [VARIANT]]: also tells every step.
#include <algorithm>
#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <string>
#include <vector>

#include "tests/guided/bot.h"

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
  std::printf("guided %zu/%zu variants in full marks\n", full, all);
  return full == all && all > 0 ? 0 : 1;
}

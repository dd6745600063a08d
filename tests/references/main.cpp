// Reference scripts: each shipped exercise worked well on every variant gets full marks, and each spoiled script loses
// points by the rule it was spoiled for. An exercise that its own reference fails cannot be marked fairly.
#include <algorithm>
#include <cstdio>
#include <filesystem>
#include <fstream>
#include <sstream>
#include <string>
#include <vector>

#include "tests/support/judged_job.h"

namespace {

using namespace proofstand;

const std::string kRoot = PROOFSTAND_ROOT;

struct Spoiled {
  const char* script;
  const char* rule;
};
constexpr Spoiled kSpoiled[] = {
    {"worn-front-rotor-reversed", "arrow-forward"},
    {"worn-front-rotor-thumb-on-the-track", "hands-off-track"},
    {"worn-front-rotor-pulled-past-the-click", "no-pull-beyond"},
    {"worn-front-rotor-snugged-without-turning", "play-taken-up"},
    {"worn-front-rotor-one-face-wiped", "both-faces-wiped"},
};

std::string script_text(const std::string& name) {
  std::ifstream in(kRoot + "/demo/scripts/" + name + ".hand");
  std::stringstream text;
  text << in.rdbuf();
  return text.str();
}

hand::HandSkill steady_hand() {
  hand::HandSkill skill = hand::journeyman();
  skill.pull_again_1 = 0.0;  // a reference does not pull on now and then
  return skill;
}

void explain(const char* name, std::size_t variant, const testing::JudgedJob& job) {
  std::printf("%s, variant %zu:", name, variant);
  for (const testing::FoundRule& found : job.found()) std::printf(" %s [%s]", found.id.c_str(), found.why.c_str());
  if (!job.work.finished) std::printf(" STUCK %s", job.work.trouble.sentence().c_str());
  std::printf(" %s\n", std::string(rules::overall_reason_word(job.report.reason)).c_str());
}

}  // namespace

int main() {
  std::setvbuf(stdout, nullptr, _IOLBF, 1 << 16);
  std::size_t full = 0, all = 0, caught = 0;
  std::vector<std::string> paths;
  for (const auto& entry : std::filesystem::directory_iterator(kRoot + "/scenarios/six-bolt")) {
    paths.push_back(entry.path().string());
  }
  std::sort(paths.begin(), paths.end());
  for (const std::string& path : paths) {
    const scenario::Loaded loaded = scenario::load_scenario(path);
    if (!loaded.usable) {
      ++all;
      std::printf("%s: %s\n", path.c_str(), loaded.faults.list.front().sentence().c_str());
      continue;
    }
    const std::string name = scenario::reference_script(*loaded.file);
    for (std::size_t variant = 0; variant < scenario::variant_count(*loaded.file); ++variant) {
      ++all;
      const auto drawn = scenario::draw_variant(*loaded.file, variant, variant + 1);
      if (!drawn.has_value()) continue;
      const testing::JudgedJob job = testing::judge_job(script_text(name), drawn.value(), steady_hand(), 1);
      if (job.full_marks()) {
        ++full;
      } else {
        explain(name.c_str(), variant, job);
      }
    }
  }
  const scenario::Loaded worn = scenario::load_scenario(kRoot + "/scenarios/six-bolt/worn-front-rotor.toml");
  for (const Spoiled& spoiled : kSpoiled) {
    if (!worn.usable) break;
    const auto drawn = scenario::draw_variant(*worn.file, 0, 1);
    const testing::JudgedJob job = testing::judge_job(script_text(spoiled.script), drawn.value(), steady_hand(), 1);
    bool found = false;
    for (const testing::FoundRule& rule : job.found()) found = found || rule.id == spoiled.rule;
    if (found && job.work.finished) {
      ++caught;
    } else {
      explain(spoiled.script, 0, job);
    }
  }
  std::printf("references %zu/%zu full marks; spoiled %zu/%zu caught\n", full, all, caught, std::size(kSpoiled));
  return full == all && caught == std::size(kSpoiled) ? 0 : 1;
}

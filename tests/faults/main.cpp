// The fault matrix: every way of doing it wrong is found by the rule that names it, and no way of doing it right is
// found at all. Run as: proofstand_faults [--faults N] [--correct N] [--only NAME] [--told]
#include <unistd.h>

#include <algorithm>
#include <cstdio>
#include <filesystem>
#include <fstream>
#include <sstream>
#include <string>
#include <vector>

#include "tests/faults/correct_jobs.h"
#include "tests/faults/fault_file.h"
#include "tests/support/judged_job.h"
#include "tests/support/setup_edit.h"

namespace {

using namespace proofstand;
namespace fs = std::filesystem;

const std::string kRoot = PROOFSTAND_ROOT;

struct Asked {
  std::size_t faults = 100000;
  std::size_t correct = 300;
  std::size_t first = 0;
  std::string only;
  bool told = false;
};

Asked read_arguments(int argc, char** argv) {
  Asked asked;
  for (int i = 1; i < argc; ++i) {
    const std::string word = argv[i];
    const bool more = i + 1 < argc;
    if (word == "--told") asked.told = true;
    if (word == "--faults" && more) asked.faults = std::stoul(argv[++i]);
    if (word == "--correct" && more) asked.correct = std::stoul(argv[++i]);
    if (word == "--first" && more) asked.first = std::stoul(argv[++i]);
    if (word == "--only" && more) asked.only = argv[++i];
  }
  return asked;
}

std::string file_text(const std::string& path) {
  std::ifstream in(path);
  std::stringstream text;
  text << in.rdbuf();
  return text.str();
}

void progress(const std::string& text) {
  if (isatty(STDERR_FILENO) != 0) std::fprintf(stderr, "\r\033[K%s", text.c_str());
}

struct Counts {
  std::size_t caught = 0, cases = 0, strays = 0, clean = 0, correct = 0;
};

// one row of the matrix
void work_fault(const faults::FaultFile& fault, const std::string& base_script, const scenario::ScenarioFile& file,
                const Asked& asked, Counts& counts) {
  ++counts.cases;
  const auto script = faults::edit_script(base_script, fault);
  auto drawn = scenario::draw_variant(file, fault.variant % scenario::variant_count(file), fault.seed);
  auto skill = hand::skill_from_name(fault.hand);
  // one fault at a time: the hand itself pulls on after no click
  if (skill.has_value()) skill->pull_again_1 = 0.0;
  std::string broken;
  if (!script.has_value()) broken = script.error().sentence();
  if (!drawn.has_value()) broken = drawn.error().sentence();
  if (!skill.has_value()) broken = skill.error().sentence();
  for (const std::string& edit : fault.setup_edits) {
    if (!broken.empty()) break;
    const auto done = testing::edit_setup(drawn->setup, edit);
    if (!done.has_value()) broken = done.error().sentence();
  }
  if (!broken.empty()) {
    std::printf("%-34s BROKEN CASE  %s\n", fault.name.c_str(), broken.c_str());
    ++counts.strays;
    return;
  }
  const testing::JudgedJob job = testing::judge_job(script.value(), drawn.value(), skill.value(), fault.seed);
  bool caught = false;
  std::string also, strays;
  for (const testing::FoundRule& found : job.found()) {
    const auto allowed = std::find_if(fault.also.begin(), fault.also.end(),
                                      [&](const faults::Allowed& a) { return a.rule == found.id; });
    if (found.id == fault.rule) {
      caught = true;
    } else if (allowed != fault.also.end()) {
      also += " " + found.id;
    } else {
      strays += " " + found.id + " [" + found.why + "]";
      ++counts.strays;
    }
  }
  if (!job.work.finished) {
    strays += " STUCK " + job.work.trouble.sentence();
    ++counts.strays;
  }
  if (caught) ++counts.caught;
  std::printf("%-34s %-30s %s%s%s\n", fault.name.c_str(), fault.rule.c_str(), caught ? "caught" : "MISSED",
              also.empty() ? "" : ("  also" + also).c_str(), strays.empty() ? "" : ("  STRAY" + strays).c_str());
  if (asked.told) std::printf("%s\n", job.work.told().c_str());
}

void work_correct(std::uint64_t seed, const std::string& base_script, const scenario::ScenarioFile& file,
                  const Asked& asked, Counts& counts) {
  ++counts.correct;
  const faults::CorrectJob job = faults::draw_correct_job(base_script, seed);
  const std::size_t variant = job.variant % scenario::variant_count(file);
  auto drawn = scenario::draw_variant(file, variant, seed);
  if (!drawn.has_value()) {
    std::printf("correct %llu: %s\n", static_cast<unsigned long long>(seed), drawn.error().sentence().c_str());
    return;
  }
  const testing::JudgedJob judged = testing::judge_job(job.script, drawn.value(), job.skill, job.hand_seed);
  if (judged.full_marks()) {
    ++counts.clean;
  } else {
    std::printf("correct %llu, variant %zu (%s):", static_cast<unsigned long long>(seed), variant, job.said.c_str());
    for (const testing::FoundRule& found : judged.found()) std::printf(" %s [%s]", found.id.c_str(), found.why.c_str());
    if (!judged.work.finished) std::printf(" STUCK %s", judged.work.trouble.sentence().c_str());
    if (judged.work.finished && judged.found().empty()) {
      std::printf(" %s: %s", std::string(rules::overall_word(judged.report.overall)).c_str(),
                  std::string(rules::overall_reason_word(judged.report.reason)).c_str());
    }
    std::printf("\n");
  }
  if (asked.told) std::printf("%s\n%s\n", job.script.c_str(), judged.work.told().c_str());
}

}  // namespace

int main(int argc, char** argv) {
  std::setvbuf(stdout, nullptr, _IOLBF, 1 << 16);  // rows as they come, also into a pipe
  const Asked asked = read_arguments(argc, argv);
  const scenario::Loaded loaded = scenario::load_scenario(kRoot + "/scenarios/six-bolt/worn-front-rotor.toml");
  if (!loaded.usable) {
    for (const base::Error& e : loaded.faults.list) std::printf("%s\n", e.sentence().c_str());
    return 1;
  }
  const std::string base_script = file_text(kRoot + "/demo/scripts/worn-front-rotor.hand");
  std::vector<std::string> paths;
  for (const auto& entry : fs::directory_iterator(kRoot + "/tests/faults/cases")) {
    if (entry.path().extension() == ".fault") paths.push_back(entry.path().string());
  }
  std::sort(paths.begin(), paths.end());
  Counts counts;
  // a smaller sample takes every so-manieth, so that all kinds of fault are in it
  const std::size_t every = std::max<std::size_t>(1, paths.size() / std::max<std::size_t>(1, asked.faults));
  for (std::size_t i = 0; i < paths.size() && counts.cases < asked.faults; i += every) {
    const auto fault = faults::read_fault_file(paths[i]);
    if (!fault.has_value()) {
      std::printf("%s\n", fault.error().sentence().c_str());
      ++counts.strays;
      continue;
    }
    if (!asked.only.empty() && fault->name.find(asked.only) == std::string::npos) continue;
    progress("fault " + std::to_string(i + 1) + " of " + std::to_string(paths.size()) + " " + fault->name);
    work_fault(fault.value(), base_script, *loaded.file, asked, counts);
  }
  for (std::size_t i = asked.first; asked.only.empty() && i < asked.first + asked.correct; ++i) {
    progress("correct job " + std::to_string(i + 1) + " of " + std::to_string(asked.correct));
    work_correct(i, base_script, *loaded.file, asked, counts);
  }
  progress("");
  std::printf("faults %zu/%zu caught, %zu strays; correct %zu/%zu clean\n", counts.caught, counts.cases, counts.strays,
              counts.clean, counts.correct);
  return counts.caught == counts.cases && counts.strays == 0 && counts.clean == counts.correct ? 0 : 1;
}

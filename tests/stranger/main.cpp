// The stranger: the shipped exercise with names, figures and sizes replaced at random must still check clean, be worked
// by the same script in the new words, and be marked with every point. What fails here knows its own demo by heart. Run
// as: proofstand_stranger [HOW_MANY]
#include <unistd.h>

#include <cstdio>
#include <filesystem>
#include <fstream>
#include <sstream>
#include <string>
#include <utility>
#include <vector>

#include "sim/base/number_text.h"
#include "sim/base/random.h"
#include "tests/support/judged_job.h"

namespace {

using namespace proofstand;
namespace fs = std::filesystem;

const std::string kRoot = PROOFSTAND_ROOT;
using Swaps = std::vector<std::pair<std::string, std::string>>;

std::string file_text(const fs::path& path) {
  std::ifstream in(path);
  std::stringstream text;
  text << in.rdbuf();
  return text.str();
}

std::string swapped(std::string text, const Swaps& swaps) {
  for (const auto& [from, to] : swaps) {
    for (std::size_t at = text.find(from); at != std::string::npos; at = text.find(from, at + to.size())) {
      text.replace(at, from.size(), to);
    }
  }
  return text;
}

struct Luck {
  std::uint64_t seed;
  std::uint64_t count = 0;
  std::size_t below(std::string_view what, std::size_t n) {
    return static_cast<std::size_t>(base::draw_below({seed, what, 0, count++}, n));
  }
  // a word that nobody has heard: consonant, vowel, two or three times
  std::string word() {
    std::string text;
    const std::size_t n = 2 + below("syllables", 2);
    for (std::size_t i = 0; i < n; ++i) {
      text += "bdfgklmprtvz"[below("consonant", 12)];
      text += "aeou"[below("vowel", 4)];
    }
    return text + std::to_string(below("tail", 90) + 10);
  }
};

struct Stranger {
  Swaps in_scenario, in_script;
  std::string said;
};

void rename_thing(Stranger& s, Luck& luck, const std::string& table, const std::string& name, bool quoted) {
  const std::string fresh = luck.word() + (luck.below("two words", 2) == 0 ? "" : " " + luck.word());
  s.in_scenario.push_back(
      {"[" + table + "." + (quoted ? "\"" + name + "\"" : name) + "]", "[" + table + ".\"" + fresh + "\"]"});
  if (table == "rotor") {
    s.in_scenario.push_back({"'" + name + "'", "'" + fresh + "'"});
    s.in_scenario.push_back({"rotor = \"" + name + "\"", "rotor = \"" + fresh + "\""});
    s.in_scenario.push_back({"rotor." + name + ".", "rotor." + fresh + "."});
  } else if (table == "bolts") {
    s.in_scenario.push_back({"bolts = \"" + name + "\"", "bolts = \"" + fresh + "\""});
    s.in_scenario.push_back({"bolts." + name + ".", "bolts." + fresh + "."});
  } else if (table == "card") {
    s.in_scenario.push_back({"entry == '" + name + "'", "entry == '" + fresh + "'"});
    s.in_script.push_back({" as " + name + "\n", " as " + fresh + "\n"});
    s.in_script.push_back({"write " + name + ":", "write " + fresh + ":"});
    return;
  }
  // whole words after an article or as an object, never the verb that sounds alike
  for (const char* before : {"the ", "onto ", "start ", "of "}) {
    s.in_script.push_back({before + name + ",", before + fresh + ","});
    s.in_script.push_back({before + name + " ", before + fresh + " "});
    s.in_script.push_back({before + name + "\n", before + fresh + "\n"});
  }
}

Stranger draw_stranger(std::uint64_t seed) {
  Luck luck{seed};
  Stranger s;
  for (const char* name : {"old rotor", "new rotor"}) rename_thing(s, luck, "rotor", name, true);
  for (const char* name : {"old bolt", "new bolt"}) rename_thing(s, luck, "bolts", name, true);
  rename_thing(s, luck, "tool", "click driver", true);
  for (const char* name : {"key", "driver", "pick", "lamp"}) rename_thing(s, luck, "tool", name, false);
  rename_thing(s, luck, "instrument", "dial gauge", true);
  for (const char* name : {"micrometer", "vernier"}) rename_thing(s, luck, "instrument", name, false);
  for (const char* name : {"alcohol", "threadlocker", "grease", "oil"}) rename_thing(s, luck, "fluid", name, false);
  for (const char* name : {"clean rag", "dirty rag"}) rename_thing(s, luck, "rag", name, true);
  rename_thing(s, luck, "card", "old thickness", true);
  for (const char* name : {"stamp", "decision", "locking", "torque", "remarks"}) {
    rename_thing(s, luck, "card", name, false);
  }
  // the maker's figure, and what follows from it in the script
  const double torque = 4.4 + 0.2 * static_cast<double>(luck.below("torque", 8));
  const std::string figure = base::text_fixed(torque, 1);
  s.in_scenario.push_back({"value = \"5.0 N·m\"", "value = \"" + figure + " N·m\""});
  s.in_script.push_back({"to 5.0 N·m", "to " + figure + " N·m"});
  // a larger figure needs a wider tolerance, or the check refuses it for the tool that lies there
  if (torque > 5.5) s.in_scenario.push_back({"tolerance = \"0.4 N·m\"", "tolerance = \"0.5 N·m\""});
  // sizes: rotor and caliper, the wheel, thickness with its stamp
  const std::vector<int> diameters = {140, 160, 180};
  const int diameter = diameters[luck.below("diameter", diameters.size())];
  const std::string size = std::to_string(diameter);
  s.in_scenario.push_back({"diameter = \"160 mm\"", "diameter = \"" + size + " mm\""});
  s.in_scenario.push_back({"caliper_set_for = \"160 mm\"", "caliper_set_for = \"" + size + " mm\""});
  s.in_script.push_back({"at 72 mm", "at " + std::to_string(diameter / 2 - 8) + " mm"});
  const int radius = 300 + static_cast<int>(luck.below("wheel", 8)) * 7;
  s.in_scenario.push_back({"radius = \"340 mm\"", "radius = \"" + std::to_string(radius) + " mm\""});
  const bool thicker = luck.below("thickness", 2) == 1;
  if (thicker) {
    s.in_scenario.push_back({"thickness_new = \"1.80 mm\"", "thickness_new = \"2.00 mm\""});
    s.in_scenario.push_back({"stamp = \"1.50 mm\"", "stamp = \"1.70 mm\""});
    s.in_scenario.push_back({"stamp\" = \"1.55 mm\"", "stamp\" = \"1.75 mm\""});
  }
  s.said = figure + " N·m, " + size + " mm, wheel " + std::to_string(radius) + " mm" + (thicker ? ", thicker" : "");
  return s;
}

// the exercise and the shared rules in the stranger's words, in a folder of their own
fs::path write_scenario(const Stranger& s, std::uint64_t seed) {
  const fs::path root =
      fs::temp_directory_path() / ("stranger-" + std::to_string(getpid()) + "-" + std::to_string(seed)) / "scenarios";
  for (const char* folder : {"shared", "six-bolt"}) fs::create_directories(root / folder);
  for (const auto& entry : fs::directory_iterator(kRoot + "/scenarios/shared")) {
    std::ofstream(root / "shared" / entry.path().filename()) << swapped(file_text(entry.path()), s.in_scenario);
  }
  const fs::path path = root / "six-bolt" / "worn-front-rotor.toml";
  std::ofstream(path) << swapped(file_text(kRoot + "/scenarios/six-bolt/worn-front-rotor.toml"), s.in_scenario);
  return path;
}

bool meets(std::uint64_t seed) {
  const Stranger s = draw_stranger(seed * 104729 + 7);
  const fs::path path = write_scenario(s, seed);
  const scenario::Loaded loaded = scenario::load_scenario(path.string());
  bool good = loaded.usable;
  if (!good) {
    std::printf("stranger %llu (%s): %s\n", static_cast<unsigned long long>(seed), s.said.c_str(),
                loaded.faults.list.front().sentence().c_str());
  } else {
    const auto drawn = scenario::draw(*loaded.file, seed);
    const std::string script = swapped(file_text(kRoot + "/demo/scripts/worn-front-rotor.hand"), s.in_script);
    hand::HandSkill skill = hand::journeyman();
    skill.pull_again_1 = 0.0;
    const testing::JudgedJob job = testing::judge_job(script, drawn.value(), skill, seed + 1);
    good = job.full_marks();
    if (!good) {
      std::printf("stranger %llu (%s):", static_cast<unsigned long long>(seed), s.said.c_str());
      for (const testing::FoundRule& found : job.found()) std::printf(" %s [%s]", found.id.c_str(), found.why.c_str());
      if (!job.work.finished) std::printf(" STUCK %s", job.work.trouble.sentence().c_str());
      std::printf("\n");
    }
  }
  fs::remove_all(path.parent_path().parent_path().parent_path());
  return good;
}

}  // namespace

int main(int argc, char** argv) {
  std::setvbuf(stdout, nullptr, _IOLBF, 1 << 16);
  const std::size_t n = argc > 1 ? std::stoul(argv[1]) : 100;
  std::size_t good = 0;
  for (std::size_t i = 0; i < n; ++i) {
    if (isatty(STDERR_FILENO) != 0) std::fprintf(stderr, "\r\033[Kstranger %zu of %zu", i + 1, n);
    good += meets(i) ? 1 : 0;
  }
  if (isatty(STDERR_FILENO) != 0) std::fprintf(stderr, "\r\033[K");
  std::printf("stranger %zu/%zu full marks\n", good, n);
  return good == n ? 0 : 1;
}

// A hidden fault is found by hands and eyes or not at all: two variants that differ in one hidden fault give byte-equal
// papers, place lists, guidance and percepts, worked alike, until a hand is at what tells them apart. A text, a list or
// an order that gives the fault away examines reading, not the trade.
//
// proofstand_blind [EXERCISE]: that one alone.
#include <algorithm>
#include <cstdio>
#include <filesystem>
#include <fstream>
#include <map>
#include <memory>
#include <sstream>
#include <string>
#include <vector>

#include "tests/blind/onlooker.h"

namespace {

using namespace proofstand;
using testing::Onlooker;

// which group of variants holds a hidden fault, and lines of the reference job at which a hand can find it
struct Hidden {
  const char* exercise;
  const char* group;
  std::vector<std::string> found_by;
};
const std::vector<Hidden>& hidden_faults() {
  static const std::vector<Hidden> all = {
      {"worn-front-rotor", "old locker", {"crack bolt", "run bolt", "pick hole"}},
      {"worn-front-rotor", "wear", {"measure the thickness", "write the stamp"}},
      {"mixed-tray-front", "long bolt", {"start any loose bolt"}},
      {"mixed-tray-front", "on the seat", {"look at boss", "pick boss", "wipe"}},
      {"ruined-or-bent",
       "what is wrong",
       {"look at recess", "pick recess", "measure the thickness", "read the runout"}},
  };
  return all;
}

std::string file_text(const std::string& path) {
  std::ifstream in(path);
  std::stringstream text;
  text << in.rdbuf();
  return text.str();
}

std::string line_of(const std::string& script, std::size_t number) {
  std::istringstream in(script);
  std::string line;
  for (std::size_t i = 0; i < number && std::getline(in, line); ++i) {
  }
  return line;
}

// one variant with the heavy part of its scene
struct Variant {
  scenario::DrawnScenario scenario;
  std::unique_ptr<scene::Workshop> workshop;
};

std::vector<Variant> variants_of(const std::string& exercise) {
  std::vector<Variant> all;
  const scenario::Loaded loaded =
      scenario::load_scenario(std::string(PROOFSTAND_ROOT) + "/scenarios/six-bolt/" + exercise + ".toml");
  if (!loaded.usable) return all;
  for (std::size_t v = 0; v < scenario::variant_count(*loaded.file); ++v) {
    auto drawn = scenario::draw_variant(*loaded.file, v, 1);
    if (drawn.has_value()) all.push_back({std::move(drawn.value()), nullptr});
  }
  return all;
}

// the drawn options differ in this group and in no other
bool differ_only_in(const Variant& a, const Variant& b, const std::string& group) {
  bool here = false;
  for (std::size_t i = 0; i < a.scenario.drawn.size(); ++i) {
    if (a.scenario.drawn[i] == b.scenario.drawn[i]) continue;
    if (a.scenario.drawn[i].rfind(group, 0) != 0) return false;
    here = true;
  }
  return here;
}

// empty: byte-equal until a hand found it; else what gave it away
std::string given_away(const Variant& a, const Variant& b, const Hidden& hidden, const std::string& script) {
  if (testing::papers_text(a.scenario) != testing::papers_text(b.scenario)) return "the papers differ";
  Onlooker first(a.scenario, *a.workshop, script, 1);
  Onlooker second(b.scenario, *b.workshop, script, 1);
  std::size_t line = 0;
  for (bool going = true; going;) {
    const std::string working = line_of(script, first.line());
    const bool at_it = std::any_of(hidden.found_by.begin(), hidden.found_by.end(),
                                   [&](const std::string& words) { return working.find(words) != std::string::npos; });
    const auto verdict = [&](const std::string& what) {
      return at_it ? std::string() : what + " at \"" + working + "\"";
    };
    if (first.line() != line) {
      line = first.line();
      if (first.places_text() != second.places_text()) return verdict("the place lists differ");
      if (first.guidance_text() != second.guidance_text()) return verdict("the guidance differs");
    }
    going = first.step();
    const bool other_going = second.step();
    if (first.percepts_text() != second.percepts_text() || going != other_going) return verdict("the percepts differ");
  }
  return "no hand ever found it";
}

}  // namespace

int main(int argc, char** argv) {
  std::setvbuf(stdout, nullptr, _IOLBF, 1 << 16);
  std::size_t blind = 0, all = 0;
  std::map<std::string, std::vector<Variant>> exercises;
  for (const Hidden& hidden : hidden_faults()) {
    if (argc > 1 && std::string(argv[1]) != hidden.exercise) continue;
    std::vector<Variant>& variants = exercises[hidden.exercise];
    if (variants.empty()) variants = variants_of(hidden.exercise);
    const std::string script = file_text(std::string(PROOFSTAND_ROOT) + "/demo/scripts/" + hidden.exercise + ".hand");
    std::size_t pairs = 0, equal = 0;
    for (std::size_t i = 0; i < variants.size(); ++i) {
      for (std::size_t j = i + 1; j < variants.size(); ++j) {
        if (!differ_only_in(variants[i], variants[j], hidden.group)) continue;
        for (Variant* variant : {&variants[i], &variants[j]}) {
          if (!variant->workshop) variant->workshop = std::make_unique<scene::Workshop>(variant->scenario.setup);
        }
        ++pairs;
        const std::string leak = given_away(variants[i], variants[j], hidden, script);
        if (leak.empty()) {
          ++equal;
        } else {
          std::printf("%s, %s, variants %zu and %zu: %s\n", hidden.exercise, hidden.group, i, j, leak.c_str());
        }
      }
    }
    std::printf("%s, %s: %zu of %zu pairs\n", hidden.exercise, hidden.group, equal, pairs);
    if (pairs == 0) ++all;  // a group that is gone shows nothing
    blind += equal;
    all += pairs;
  }
  std::printf("blind %zu/%zu pairs byte-equal until a hand found the difference\n", blind, all);
  return blind == all && all > 0 ? 0 : 1;
}

#include "tests/causes/manners.h"

#include <algorithm>
#include <cstdio>
#include <map>
#include <vector>

#include "tests/causes/sheet_of_run.h"
#include "tests/support/setup_edit.h"

namespace proofstand::testing {
namespace {

constexpr int kDraws = 12;
constexpr const char* kClamp = "/computed/joint/clamp_n";
constexpr const char* kRunout = "/computed/joint/runout_mm";

enum class Manner { StepsCrosswise, StepsRound, StraightCrosswise, StraightRound };

std::string lines_of(Manner manner) {
  const std::string cross = "for each N of 1, 4, 2, 5, 3, 6:\n";
  const std::string round = "for each N of 1, 2, 3, 4, 5, 6:\n";
  const std::string pull = "    tighten bolt N until it clicks and no further, with the click driver, at 10°/s\n";
  const std::string first = "set the click driver to 3.0 N·m\n";
  const std::string last = "set the click driver to 5.0 N·m\n";
  switch (manner) {
    case Manner::StepsCrosswise:
      return first + cross + pull + last + cross + pull;
    case Manner::StepsRound:
      return first + round + pull + last + round + pull;
    case Manner::StraightCrosswise:
      return last + cross + pull;
    case Manner::StraightRound:
      return last + round + pull;
  }
  return "";
}

struct Expectation {
  const char* given;  // edit of the workplace, see setup_edit.h; empty: as it comes
  Manner from;
  Manner to;
  const char* figure;
  double least_change_1;  // of the median, relative
  double most_change_1;
  const char* because;
};

// Bounds are the rule's own claims, with room: that order of pulls hardly matters and going straight to the figure
// does.
const std::vector<Expectation>& expectations() {
  static const std::vector<Expectation> list = {
      {"", Manner::StepsCrosswise, Manner::StepsRound, kClamp, -0.02, 0.02, "in steps, the way round hardly matters"},
      {"", Manner::StepsCrosswise, Manner::StraightCrosswise, kRunout, 0.3, 10.0,
       "straight to the figure locks in part of the tilt of a rotor that hangs askew"},
      {"", Manner::StepsCrosswise, Manner::StraightCrosswise, kClamp, -0.25, -0.03, "and costs clamp"},
      {"", Manner::StraightCrosswise, Manner::StraightRound, kClamp, -0.03, 0.03, "whichever way round"},
      {"boss 3: dirt = 0.05 mm", Manner::StepsCrosswise, Manner::StepsRound, kClamp, -0.03, 0.03,
       "in steps, the way round puts no grit right"},
      {"boss 3: dirt = 0.05 mm", Manner::StepsCrosswise, Manner::StraightRound, kClamp, -0.25, -0.05,
       "straight to the figure on grit costs most"},
  };
  return list;
}

double median(std::vector<double> values) {
  std::sort(values.begin(), values.end());
  const std::size_t half = values.size() / 2;
  return values.size() % 2 == 1 ? values[half] : 0.5 * (values[half - 1] + values[half]);
}

struct Figures {
  std::vector<double> clamp_n;
  std::vector<double> runout_mm;
};

Figures work(const scenario::ScenarioFile& file, const std::string& script, const char* given, Manner manner) {
  std::string text = script;
  const std::string mark = "TIGHTEN\n";
  text.replace(text.find(mark), mark.size(), lines_of(manner));
  Figures figures;
  for (int seed = 1; seed <= kDraws; ++seed) {
    auto drawn = scenario::draw_variant(file, 0, static_cast<std::uint64_t>(seed));
    if (!drawn.has_value()) continue;
    if (*given != '\0' && !edit_setup(drawn.value().setup, given).has_value()) continue;
    const nlohmann::json sheet = sheet_of_run(drawn.value(), text);
    figures.clamp_n.push_back(figure_of(sheet, kClamp));
    figures.runout_mm.push_back(figure_of(sheet, kRunout));
  }
  return figures;
}

}  // namespace

MannerTally try_manners(const scenario::ScenarioFile& file, const std::string& script) {
  std::map<std::pair<std::string, Manner>, Figures> worked;
  const auto figures = [&](const char* given, Manner manner) -> const Figures& {
    const auto key = std::make_pair(std::string(given), manner);
    if (worked.count(key) == 0) worked[key] = work(file, script, given, manner);
    return worked[key];
  };
  MannerTally tally;
  for (const Expectation& expected : expectations()) {
    const bool clamp = expected.figure == kClamp;
    const Figures& before = figures(expected.given, expected.from);
    const Figures& after = figures(expected.given, expected.to);
    const std::vector<double>& was = clamp ? before.clamp_n : before.runout_mm;
    const std::vector<double>& is = clamp ? after.clamp_n : after.runout_mm;
    ++tally.all;
    if (was.size() != kDraws || is.size() != kDraws) {
      std::printf("%s: not every draw could be worked\n", expected.because);
      continue;
    }
    const double change_1 = median(is) / median(was) - 1.0;
    const bool right = change_1 >= expected.least_change_1 && change_1 <= expected.most_change_1;
    tally.right += right ? 1 : 0;
    std::printf("%-24s %-28s median of %d: %9.4g -> %-9.4g (%+.1f %%; least %.4g, most %.4g) %s: %s\n",
                *expected.given == '\0' ? "seat as it comes" : expected.given, expected.figure, kDraws, median(was),
                median(is), 100.0 * change_1, *std::min_element(is.begin(), is.end()),
                *std::max_element(is.begin(), is.end()), right ? "as it should" : "NOT SO", expected.because);
  }
  return tally;
}

}  // namespace proofstand::testing

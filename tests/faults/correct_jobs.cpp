#include "tests/faults/correct_jobs.h"

#include <algorithm>
#include <functional>
#include <vector>

#include "sim/base/math.h"
#include "sim/base/number_text.h"
#include "sim/base/random.h"
#include "sim/base/words.h"

namespace proofstand::faults {
namespace {

using Lines = std::vector<std::string>;

// draws of one job, each named by what it decides
struct Luck {
  std::uint64_t seed;
  std::uint64_t count = 0;
  double unit(std::string_view what) { return base::draw_unit({seed, what, 0, count++}); }
  bool chance(std::string_view what, double share) { return unit(what) < share; }
  std::size_t below(std::string_view what, std::size_t n) {
    return static_cast<std::size_t>(base::draw_below({seed, what, 0, count++}, n));
  }
  double between(std::string_view what, double lo, double hi) { return lo + (hi - lo) * unit(what); }
};

bool has(const std::string& line, std::string_view part) { return line.find(part) != std::string::npos; }
void swap_in(std::string& line, std::string_view from, std::string_view to) {
  const std::size_t at = line.find(from);
  if (at != std::string::npos) line.replace(at, from.size(), to);
}

// a star of six: begun anywhere, either way round
std::vector<int> draw_star(Luck& luck) {
  static const int star[] = {1, 4, 2, 5, 3, 6};
  const std::size_t turn = luck.below("star turn", 6);
  const bool mirror = luck.chance("star mirror", 0.5);
  std::vector<int> order;
  for (const int n : star) {
    const int at = mirror ? 6 - (n - 1) : n - 1;
    order.push_back((at + static_cast<int>(turn)) % 6 + 1);
  }
  return order;
}

std::vector<int> draw_any(Luck& luck) {
  std::vector<int> order = {1, 2, 3, 4, 5, 6};
  for (std::size_t i = order.size(); i > 1; --i) std::swap(order[i - 1], order[luck.below("any order", i)]);
  return order;
}

std::string head_of(const std::vector<int>& order, std::size_t from, std::size_t upto) {
  std::string text = "for each N of ";
  for (std::size_t i = from; i < upto; ++i) text += (i > from ? ", " : "") + std::to_string(order[i]);
  return text + ":";
}

// orders: bolts out and started in any order, snugged and tightened in a star
void draw_orders(Lines& lines, Luck& luck) {
  const std::vector<int> star = draw_star(luck);
  for (std::size_t i = 0; i + 1 < lines.size(); ++i) {
    if (lines[i].rfind("for each N of ", 0) != 0) continue;
    const std::string& body = lines[i + 1];
    const auto commas = std::count(lines[i].begin(), lines[i].end(), ',');
    if (has(body, "snug bolt")) {
      lines[i] = commas == 1 ? head_of(star, 0, 2) : head_of(star, commas == 3 ? 2 : 0, 6);
    } else if (has(body, "tighten bolt") || has(body, "crack bolt")) {
      lines[i] = head_of(star, 0, 6);
    } else if (commas == 5) {
      lines[i] = head_of(draw_any(luck), 0, 6);
    }
  }
}

void draw_figures(Lines& lines, Luck& luck, std::string& said) {
  const int rate = static_cast<int>(luck.between("rate", 5.0, 11.0));
  const std::string radius = base::text_fixed(luck.between("radius", 71.0, 73.0), 1);
  // less than this on top of a patch's drag does not hold the rotor where it was turned to
  const std::string snug = base::text_fixed(luck.between("snug", 1.4, 2.3), 1);
  const int wipes = 2 + static_cast<int>(luck.below("wipes", 3));
  const bool key = luck.chance("run with key", 0.15);
  const std::vector<std::string> grips = {"arms", "inner edge", "edge"};
  const std::string grip = grips[luck.below("grip", grips.size())];
  const std::vector<std::string> firsts = {"2.4", "2.6", "3.0", "3.4", "4.0"};
  const std::vector<std::string> lasts = {"4.6", "4.8", "5.0", "5.0", "5.0", "5.2", "5.4"};
  const std::string first = firsts[luck.below("first figure", firsts.size())];
  const std::string last = lasts[luck.below("last figure", lasts.size())];
  said += " set to " + first + " and " + last;
  for (std::string& line : lines) {
    if (has(line, "set the click driver to 3.0")) swap_in(line, "3.0 N·m", first + " N·m");
    if (has(line, "set the click driver to 5.0")) swap_in(line, "5.0 N·m", last + " N·m");
    swap_in(line, "at 10°/s", "at " + std::to_string(rate) + "°/s");
    swap_in(line, "at 72 mm", "at " + radius + " mm");
    if (has(line, "snug bolt")) swap_in(line, "to 1.5 N·m", "to " + snug + " N·m");
    if (has(line, "wipe the")) swap_in(line, ", 2 times", ", " + std::to_string(wipes) + " times");
    if (has(line, "run bolt") && key) swap_in(line, "with the driver", "with the key");
    if (has(line, "hold the new rotor")) swap_in(line, "by its arms", "by its " + grip);
  }
  said += " rate " + std::to_string(rate) + (key ? ", run with the key" : "") + ", held by the " + grip;
}

// lines that may come anywhere between whole steps
void draw_pauses(Lines& lines, Luck& luck) {
  const std::vector<std::string> extra = {"put back the key", "put back the driver", "wait 7 s",  "wait 40 s",
                                          "take the lamp",    "put back the pick",   "wait 2.3 s"};
  std::vector<std::size_t> places;
  for (std::size_t i = 1; i < lines.size(); ++i) {
    const bool whole = !lines[i].empty() && lines[i][0] != ' ' && lines[i][0] != '#';
    // not where a hand keeps something for the next line
    if (whole && !has(lines[i], "hand over")) places.push_back(i);
  }
  const std::size_t n = luck.below("pauses", 5);
  for (std::size_t k = 0; k < n && !places.empty(); ++k) {
    const std::size_t at = places[luck.below("pause place", places.size())];
    const std::string& line = extra[luck.below("pause what", extra.size())];
    lines.insert(lines.begin() + static_cast<std::ptrdiff_t>(at), line);
    for (std::size_t& place : places) place += place >= at ? 1 : 0;
  }
}

// a whole step done once more: measuring, wiping, a last round of the torque tool
void draw_repeats(Lines& lines, Luck& luck, std::string& said) {
  for (std::size_t i = 0; i < lines.size(); ++i) {
    if (has(lines[i], "measure the thickness") && lines[i][0] != ' ' && luck.chance("measure again", 0.3)) {
      lines.insert(lines.begin() + static_cast<std::ptrdiff_t>(i), lines[i]);
      ++i;
    } else if (has(lines[i], "wipe the") && lines[i][0] != ' ' && luck.chance("wipe again", 0.25)) {
      lines.insert(lines.begin() + static_cast<std::ptrdiff_t>(i), lines[i]);
      said += ", wiped twice";
      ++i;
    }
  }
  if (!luck.chance("re-check", 0.35)) return;
  for (std::size_t i = lines.size(); i-- > 1;) {
    if (!has(lines[i], "tighten bolt N until it clicks") || has(lines[i], "  #")) continue;
    lines.insert(lines.begin() + static_cast<std::ptrdiff_t>(i + 1), {lines[i - 1], lines[i]});
    said += ", checked once more";
    return;
  }
}

// other ways to the same end: locker into the hole, both faces at once, hands kept bare until the rotor goes on
void draw_ways(Lines& lines, Luck& luck, bool plain_bolts, std::string& said) {
  if (plain_bolts && luck.chance("locker into the hole", 0.4)) {
    for (std::string& line : lines) {
      swap_in(line, "onto new bolt N, unless it has a patch", "into hole N");
    }
    said += ", locker into the holes";
  }
  if (luck.chance("both faces at once", 0.25)) {
    for (std::string& line : lines) {
      if (has(line, "wipe the inner track of the new rotor")) {
        line = "wipe both faces of the new rotor with the clean rag, for 2.2 turns";
      }
    }
    said += ", both faces at once";
  }
  if (luck.chance("loosened by the key alone", 0.3)) {
    for (std::string& line : lines) {
      if (has(line, "run bolt N out")) swap_in(line, "with the driver", "with the key");
    }
    said += ", out with the key";
  }
}

hand::HandSkill draw_skill(Luck& luck, std::string& said) {
  hand::HandSkill skill = hand::journeyman();
  const hand::HandSkill& other = hand::novice();
  const double share = luck.unit("skill");
  const auto mix = [share](double a, double b) { return a + (b - a) * share; };
  // what a careful novice shares with a journeyman: less strength, slower to react, a less steady start
  skill.strength_percentile_1 = mix(skill.strength_percentile_1, other.strength_percentile_1);
  skill.reaction_s = mix(skill.reaction_s, other.reaction_s);
  skill.start_tilt_sd_rad = mix(skill.start_tilt_sd_rad, base::radians(1.4));
  skill.point_sd_m = mix(skill.point_sd_m, other.point_sd_m);
  skill.pull_again_1 = 0.0;
  said += ", hands " + base::text_fixed(share, 2);
  return skill;
}

}  // namespace

CorrectJob draw_correct_job(const std::string& base_script, std::uint64_t seed) {
  Luck luck{seed * 7919 + 17};
  CorrectJob job;
  Lines lines;
  for (const std::string_view line : base::split_lines(base_script)) lines.emplace_back(line);
  job.variant = luck.below("variant", 100000);
  draw_ways(lines, luck, job.variant % 2 == 1, job.said);
  draw_orders(lines, luck);
  draw_figures(lines, luck, job.said);
  draw_repeats(lines, luck, job.said);
  draw_pauses(lines, luck);
  job.skill = draw_skill(luck, job.said);
  if (luck.chance("left", 0.5)) {
    lines.insert(lines.begin(), "work left-handed");
    job.said += ", left-handed";
  }
  for (const std::string& line : lines) job.script += line + "\n";
  job.hand_seed = seed + 1;
  return job;
}

}  // namespace proofstand::faults

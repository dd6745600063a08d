// How a hand would do a chore, as lines of the script language, and where: the one table from chores to script forms.
// Private to the guidance.
#pragma once

#include <string>
#include <vector>

#include "sim/report/guidance.h"
#include "sim/report/guidance_plan.h"

namespace proofstand::report {

/// Of the figure, for snugging by hand: the head bears, and no round has begun yet (common practice, no source).
inline constexpr double kSnugShare_1 = 0.3;

/// Tools that chores are done with: the first of each kind that serves, by name; empty where there is none.
struct GuideKit {
  std::string key, driver, click_driver, pick, lamp, micrometer, vernier, dial, rag, alcohol, locker;
};
GuideKit kit_of(const bench::Bench& bench);

/// A thing's name as the scenario calls it.
const std::string& thing_name(const bench::Bench& bench, event::ThingId thing);
/// The lines; empty when a tool is missing or the language has no form for it. note: what to write under a free entry.
std::vector<std::string> lines_of(const GuideWorld& world, const Chore& chore, std::string_view note);
/// Where it is done: every place that would serve.
std::vector<GuideTarget> targets_of(const GuideWorld& world, const Chore& chore);

/// "3.0 N·m"; "30°", the middle of a sixth of a turn.
std::string torque_text(double torque_nm);
std::string spot_text(std::int32_t spot);

}  // namespace proofstand::report

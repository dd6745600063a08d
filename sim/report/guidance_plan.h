// From what is wanted to what comes next: every chore with what has to come before it, by nature or by a rule, in the
// order of the job's stages. Private to the guidance.
#pragma once

#include <vector>

#include "sim/report/guidance_wants.h"

namespace proofstand::report {

/// A chore that has to be done, and what has to be done before it.
struct Need {
  Chore chore;
  rules::RuleIndex rule = rules::kNoRule;  ///< the requirement that it serves first
  bool direct = false;                     ///< that requirement asks for this very chore
  std::vector<std::size_t> after;          ///< indices of needs
};

/// A requirement that only taking things apart again could meet.
struct Undoing {
  rules::RuleIndex rule = rules::kNoRule;
  base::Tick since_tick = 0;
};

struct GuidePlan {
  std::vector<Need> needs;
  std::vector<std::size_t> ready;             ///< what can be done now, best first; empty: no way on
  std::vector<rules::RuleIndex> unknown_how;  ///< owe something that no chore brings about
  std::vector<Undoing> undoing;
};
GuidePlan compute_plan(const GuideWorld& world);

/// Does it look done, as far as anyone can tell?
bool looks_done(const GuideWorld& world, const Chore& chore);
/// Would doing this one next keep the order that rules ask for?
bool keeps_order(const GuideWorld& world, const Chore& chore);

/// What the torque tool has to stand at in the end, and for the round that goes on now [N·m].
double figure_nm(const GuideWorld& world);
double setting_now_nm(const GuideWorld& world);
/// The loose bolt meant for a hole; kNoThing when there is none left.
event::ThingId bolt_for_hole(const GuideWorld& world, std::size_t bolt);
/// Length that bolts have to have by the sheet [m]; 0 when it does not say.
double sheet_bolt_length_m(const GuideWorld& world);

}  // namespace proofstand::report

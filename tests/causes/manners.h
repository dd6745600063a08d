// Manners of tightening: the same workplace and hand, other lines of the script. Medians and extremes over several
// draws of the bench's scatter, since one draw may hide or exaggerate what a manner does.
#pragma once

#include <cstddef>
#include <string>

#include "sim/scenario/scenario.h"

namespace proofstand::testing {

struct MannerTally {
  std::size_t right = 0;
  std::size_t all = 0;
};

/// Works every manner, prints what it does to clamp and runout, says how many move as they should.
/// script: with the line "TIGHTEN" where the manner's lines go
MannerTally try_manners(const scenario::ScenarioFile& file, const std::string& script);

}  // namespace proofstand::testing

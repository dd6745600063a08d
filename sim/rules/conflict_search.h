// Searches for rules that cannot all be kept: tries short runs with the real engine as the judge. Slow; for a deep
// check.
#pragma once

#include <cstdint>
#include <functional>
#include <vector>

#include "sim/base/result.h"
#include "sim/rules/program.h"
#include "sim/rules/report.h"

namespace proofstand::rules {

struct SearchLimits {
  std::int64_t states = 60'000;  ///< different situations looked at in all
  int length = 120;              ///< longest run tried, in records
};

/// Called now and then with the share done (0..1000); returning false ends the search early.
using SearchProgress = std::function<bool(int done_milli)>;

struct SearchResult {
  base::Faults faults;                            ///< E20 E21 E22 E23 E24 found, with the shortest reason
  std::vector<std::vector<RuleIndex>> conflicts;  ///< minimal sets that no run tried satisfies
  std::int64_t states = 0;                        ///< looked at
  bool complete = false;                          ///< every run was covered, not only those up to the length
};

/// Looks for one run that gives full marks in every rule; where there is none within the limits, shrinks the rules to
/// minimal sets that cannot hold together. "None found" is a proof only when `complete`.
SearchResult search_conflicts(const RuleProgram& program, const SearchLimits& limits = {},
                              const SearchProgress& progress = {});

}  // namespace proofstand::rules

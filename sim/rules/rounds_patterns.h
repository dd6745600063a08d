// Does one pass over a set follow a pattern, and how nearly? For the engine, and for guidance.
#pragma once

#include <cstdint>
#include <vector>

#include "sim/rules/program.h"

namespace proofstand::rules {

struct PassFit {
  std::int32_t kept = 0;       ///< transitions as the pattern wants them
  std::int32_t of = 0;         ///< transitions that the pattern speaks of
  std::int32_t wrong_at = -1;  ///< index in the pass of the first item that breaks it; -1 = conforms

  [[nodiscard]] bool conforms() const { return wrong_at < 0; }
};

/// pass: items of the set, each once, in the order they were done; of a pass that still goes on, as far as it goes.
PassFit fit_of_pass(const Rule& rule, const std::vector<std::uint8_t>& pass);

}  // namespace proofstand::rules

// Correct jobs done in other legal ways: one seed, one way. What a rule finds in any of them is a false finding.
#pragma once

#include <cstdint>
#include <string>

#include "sim/hand/hand_script.h"

namespace proofstand::faults {

struct CorrectJob {
  std::string script;
  hand::HandSkill skill;
  std::uint64_t hand_seed = 0;
  std::size_t variant = 0;  ///< of the scenario, before taking it modulo their number
  std::string said;         ///< which liberties were taken, for messages
};

/// The base script with liberties drawn by the seed: hand, order, speeds, tools, pauses, things put back and taken
/// again, more wipes, more places measured, a pass of re-checking, figures near the edge of what the sheet allows.
CorrectJob draw_correct_job(const std::string& base_script, std::uint64_t seed);

}  // namespace proofstand::faults

// A tree without includes and variants, and what it says: the whole scenario, with notes on where its parts stand.
#pragma once

#include <string_view>

#include "sim/scenario/named_parts.h"
#include "sim/scenario/scenario.h"

namespace proofstand::scenario {

inline constexpr std::string_view kScenarioFormat = "proofstand scenario 1";
inline constexpr std::string_view kSharedFormat = "proofstand shared 1";
inline constexpr std::string_view kBenchFormat = "proofstand bench 1";
inline constexpr std::string_view kRulesFormat = "proofstand rules 1";

/// Does a top-level key belong to the bench's part (else to the part of rules and texts)?
bool is_bench_key(std::string_view key);

/// Everything read, with what checks need to point at places.
struct ReadScenario {
  DrawnScenario scenario;
  NamedParts parts;  ///< its setup is moved into the scenario's
};
/// Reads only the bench's part of a tree: setup, sheet, card. Faults go to the reading.
ReadScenario read_bench_part(const Reading& reading, const Node& root);
/// Reads the rest into the same scenario: rules, marks, texts, stages.
void read_rules_part(const Reading& reading, const Node& root, DrawnScenario& scenario);

/// The two canonical texts of a tree whose variants are applied. `drawn` describes the draw and goes into the bench's
/// part.
struct PartTexts {
  std::string bench;
  std::string rules;
};
PartTexts part_texts(const Node& root, const Node& drawn);

}  // namespace proofstand::scenario

// What the rules still want done, as chores: read off each rule's selectors and what it still owes. Private to the
// guidance.
#pragma once

#include <vector>

#include "sim/report/guidance_chore.h"
#include "sim/report/guidance_seen.h"
#include "sim/rules/live.h"
#include "sim/scenario/scenario.h"

namespace proofstand::report {

/// Everything that guidance looks at, together.
struct GuideWorld {
  const rules::RuleProgram& program;
  const rules::EngineState& engine;
  const scenario::DrawnScenario& scenario;
  const bench::Bench& bench;
  Seen seen;
  std::vector<rules::LiveRule> live;  ///< by rule index

  [[nodiscard]] const rules::Rule& rule(rules::RuleIndex index) const {
    return program.rules[static_cast<std::size_t>(index)];
  }
};
GuideWorld guide_world(const rules::RuleProgram& program, const rules::EngineState& engine,
                       const scenario::DrawnScenario& scenario, const bench::Bench& bench);

/// A chore that a rule asks for.
struct Want {
  rules::RuleIndex rule = rules::kNoRule;
  Chore chore;
  bool surely = false;  ///< the rule's monitor says so; else only when it does not look done
};

/// What one rule wants. known_how turns false when it owes something that no chore brings about.
std::vector<Want> wants_of(const GuideWorld& world, rules::RuleIndex rule, bool& known_how);
/// Of all rules that carry points, composites through their children.
std::vector<Want> all_wants(const GuideWorld& world, std::vector<rules::RuleIndex>& unknown_how);

/// Values of a choice, item or small count field with which the selector can match; 0..most-1.
std::vector<std::size_t> possible_values(const rules::RuleProgram& program, const rules::Selector& selector,
                                         std::string_view field);
/// Names of the fields that an expression reads; -1: none.
std::vector<std::string_view> fields_read(const rules::RuleProgram& program, event::KindId kind,
                                          std::int32_t expression);
/// Does any rule look at this field of this kind of record?
bool is_judged(const GuideWorld& world, std::string_view kind, std::string_view field);
/// The rotor that is to go on: one that was not there at the start, the one that rules speak of first.
event::ThingId rotor_to_fit(const GuideWorld& world);

}  // namespace proofstand::report

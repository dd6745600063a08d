// Chores and items in words, through the catalogue. Private to this floor.
#pragma once

#include <string>
#include <vector>

#include "sim/report/guidance_plan.h"

namespace proofstand::report {

/// What a trainee is told to do.
std::string say_chore(const GuideWorld& world, const Chore& chore, std::string_view language);
/// What tells this chore from others of its kind: "bolt 3", "place at 30°", a card entry's label; empty when it is
/// alone.
std::string item_words(const GuideWorld& world, const Chore& chore, std::string_view language);
/// Title and reason of a rule in the scenario's words; the id where it has no title.
std::string rule_title(const scenario::DrawnScenario& scenario, const rules::RuleProgram& program,
                       rules::RuleIndex rule, std::string_view language);
std::string rule_why(const scenario::DrawnScenario& scenario, rules::RuleIndex rule, std::string_view language);
/// "bolt 2, bolt 5"
std::string list_words(const std::vector<std::string>& items);

}  // namespace proofstand::report

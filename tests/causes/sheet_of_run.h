// The mark sheet's own JSON of one run, worked by a hand that makes no slips of its own.
#pragma once

#include <nlohmann/json.hpp>
#include <string>

#include "sim/scenario/scenario.h"

namespace proofstand::testing {

nlohmann::json sheet_of_run(const scenario::DrawnScenario& scenario, const std::string& script);
/// A figure of the sheet; 0 where it says nothing. pointer: as "/computed/joint/runout_mm"
double figure_of(const nlohmann::json& sheet, const char* pointer);

}  // namespace proofstand::testing

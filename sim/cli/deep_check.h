// The slow part of checking a scenario: rules that cannot all hold, and the reference script on every variant.
#pragma once

#include <string>

#include "sim/base/result.h"
#include "sim/scenario/scenario.h"

namespace proofstand::cli {

/// path: of the scenario file, beside which its reference script is looked for. Shows progress on a terminal.
base::Faults deep_faults(const std::string& path, const scenario::ScenarioFile& file);

/// Where the reference script of a scenario lies; empty when it is nowhere.
std::string find_reference_script(const std::string& scenario_path, const std::string& script_name);

}  // namespace proofstand::cli

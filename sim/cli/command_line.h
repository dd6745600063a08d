// The command line: understood here, and handed to the subcommand.
#pragma once

#include <string>

#include "sim/cli/stand_command.h"

namespace proofstand::cli {

/// argc, argv as main() got them; version: of the program; stand: opens the window, empty where there is none.
/// returns the program's exit code.
int run_command_line(int argc, char** argv, const std::string& version, const OpenStand& stand = {});

}  // namespace proofstand::cli

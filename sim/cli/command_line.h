// The command line: understood here, and handed to the subcommand.
#pragma once

#include <string>

namespace proofstand::cli {

/// argc, argv as main() got them; version: of the program. returns the program's exit code.
int run_command_line(int argc, char** argv, const std::string& version);

}  // namespace proofstand::cli

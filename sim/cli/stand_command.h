// The subcommand that opens the window. The command line knows what was asked for; whoever joins the program's faces
// knows how a window is opened.
#pragma once

#include <cstdint>
#include <functional>
#include <string>

#include "sim/cli/exit_code.h"

namespace proofstand::cli {

struct StandOptions {
  std::string scenario;  ///< empty: the start sheet
  std::string way = "practice";
  std::string attempt;
  std::string language;  ///< empty: as set before
  std::int64_t seed = 0;
  std::string who;
  int text_percent = 0;  ///< 0: as set before
  std::string picture;   ///< draw the window once into this file, without a display, and end
  std::string size = "1280x720";
  std::string program;  ///< version of this program
};

/// Opens the window and returns when it is closed.
using OpenStand = std::function<ExitCode(const StandOptions&)>;

}  // namespace proofstand::cli

// What the program's exit codes mean, in one place.
#pragma once

namespace proofstand::cli {

enum class ExitCode : int {
  Done = 0,        ///< done, or passed
  Negative = 1,    ///< judged negative: not passed, diverged, faults found, recovered with a loss
  Usage = 2,       ///< the command was not understood
  Unreadable = 3,  ///< input that cannot be read as what it should be
  Files = 4,       ///< a file is missing, cannot be written ...; there is no OpenGL to draw with
  OurBug = 70,     ///< a mistake of the program itself
};

}  // namespace proofstand::cli

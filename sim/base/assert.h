// Our own bugs stop the program, in every build: an attempt survives because it was appended as it happened.
#pragma once

namespace proofstand::base {

/// Prints what broke and where, flushes and ends the program with exit code 70.
[[noreturn]] void stop_on_bug(const char* expression, const char* file, int line);

}  // namespace proofstand::base

#define STAND_ASSERT(expression) \
  ((expression) ? static_cast<void>(0) : ::proofstand::base::stop_on_bug(#expression, __FILE__, __LINE__))

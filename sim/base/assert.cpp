#include "sim/base/assert.h"

#include <cstdio>
#include <cstdlib>

namespace proofstand::base {

void stop_on_bug(const char* expression, const char* file, int line) {
  std::fprintf(stderr, "proofstand: a mistake of this program's own: %s (%s:%d)\n", expression, file, line);
  std::fflush(nullptr);
  std::_Exit(70);
}

}  // namespace proofstand::base

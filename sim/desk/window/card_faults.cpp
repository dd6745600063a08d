#include <cstdio>

#include "sim/desk/window/imgui_settings.h"

namespace proofstand::desk {
namespace {
int g_faults = 0;
}

void note_card_fault(const char* expression, const char* file, int line) {
  ++g_faults;
  if (g_faults <= 10) std::fprintf(stderr, "proofstand: %s:%d: %s does not hold\n", file, line, expression);
}

int card_faults() { return g_faults; }

}  // namespace proofstand::desk

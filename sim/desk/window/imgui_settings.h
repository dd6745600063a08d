// How the card library tells of a failed assertion: it is counted and said, and the frame goes on; tests look at the
// count.
#pragma once

namespace proofstand::desk {
/// Counts a failed assertion of the card library, and says it on standard error.
void note_card_fault(const char* expression, const char* file, int line);
/// How many there were so far.
int card_faults();
}  // namespace proofstand::desk

#define IM_ASSERT(expression)                                                                \
  do {                                                                                       \
    if (!(expression)) ::proofstand::desk::note_card_fault(#expression, __FILE__, __LINE__); \
  } while (0)

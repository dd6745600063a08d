// The job card: what is written is read as people write, and held against what the bench knows.
#pragma once

#include <string>

#include "sim/bench/world.h"

namespace proofstand::bench {

/// Writes on the card; writing again replaces. Lengths default to millimetres, torques to newton metres; "1.78",
/// "1,78" and "1.78 mm" are the same. A choice takes one of its words.
/// refused: NoSuchPlace (no such entry), NotANumber (a number is needed, or the word is none of the choices)
/// Emits one of the card_ events.
Refusal write_card(const World& world, CardEntryId entry, const std::string& text);

}  // namespace proofstand::bench

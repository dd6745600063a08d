// The job card: what is written is read as people write, and held against what the bench knows.
#pragma once

#include <optional>
#include <string>

#include "sim/bench/world.h"

namespace proofstand::bench {

/// Writes on the card; writing again replaces. Lengths default to millimetres, torques to newton metres; "1.78",
/// "1,78" and "1.78 mm" are the same. A choice takes one of its words.
/// refused: NoSuchPlace (no such entry), NotANumber (a number is needed, or the word is none of the choices)
/// Emits one of the card_ events.
Refusal write_card(const World& world, CardEntryId entry, const std::string& text);
/// An instrument showed something: entries that ask for it remember. truth says for what (thickness of that rotor,
/// runout of that rotor).
void note_thickness(const World& world, ThingId rotor, double shown_m);
void note_runout(const World& world, ThingId rotor, double shown_m);
/// What is true of an entry now: a length or a torque in SI, or the index of a card word; nothing when there is no
/// one truth.
std::optional<double> card_truth(const World& world, const CardEntryPart& entry);

}  // namespace proofstand::bench

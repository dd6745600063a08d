// What is true of a card entry, and what instruments have shown for it.
#pragma once

#include <optional>

#include "sim/bench/draft.h"

namespace proofstand::bench {

/// Lateral runout beyond which a rotor is bent [m]: total reading at the middle of the track.
/// common practice, no source
inline constexpr double kBentRunout_m = 0.0005;
/// Wear of a recess beyond which no key holds in it any more [m]. common practice, no source
inline constexpr double kRuinedRecess_m = 0.00030;

/// What is true of an entry now: a length or a torque in SI, or the index of a card word; nothing when there is no one
/// truth (a note; a torque that never clicked; a new rotor that is not on).
std::optional<FieldNumber> card_truth(const World& world, const CardEntryPart& entry);
/// An instrument showed a thickness or a runout of this rotor: entries that ask for it remember the last and the least.
void note_thickness(const World& world, ThingId rotor, double shown_m);
void note_runout(const World& world, ThingId rotor, double shown_m);
/// Keeps the figures of the rotor fitted at the start. Call once, before the first action.
void note_start_of_card(const World& world);

}  // namespace proofstand::bench

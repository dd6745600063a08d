// The state of surfaces, instruments, hands' films, card and wheel before the first action.
#pragma once

#include "sim/bench/world.h"

namespace proofstand::bench {

/// A fold of this rag that has wiped nothing: clean, or as black as its other folds.
FilmCell fresh_fold(const RagPart& part);

/// Sizes and fills rotors' films, rags, instruments, card, boss films, hands and wheel from the setup. Call once the
/// lists of things, bolts and holes stand.
void start_surfaces(const World& world);
/// Figures the card is held against (thinnest place and runout of the rotor fitted at the start), and the fluents of
/// hands and wheel. Call last, when rotor_pose answers.
void start_figures(const World& world);

}  // namespace proofstand::bench

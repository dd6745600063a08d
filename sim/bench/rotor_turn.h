// The rotor within the play of its bolts: turned by a hand, held, easing back.
#pragma once

#include "sim/bench/world.h"

namespace proofstand::bench {

/// One tick of a hand that has hold of the rotor on the hub: clockwise (positive) takes the play up the way braking
/// drags it. Emits "rotor_turned" when it comes to a stop in its play.
/// limit_nm [N·m] torque of the hand now · most_rad [rad] how far the hand may go, signed
/// returns [rad] how far it went, signed
double turn_rotor_rad(const World& world, HandId hand, double limit_nm, double most_rad);
/// The hand lets go of the rotor: a turn under way is told, and a rotor that nothing holds eases back into its play.
void let_go_of_rotor(const World& world, HandId hand);

/// Does this hand hold the rotor with its play taken up against the bolts?
bool rotor_held_by(const World& world, HandId hand);
/// Has the hand on the rotor come to a dead stop the way it pulls?
bool rotor_stands(const World& world, HandId hand);
/// Play left the way braking drags the rotor [m], at the bolt circle.
double clearance_m(const World& world);
/// Bolts that hold the rotor where it is.
std::int64_t snug_bolts(const BenchState& state);

}  // namespace proofstand::bench

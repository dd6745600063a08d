// The rotor on its seat: put on and taken off, pulled flat by its bolts or frozen askew, settling.
#pragma once

#include "sim/bench/world.h"

namespace proofstand::bench {

/// Puts the rotor held on the hub's seat. It hangs on its register with a gap on one side and somewhere in its play.
/// angle_rad [rad] turned by the hand from where chance would leave it
/// Emits "rotor_on" and the fluent.
void put_rotor_on(const World& world, HandId hand, double angle_rad);
/// Takes it off. Emits "rotor_off" and the fluent.
void take_rotor_off(const World& world, HandId hand);
/// The rotor that is on at the start, and the fluents.
void start_rotor(const World& world);

/// A bolt's preload has changed: the rotor goes flat, or is locked askew.
/// source: seating of a rotor cocked on its register, own model; the share locked in is common practice, no source
void press_rotor(const World& world, BoltId bolt);
/// A bolt was pulled and let go: its surfaces settle.
void settle_bolt(const World& world, BoltId bolt);
/// What the other bolts that are tight lose, a trifle, when this one has gained that much.
/// source: sim/physics/interaction.h, raised bosses in contact
void share_preload(const World& world, BoltId bolt, double gained_n);
/// Gaps that grit and a locked tilt leave at every boss, from the state as it is.
void compute_gaps(const World& world);

/// Angle of a position on the bolt circle [rad], counter-clockwise seen from outside.
double position_angle_rad(const BenchSetup& setup, std::size_t position);
/// Play that the bolts' clearance leaves [rad], all of it.
double whole_play_rad(const World& world);
/// Has any bolt's thread caught, so that the rotor has something to turn against?
bool any_started(const BenchState& state);
/// Bolts in the joint's holes; tells the fluent.
std::int64_t bolts_in(const BenchState& state);
void tell_bolts_in(const World& world);
/// Does its arrow point the way the wheel rolls, rotor on with that side out?
bool arrow_forward(bool printed_out);

}  // namespace proofstand::bench

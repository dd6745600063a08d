// Measuring and looking with hands: micrometer, vernier, lamp, pick. The dial gauge stands by itself, see dial.h.
#pragma once

#include "sim/bench/dial.h"
#include "sim/bench/world.h"

namespace proofstand::bench {

/// Spindle advance of a micrometer a turn [m]. source: ordinary 0.5 mm screw with 50 divisions, published descriptions
inline constexpr double kSpindlePitch_m = 0.0005;
/// Jaws closed this long on something count as read, a lamp or pick held this long as looked at.
inline constexpr base::Tick kReadTicks = base::kTicksPerSecond;

/// The instrument, pick or lamp held arrives at the place where the hand is (hand.at_*, u, v). A micrometer comes
/// opened, with its anvils about the point; a vernier brought to a track lies across the rim with its blades, or,
/// turned over, touches with its tips; brought to the edge it spans the diameter. refused: a place where it measures
/// nothing
Refusal bring_instrument(const World& world, HandId hand);
/// One tick of an instrument at its place: the thimble or slide follows the hand's cord, picks scratch, and a reading
/// that has stood for a second is told ("measured", "measured_size").
void step_instrument(const World& world, HandId hand);
/// The hand draws away with it: tells a reading not yet told, or an inspection of a second and more; a scale stays set.
void leave_instrument(const World& world, HandId hand);
/// The tick at which step_instrument must run next although nothing moves (a reading falls due), or kNever.
base::Tick instrument_due_at(const World& world);
inline constexpr base::Tick kNever = INT64_MAX;

/// A thing in the hand was turned over to be looked at: emits "inspected" for rotors.
void look_over(const World& world, HandId hand);

}  // namespace proofstand::bench

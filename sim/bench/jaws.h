// What lies between an instrument's jaws: where they touch, the size there, and what the scale would show.
#pragma once

#include "sim/bench/world.h"

namespace proofstand::bench {

/// Parts of a rotor that jaws can close on, in the order of the measured event's choices.
enum class JawPart : std::uint8_t { Track, Lip, Carrier, Across };

/// Jaws about a spot of a rotor.
struct JawSpot {
  bool any = false;     ///< is there anything between them?
  double size_m = 0.0;  ///< thickest place under them, or the outside diameter
  JawPart part = JawPart::Track;
  double lo_m = 0.0;  ///< radii that they cover
  double hi_m = 0.0;
};
/// The spot where the hand holds the instrument now.
JawSpot jaw_spot(const World& world, const HandState& hand, const InstrumentPart& part, ThingKind kind);
/// The spot's angle in the rotor's own frame, seen at its printed side, 0..2 pi.
double rotor_angle_rad(const HandState& hand);
/// The rotor the hand's instrument is at, or kNoThing.
ThingId rotor_at(const World& world, const HandState& hand);
/// A length as the scale shows it: zero error added, to the nearest line.
double scale_m(const InstrumentPart& part, double length_m);

}  // namespace proofstand::bench

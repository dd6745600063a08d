// What a hand can do where it is: how it turns or twirls what it holds, with what force, how far, how fast. One table
// for every route.
#pragma once

#include "sim/bench/world.h"

namespace proofstand::bench {

/// What kind of contact a hand has; decides what its cord does.
enum class Contact : std::uint8_t {
  None,          ///< nothing that a cord could move
  BoltFingers,   ///< fingers on a bolt's head, or holding a bolt at its hole
  KeyShaft,      ///< fingers on a key's shaft: twirl
  DriverShaft,   ///< fingers on a driver's shaft: twirl
  KeyHandle,     ///< hand on the arm of a key that is out
  DriverHandle,  ///< hand round a straight handle
  CrossHandle,   ///< hand on a cross handle
  PalmOnEnd,     ///< palm on a tool's end: presses only
  Setting,       ///< fingers on a torque tool's setting handle
  RotorHold,     ///< fingers on a rotor's arms, edges or track
  TyreHand,      ///< hand round the tyre
  TyreFingers,   ///< fingers on tyre or rim: twirl
  Face,          ///< rag or pick over a face
  Instrument,    ///< thimble, ratchet, slide, dial
  Rest,          ///< fingers or a thing rest there
};

/// A row of the table for this hand now.
struct HandHold {
  Contact contact = Contact::None;
  bool turns = false;       ///< has an axis at all
  bool twirls = false;      ///< fingers walk: no reach, the lead is a rate
  bool presses = false;     ///< can press along the axis
  double full_nm = 0.0;     ///< torque at full level
  double reach_rad = 0.0;   ///< either way from where the grip was taken; 0 when fingers walk
  double rate_rad_s = 0.0;  ///< top rate of a twirl
  double grip_nm = 0.0;     ///< of a hold on the wheel or the rotor: torque it can stand against without moving
};

/// Full press along an axis [N], median adult. source: thumb push, from memory
inline constexpr double kFullPress_n = 80.0;
/// Press of fingers that rest on something [N]. common practice, no source
inline constexpr double kRestPress_n = 2.0;
/// Force of fingers at a rotor's arms or edge, and of a hand at the tyre [N]. common practice, no source
inline constexpr double kRotorFingers_n = 60.0;
inline constexpr double kTyreHand_n = 100.0;

/// The row for a hand as it is now: what it holds, how, and where it rests.
/// source: forces of hands and fingers as sim/physics/hand_strength.h; rates and reaches common practice, no source
HandHold hold_of(const World& world, const HandState& hand);
/// Strength of this setup's hands, of the median. [1]
double strength_1(const BenchSetup& setup);
/// Radius at which a hand holds a rotor [m].
double rotor_grip_radius_m(const World& world, const HandState& hand);
/// The grip a hand falls into when it takes this thing, or touches this place, without saying how.
Grip natural_grip(ThingKind kind);
Grip natural_touch(PlaceKind place);
/// May this thing be held so?
bool grip_fits(ThingKind kind, Grip grip);

/// Torque that the other hand, holding the wheel or the rotor on it, stands against [N·m]; 0 when it holds neither.
double reaction_held_nm(const World& world, HandId other);

}  // namespace proofstand::bench

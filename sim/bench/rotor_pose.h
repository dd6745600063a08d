// How the rotor on the hub runs, and how thick a rotor is: what dials and micrometers meet.
#pragma once

#include "sim/bench/world.h"

namespace proofstand::bench {

/// Lateral displacement of a point of the track of the rotor on the hub, outwards from the wheel positive: seat tilt,
/// grit, the hub's flange, bends of its own. 0 without a rotor.
/// radius_m [m] · angle_rad [rad] in the hub's frame, counter-clockwise seen from outside
double runout_at_m(const World& world, double radius_m, double angle_rad);
/// Total reading over a turn at that radius [m].
double total_runout_at_m(const World& world, double radius_m);
/// Thickness of a rotor at a point [m]. angle_rad in the rotor's frame, seen at its printed side.
double thickness_at_m(const World& world, ThingId rotor, double radius_m, double angle_rad);
/// Thinnest place of its track [m].
double thinnest_m(const World& world, ThingId rotor);
/// Middle of its track [m].
double track_middle_m(const World& world, ThingId rotor);

/// The plane in which the rotor's carrier lies against the hub's seat: height per metre of radius, towards angle 0 and
/// a quarter turn on.
struct SeatPlane {
  double x_1 = 0.0;
  double y_1 = 0.0;
  [[nodiscard]] double size_rad() const;
};
SeatPlane seat_plane(const World& world);

}  // namespace proofstand::bench

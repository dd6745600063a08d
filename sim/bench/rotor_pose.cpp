#include "sim/bench/rotor_pose.h"

#include <algorithm>

#include "sim/base/math.h"
#include "sim/bench/rotor_seat.h"
#include "sim/physics/rotor_bend.h"

namespace proofstand::bench {
namespace {

constexpr double kFlangeDiameter_m = 0.055;
constexpr double kTrackWidth_m = 0.015;
constexpr double kPadInner_m = 0.0145, kPadOuter_m = 0.0010;  // edges of what the pads sweep, in from the rim
constexpr double kWearEdge_m = 0.0005;                        // over which the wear runs out
constexpr int kRound = 72;
// runout from grit under one boss with all bolts tight, of a rigid rotor's: own finite-element result, from memory
constexpr double kElastic_1 = 0.62;

const RotorPart& part_of(const World& world, ThingId rotor) { return world.setup.rotors[world.thing(rotor).part]; }

double smooth_1(double u) {
  const double x = base::clamp_1(u, 0.0, 1.0);
  return x * x * (3.0 - 2.0 * x);
}

double bends_m(const World& world, const RotorPart& rotor, double radius_m, double angle_rad) {
  const double middle_m = track_middle_m(world, world.state.seat.rotor);
  const double arm_rad = base::kTwoPi / static_cast<double>(std::max(1, rotor.arms));
  double sum = 0.0;
  for (const RotorBend& bend : rotor.bends) {
    const double from_arm = base::wrap_two_pi(bend.angle_rad + arm_rad / 2.0);
    const double phase = from_arm - arm_rad * static_cast<double>(static_cast<int>(from_arm / arm_rad)) - arm_rad / 2.0;
    sum += bend.set_m * physics::bend_shape_1(angle_rad - bend.angle_rad, phase) *
           physics::bend_radial_1(radius_m, middle_m);
  }
  return sum;
}

}  // namespace

double SeatPlane::size_rad() const { return base::sqrt_1(x_1 * x_1 + y_1 * y_1); }

SeatPlane seat_plane(const World& world) {
  SeatPlane plane;
  const SeatState& seat = world.state.seat;
  if (seat.rotor == event::kNoThing) return plane;
  // grit at one boss tips a rigid rotor about the far edge of the flange; a clamped one gives way
  const double arm_m = world.setup.hub.hole_circle_m / 2.0 + kFlangeDiameter_m / 2.0;
  for (std::size_t i = 0; i < world.state.holes.size(); ++i) {
    const double dirt_m = world.state.holes[i].dirt_m;
    if (dirt_m <= 0.0) continue;
    const double angle = position_angle_rad(world.setup, i);
    plane.x_1 += kElastic_1 * dirt_m / arm_m * base::cos_rad(angle);
    plane.y_1 += kElastic_1 * dirt_m / arm_m * base::sin_rad(angle);
  }
  const double cocked_m = seat.cocked_m + seat.frozen_m;
  if (cocked_m > 0.0) {
    plane.x_1 += cocked_m / world.setup.hub.hole_circle_m * base::cos_rad(seat.cocked_phase_rad);
    plane.y_1 += cocked_m / world.setup.hub.hole_circle_m * base::sin_rad(seat.cocked_phase_rad);
  }
  return plane;
}

double runout_at_m(const World& world, double radius_m, double angle_rad) {
  const SeatState& seat = world.state.seat;
  if (seat.rotor == event::kNoThing) return 0.0;
  const HubPart& hub = world.setup.hub;
  const SeatPlane plane = seat_plane(world);
  const double flange = hub.flange_runout_m / kFlangeDiameter_m * radius_m;
  double w = radius_m * (plane.x_1 * base::cos_rad(angle_rad) + plane.y_1 * base::sin_rad(angle_rad));
  if (flange != 0.0) w += flange * base::cos_rad(angle_rad - hub.flange_phase_rad);
  const RotorPart& rotor = part_of(world, seat.rotor);
  // a rotor on the other way round shows its bends mirrored
  const double sense = seat.printed_out ? 1.0 : -1.0;
  if (!rotor.bends.empty()) w += sense * bends_m(world, rotor, radius_m, sense * angle_rad);
  return w;
}

double total_runout_at_m(const World& world, double radius_m) {
  double least = 0.0, most = 0.0;
  for (int i = 0; i < kRound; ++i) {
    const double w = runout_at_m(world, radius_m, base::kTwoPi * static_cast<double>(i) / kRound);
    least = i == 0 ? w : std::min(least, w);
    most = i == 0 ? w : std::max(most, w);
  }
  return most - least;
}

double thickness_at_m(const World& world, ThingId rotor, double radius_m, double /*angle_rad*/) {
  const RotorPart& part = part_of(world, rotor);
  const double rim_m = part.diameter_m / 2.0;
  const double in = smooth_1((radius_m - (rim_m - kPadInner_m)) / kWearEdge_m);
  const double out = smooth_1(((rim_m - kPadOuter_m) - radius_m) / kWearEdge_m);
  return part.thickness_new_m - part.worn_m * in * out;
}

double thinnest_m(const World& world, ThingId rotor) {
  return thickness_at_m(world, rotor, track_middle_m(world, rotor), 0.0);
}

double track_middle_m(const World& world, ThingId rotor) {
  return part_of(world, rotor).diameter_m / 2.0 - kTrackWidth_m / 2.0;
}

}  // namespace proofstand::bench

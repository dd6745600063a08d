#include "sim/bench/jaws.h"

#include "sim/base/math.h"
#include "sim/bench/rotor_pose.h"
#include "sim/bench/surface.h"
#include "sim/physics/instrument.h"

namespace proofstand::bench {
namespace {

constexpr int kSamples = 9;

double thickest(const World& world, ThingId rotor, double lo_m, double hi_m, double angle_rad) {
  double most = 0.0;
  for (int i = 0; i < kSamples; ++i) {
    const double r = lo_m + (hi_m - lo_m) * static_cast<double>(i) / static_cast<double>(kSamples - 1);
    const double t = thickness_at_m(world, rotor, r, angle_rad);
    if (t > most) most = t;
  }
  return most;
}

JawPart part_between(const TrackGrid& grid, const TrackWear& wear, double lo_m, double hi_m) {
  if (hi_m < grid.inner_m) return JawPart::Carrier;
  if (lo_m >= wear.outer_m || (hi_m <= wear.inner_m && lo_m >= grid.inner_m)) return JawPart::Lip;
  if (lo_m >= wear.inner_m && hi_m <= wear.outer_m) return JawPart::Track;
  return JawPart::Across;
}

}  // namespace

ThingId rotor_at(const World& world, const HandState& hand) {
  if (hand.at_thing == event::kNoThing || world.kind(hand.at_thing) != ThingKind::Rotor) return event::kNoThing;
  return hand.at_thing;
}

double rotor_angle_rad(const HandState& hand) {
  // seen at the face that is not printed, angles run the other way
  return base::wrap_two_pi(hand.at_place == PlaceKind::TrackInner || hand.at_place == PlaceKind::CarrierInner
                               ? -hand.face_angle_rad
                               : hand.face_angle_rad);
}

double scale_m(const InstrumentPart& part, double length_m) {
  return physics::shown_m(length_m, part.zero_error_m, 0.0, part.resolution_m);
}

JawSpot jaw_spot(const World& world, const HandState& hand, const InstrumentPart& part, ThingKind kind) {
  JawSpot spot;
  const ThingId rotor = rotor_at(world, hand);
  if (rotor == event::kNoThing) return spot;
  const RotorPart& made = world.setup.rotors[world.thing(rotor).part];
  const TrackGrid grid = track_grid(made);
  if (kind == ThingKind::Vernier && hand.at_place == PlaceKind::Edge) {
    spot.any = true;
    spot.size_m = made.diameter_m;
    return spot;
  }
  const bool across_rim = kind == ThingKind::Vernier && !hand.turned_over;
  const double half_m = part.face_m * 0.5;
  spot.lo_m = hand.face_radius_m - half_m;
  spot.hi_m = across_rim ? grid.outer_m : hand.face_radius_m + half_m;
  if (spot.hi_m > grid.outer_m) spot.hi_m = grid.outer_m;
  if (spot.lo_m > grid.outer_m || spot.hi_m < made.bore_m * 0.5) return spot;
  spot.any = true;
  spot.size_m = thickest(world, rotor, spot.lo_m, spot.hi_m, rotor_angle_rad(hand));
  spot.part = part_between(grid, track_wear(made), spot.lo_m, spot.hi_m);
  return spot;
}

}  // namespace proofstand::bench

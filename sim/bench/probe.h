// A look inside for reports and pictures: curves and maps that no rule and no hand may see. Read only; changes nothing.
#pragma once

#include <array>
#include <vector>

#include "sim/bench/bench.h"

namespace proofstand::bench {

/// A tool or fingers on a fastener at this tick.
struct PullProbe {
  HandId hand = HandId::Left;
  BoltId bolt = event::kNoBolt;
  double fastener_rad = 0.0;  ///< turned in since its thread caught
  double hand_rad = 0.0;      ///< the hand in this visit, in positive
  double torque_nm = 0.0;     ///< on the fastener, in positive
  double preload_n = 0.0;
  double depth_m = 0.0;
  std::int64_t clicks = 0;
};
/// Pulls under way now, at most one a hand. Call it tick by tick while replaying to draw torque over angle.
std::vector<PullProbe> probe_pulls(const Bench& bench);

/// Lateral position of the track of the rotor on the hub at `samples` places round it, from the hub's zero angle
/// counter-clockwise seen from outside [m]; empty without a rotor. radius_m 0: the middle of the track.
std::vector<double> probe_runout_m(const Bench& bench, std::size_t samples, double radius_m = 0.0);

/// What fouls a braking face of the rotor on the hub, cell by cell [kSectors x kRings], row-major [kg/m²]: grease, oil,
/// skin grease, fluid, locker. Empty without a rotor.
std::vector<double> probe_film_kg_m2(const Bench& bench, bool printed_face);

/// Preload and clamp of every position [N].
struct ClampProbe {
  double preload_n = 0.0;
  double clamp_n = 0.0;
};
std::vector<ClampProbe> probe_clamps(const Bench& bench);

}  // namespace proofstand::bench

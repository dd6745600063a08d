#include "sim/bench/probe.h"

#include "sim/base/math.h"
#include "sim/bench/closing_joint.h"
#include "sim/bench/read_world.h"
#include "sim/bench/rotor_pose.h"
#include "sim/bench/surface.h"

namespace proofstand::bench {

std::vector<PullProbe> probe_pulls(const Bench& bench) {
  std::vector<PullProbe> pulls;
  for (const HandId hand : {HandId::Left, HandId::Right}) {
    const VisitState& visit = bench.state().visits[static_cast<std::size_t>(hand)];
    if (!visit.open) continue;
    const HoleState& hole = bench.state().holes[event::index_of(visit.bolt)];
    PullProbe pull;
    pull.hand = hand;
    pull.bolt = visit.bolt;
    pull.fastener_rad = hole.turns_1 * base::kTwoPi;
    pull.hand_rad = visit.hand_rad;
    pull.torque_nm = visit.torque_nm;
    pull.preload_n = hole.preload_n;
    pull.depth_m = visit.depth_m;
    pull.clicks = visit.clicks;
    pulls.push_back(pull);
  }
  return pulls;
}

std::vector<double> probe_runout_m(const Bench& bench, std::size_t samples, double radius_m) {
  if (bench.state().seat.rotor == event::kNoThing) return {};
  const ReadWorld reading(bench);
  const World& world = reading.world();
  const double at_m = radius_m > 0.0 ? radius_m : track_middle_m(world, world.state.seat.rotor);
  std::vector<double> round;
  for (std::size_t i = 0; i < samples; ++i) {
    round.push_back(runout_at_m(world, at_m, base::kTwoPi * static_cast<double>(i) / static_cast<double>(samples)));
  }
  return round;
}

std::vector<double> probe_film_kg_m2(const Bench& bench, bool printed_face) {
  const ThingId rotor = bench.state().seat.rotor;
  if (rotor == event::kNoThing) return {};
  const std::size_t part = bench.setup().things[event::index_of(rotor)].part;
  std::vector<double> map;
  for (const FilmCell& cell : bench.state().rotors[part].faces[printed_face ? 0 : 1].cells) {
    map.push_back(fouling_kg_m2(cell.load_kg_m2));
  }
  return map;
}

std::vector<ClampProbe> probe_clamps(const Bench& bench) {
  const ReadWorld reading(bench);
  const std::vector<double> clamps = clamps_n(reading.world());
  std::vector<ClampProbe> probes;
  for (std::size_t i = 0; i < clamps.size(); ++i) probes.push_back({bench.state().holes[i].preload_n, clamps[i]});
  return probes;
}

}  // namespace proofstand::bench

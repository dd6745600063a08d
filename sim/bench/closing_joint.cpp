#include "sim/bench/closing_joint.h"

#include <algorithm>

#include "sim/base/math.h"
#include "sim/bench/bolt_model.h"
#include "sim/bench/draft.h"
#include "sim/bench/fluid.h"
#include "sim/bench/rotor_pose.h"
#include "sim/bench/rotor_seat.h"
#include "sim/bench/rotor_turn.h"
#include "sim/bench/surface.h"
#include "sim/physics/clamp_slip.h"
#include "sim/physics/hard_stop.h"
#include "sim/physics/pad_friction.h"
#include "sim/physics/prevailing.h"
#include "sim/physics/seating.h"

namespace proofstand::bench {
namespace {

constexpr double kSeated_m = 0.00002;
constexpr double kNutFactor_1 = 0.2;      // of what the sheet's torque gives, everyday figure
constexpr double kLeastLocker_m3 = 2e-9;  // less wets too little of the thread to hold

std::string_view locker_word(const World& world, BoltId bolt, const ThreadFilm& film) {
  const HoleState& hole = hole_of(world, bolt);
  const BoltPart& part = bolt_part(world, bolt);
  if (hole.set_locker_1 > 0.3) return "set";
  if (film.locker_m3 >= kLeastLocker_m3) return film.locker_set_1 > 0.5 ? "set" : "wet";
  if (!part.patch) return "none";
  const double out_nm =
      physics::patch_drag_nm(physics::kPatchOut_nm, static_cast<int>(bolt_state(world, bolt).patch_uses));
  return out_nm >= physics::kPatchSpent_nm ? "patch" : "worn_patch";
}

double head_gap_m(const World& world, const HoleState& hole, const BoltModel& model) {
  if (hole.preload_n > 0.0) return 0.0;
  return std::max(
      0.0, (model.bears_turns_1 - hole.turns_1) * model.pitch_m - (world.state.seat.cocked_m > 0.0 ? 0.0 : hole.gap_m));
}

void tell_bolt(const World& world, std::size_t position) {
  const auto bolt = static_cast<BoltId>(position);
  const HoleState& hole = world.state.holes[position];
  const ThreadFilm film = thread_film(world, bolt);
  const bool present = hole.bolt != event::kNoThing;
  Draft left(world, "left_bolt");
  left.with("bolt", static_cast<double>(position)).with("present", present ? 1.0 : 0.0);
  left.with("greasy", film.greasy || film.oily ? 1.0 : 0.0).with("stripped", hole.stripped ? 1.0 : 0.0);
  left.with("locker_amount", base::clamp_1(film.locker_m3, 0.0, 1e-6));
  left.with("preload", hole.preload_n).with("clamp", clamps_n(world)[position]);
  left.with("last_torque", hole.preload_n > 0.0 || hole.rounds > 0 ? hole.torque_nm : 0.0);
  if (present) {
    const BoltModel model = bolt_model(world, bolt, 0.0);
    const BoltState& state = bolt_state(world, bolt);
    left.with("thing", thing_value(hole.bolt)).choose("locker", locker_word(world, bolt, film));
    left.with("crossed", hole.crossed ? 1.0 : 0.0).with("stretch", base::clamp_1(state.stretch_m, 0.0, 0.01));
    left.with("recess_wear", base::clamp_1(state.recess_wear_m, 0.0, 0.002));
    left.with("engagement", engaged_thread_m(world, bolt)).with("head_gap", head_gap_m(world, hole, model));
    left.with("bottomed", hole.turns_1 >= model.bottom_turns_1 ? 1.0 : 0.0);
  } else {
    left.choose("locker", "none").with("crossed", 0.0).with("stretch", 0.0).with("bottomed", 0.0);
    left.with("engagement", 0.0);
  }
  left.emit();
}

void tell_boss(const World& world, std::size_t position) {
  const HoleState& hole = world.state.holes[position];
  const SeatState& seat = world.state.seat;
  double gap_m = std::max(0.0, hole.gap_m - hole.closed_m);
  if (seat.cocked_m > 0.0) {
    gap_m +=
        seat.cocked_m * 0.5 * (1.0 + base::cos_rad(position_angle_rad(world.setup, position) - seat.cocked_phase_rad));
  }
  Draft left(world, "left_boss");
  left.with("bolt", static_cast<double>(position)).with("dirt", base::clamp_1(hole.dirt_m, 0.0, 0.002));
  left.with_if(seat.rotor != event::kNoThing, "gap", base::clamp_1(gap_m, 0.0, 0.005)).emit();
}

bool seated(const World& world) {
  if (world.state.seat.cocked_m > kSeated_m) return false;
  return std::all_of(world.state.holes.begin(), world.state.holes.end(),
                     [](const HoleState& hole) { return hole.gap_m <= kSeated_m && hole.dirt_m <= kSeated_m; });
}

void tell_rotor(const World& world) {
  const SeatState& seat = world.state.seat;
  if (seat.rotor == event::kNoThing) return;
  const RotorPart& part = world.setup.rotors[world.thing(seat.rotor).part];
  const double thin_m = thinnest_m(world, seat.rotor);
  const double room_m = world.setup.brake.rotor_diameter_m - part.diameter_m;
  const bool fits = room_m < 0.004 && room_m > -0.004 && part.diameter_m <= world.setup.brake.frame_limit_m;
  Draft left(world, "left_rotor");
  left.with("rotor", static_cast<double>(rotor_item(world.setup, seat.rotor)));
  left.with("printed_out", seat.printed_out ? 1.0 : 0.0);
  left.with_if(part.has_arrow, "arrow_forward", arrow_forward(seat.printed_out) ? 1.0 : 0.0);
  left.with("seated", seated(world) ? 1.0 : 0.0).with("tilt", base::clamp_1(seat_plane(world).size_rad(), 0.0, 0.1));
  left.with("runout", base::clamp_1(total_runout_at_m(world, track_middle_m(world, seat.rotor)), 0.0, 0.05));
  left.with("thickness", thin_m);
  left.with_if(part.stamp_m > 0.0, "stamp", part.stamp_m);
  left.with_if(part.stamp_m > 0.0, "above_stamp", thin_m - part.stamp_m);
  left.with("fits_mount", fits ? 1.0 : 0.0).with("cracked", part.cracked ? 1.0 : 0.0).emit();
}

double film_factor(const World& world) {
  const std::size_t part = world.thing(world.state.seat.rotor).part;
  const TrackGrid grid = track_grid(world.setup.rotors[part]);
  double sum = 0.0;
  for (const FaceState& face : world.state.rotors[part].faces) {
    sum += face_figures(face, grid, world.state.tick).friction_factor_1;
  }
  return sum / 2.0;
}

// rounds of tightening that every position has had since its bolt was started
std::int64_t whole_passes(const World& world) {
  std::int64_t least = world.state.holes.empty() ? 0 : INT64_MAX;
  for (const HoleState& hole : world.state.holes)
    least = std::min(least, hole.bolt == event::kNoThing ? 0 : hole.rounds);
  return least;
}

void tell_joint(const World& world) {
  const std::vector<double> clamps = clamps_n(world);
  double sum = 0.0, least = 0.0, most = 0.0;
  for (std::size_t i = 0; i < clamps.size(); ++i) {
    sum += clamps[i];
    least = i == 0 ? clamps[i] : std::min(least, clamps[i]);
    most = i == 0 ? clamps[i] : std::max(most, clamps[i]);
  }
  const double mean = clamps.empty() ? 0.0 : sum / static_cast<double>(clamps.size());
  const double sheet_n = world.setup.sheet_torque_nm / (kNutFactor_1 * world.setup.hub.thread_diameter_m);
  const auto below = std::count_if(world.state.holes.begin(), world.state.holes.end(),
                                   [&](const HoleState& hole) { return hole.preload_n < sheet_n / 2.0; });
  Draft left(world, "left_joint");
  left.with("bolts", static_cast<double>(bolts_in(world.state))).with("clamp", base::clamp_1(sum, 0.0, 200000.0));
  left.with("spread", mean > 0.0 ? base::clamp_1((most - least) / mean, 0.0, 10.0) : 0.0);
  left.with("below", static_cast<double>(below)).with("passes", static_cast<double>(whole_passes(world)));
  if (world.state.seat.rotor == event::kNoThing) {
    left.emit();
    return;
  }
  const RotorPart& part = world.setup.rotors[world.thing(world.state.seat.rotor).part];
  const double friction = world.setup.brake.pad_friction_bedded_1 * film_factor(world);
  physics::HardStopSetup stop_setup;
  stop_setup.mass_kg = world.setup.rider.mass_kg;
  stop_setup.wheel_radius_m = world.setup.rider.wheel_radius_m;
  stop_setup.deceleration_limit_m_s2 = world.setup.rider.deceleration_limit_m_s2;
  stop_setup.pad_friction_1 = friction;
  stop_setup.effective_radius_m = part.diameter_m / 2.0 - 0.008;
  const physics::HardStop stop = physics::hard_stop(stop_setup);
  const double radius_m = world.setup.hub.hole_circle_m / 2.0;
  const double clear_m = clearance_m(world);
  const int bearing = std::max(1, static_cast<int>(bolts_in(world.state)));
  const physics::SlipOutcome slip = physics::slip_under(stop.demand_nm, clamps, world.setup.brake.seat_friction_1,
                                                        radius_m, clear_m, std::min(2, bearing));
  left.with("capacity", slip.capacity_nm)
      .with("demand", stop.demand_nm)
      .with("slips", slip.slips && slip.slip_rad > 0.0 ? 1.0 : 0.0);
  left.with("clearance", base::clamp_1(clear_m, 0.0, 0.001)).with("slip_angle", base::clamp_1(slip.slip_rad, 0.0, 0.1));
  left.with("knock", base::clamp_1(slip.knock_j, 0.0, 100.0));
  left.with("bolt_shear", base::clamp_1(slip.shear_n, 0.0, 50000.0));
  left.with("friction", base::clamp_1(friction, 0.0, 1.0)).with("stop", base::clamp_1(stop.distance_m, 0.0, 1000.0));
  left.emit();
}

}  // namespace

std::vector<double> clamps_n(const World& world) {
  std::vector<double> clamps;
  for (const HoleState& hole : world.state.holes) {
    const bool rotor = world.state.seat.rotor != event::kNoThing;
    clamps.push_back(rotor ? physics::interface_clamp_n(hole.preload_n, hole.closed_m) : 0.0);
  }
  return clamps;
}

void close_joint(const World& world) {
  for (std::size_t i = 0; i < world.state.holes.size(); ++i) tell_bolt(world, i);
  for (std::size_t i = 0; i < world.state.holes.size(); ++i) tell_boss(world, i);
  tell_rotor(world);
  tell_joint(world);
}

}  // namespace proofstand::bench

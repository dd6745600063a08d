#include "sim/bench/rub.h"

#include <array>

#include "sim/base/math.h"
#include "sim/bench/rotor_pose.h"

namespace proofstand::bench {
namespace {

constexpr std::size_t kSteps = 120;
// pad arc of 12 degrees either side, in steps of 3
constexpr std::size_t kArc = 4;
// wheel and seal in series; a piston slides back at the smaller force
constexpr double kOverlapStiffness_n_m = 2.0e5;
constexpr double kPistonSlides_n = 100.0;

}  // namespace

Rub rub_in_caliper(const World& world) {
  Rub rub;
  if (world.state.seat.rotor == event::kNoThing) return rub;
  const double radius_m = track_middle_m(world, world.state.seat.rotor);
  std::array<double, kSteps> w{};
  for (std::size_t i = 0; i < kSteps; ++i) {
    w[i] = runout_at_m(world, radius_m, base::kTwoPi * static_cast<double>(i) / static_cast<double>(kSteps));
  }
  rub.gap_out_m = world.setup.brake.pad_gap_out_m;
  rub.gap_in_m = world.setup.brake.pad_gap_in_m;
  std::size_t touching = 0;
  double force_sum_n = 0.0;
  for (std::size_t i = 0; i < kSteps; ++i) {
    double most = w[i];
    double least = w[i];
    for (std::size_t k = 0; k <= 2 * kArc; ++k) {
      const double at = w[(i + kSteps - kArc + k) % kSteps];
      if (at > most) most = at;
      if (at < least) least = at;
    }
    const double over_out = most - world.setup.brake.pad_gap_out_m;
    const double over_in = -least - world.setup.brake.pad_gap_in_m;
    if (-over_out < rub.gap_out_m) rub.gap_out_m = -over_out;
    if (-over_in < rub.gap_in_m) rub.gap_in_m = -over_in;
    if (over_out > 0.0 || over_in > 0.0) ++touching;
    for (const double over : {over_out, over_in}) {
      if (over > 0.0) force_sum_n += base::clamp_1(over * kOverlapStiffness_n_m, 0.0, kPistonSlides_n);
    }
  }
  if (rub.gap_out_m < 0.0) rub.gap_out_m = 0.0;
  if (rub.gap_in_m < 0.0) rub.gap_in_m = 0.0;
  rub.share_1 = static_cast<double>(touching) / static_cast<double>(kSteps);
  rub.torque_nm = world.setup.brake.pad_friction_new_1 * radius_m * force_sum_n / static_cast<double>(kSteps);
  return rub;
}

}  // namespace proofstand::bench

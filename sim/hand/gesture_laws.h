// What one tap, one notch or one drag is worth on each kind of contact. All figures: common practice, no source.
#pragma once

#include "sim/base/math.h"
#include "sim/bench/hold_sight.h"

namespace proofstand::hand {

inline constexpr double kFine_1 = 0.1;                        ///< fine motions are a tenth
inline constexpr double kClick_pt = 12.0;                     ///< a button that moved farther is a drag
inline constexpr double kFullTurn_rad = base::radians(78.0);  ///< lead with which a hand gives all it has
inline constexpr double kFullAlong_m = 0.040;
inline constexpr double kPressDraw_pt = 60.0;  ///< drawn so far towards the axis: full press
inline constexpr double kTilt_rad_per_pt = base::radians(0.5);
inline constexpr double kBent_rad = base::radians(10.0);  ///< so near the reach's end a fresh grip is due
inline constexpr double kFastestThrow_1 = 2.0;            ///< turns a second
inline constexpr double kSlowestThrow_1 = 0.1;
inline constexpr base::Tick kThrowTicks = 19;  ///< over which the motion of a hand that lets go counts: 80 ms
inline constexpr double kEndReach_pt = 24.0;   ///< so near a seated tool's end a drag only presses

/// What a drag, tap or notch moves.
enum class Motion : std::uint8_t { None, Turn, Along, Face, Drops };
/// The motion of this hold; a hold that turns and presses counts as Turn.
Motion motion_of(const bench::HoldSight& hold, bench::ThingKind held);

/// One tap round the axis [rad]: 5°, of fingers 20°.
double tap_turn_rad(const bench::HoldSight& hold);
/// One tap along the axis [m].
inline constexpr double kTapAlong_m = 0.005;
/// One tap over a face [m].
inline constexpr double kTapFace_m = 0.020;
/// One tap of tilt [rad].
inline constexpr double kTapTilt_rad = base::radians(5.0);

/// Turn of one notch of the wheel where fingers spin [rad]: bolt or shaft 60°, thimble 36°, setting handle one line; 0
/// where a notch presses instead.
double notch_turn_rad(const bench::HoldSight& hold, bench::ThingKind held);
/// One notch of press [m].
inline constexpr double kNotchAlong_m = 0.005;

/// Steps of press on a face, lightest first [N]: rag 5, 15, 30; pick 1, 3.
struct FacePress {
  int steps = 0;
  double force_n[3] = {0.0, 0.0, 0.0};
  int first = 0;  ///< with which a stroke begins
};
FacePress face_press(bench::ThingKind held);

/// Does the hand stand so near the end of its reach that the next press is a fresh grip? leads_1: sign of the way it
/// pulls; 0: either
bool bent(const bench::HoldSight& hold, double leads_1);

/// Whole steps of the actions: µm, µrad, mN.
inline std::int64_t whole(double value_1, double per_step_1) {
  const double steps = value_1 / per_step_1;
  return static_cast<std::int64_t>(steps + (steps < 0.0 ? -0.5 : 0.5));
}
inline std::int64_t in_micro(double value_1) { return whole(value_1, 1e-6); }

}  // namespace proofstand::hand

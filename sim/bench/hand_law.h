// From a hand's target to its force: the one law that every route obeys, tick by tick. The cord's end runs ahead of the
// hand; how far (the lead) decides how hard the hand pulls; what gives way follows, what holds tightens the cord.
#pragma once

#include "sim/base/math.h"
#include "sim/bench/state_hand.h"

namespace proofstand::bench {

inline constexpr std::int64_t kFullLevel = 512;       ///< all that the hand has
inline constexpr std::int64_t kLevelRise = 4;         ///< most that the level rises in a tick
inline constexpr std::int64_t kLevelFall = 16;        ///< most that it falls in a tick
inline constexpr std::int64_t kPullingLevel = 64;     ///< from here the hand moves with care, see step_limit_1
inline constexpr double kSpeedGain_1 = 1.5;           ///< a pulling hand is at most so much faster than its cord
inline constexpr base::Tick kSpeedWindow_ticks = 60;  ///< over which the cord's mean speed counts: a quarter second

/// What one axis of a hand's motion is like. Lengths in m, angles in rad.
struct AxisLaw {
  double slack_1 = 0.0;         ///< lead without any force
  double span_1 = 1.0;          ///< further lead up to full force
  double end_speed_1 = 0.0;     ///< fastest of the cord's end, a second
  double pull_slowest_1 = 0.0;  ///< a pulling hand's speed stays within these, a second
  double pull_fastest_1 = 0.0;
};

/// Round an axis: 2° slack, full at 78°, 120°/s. common practice, no source
AxisLaw turn_law();
/// Along an axis: 1 mm slack, full at 40 mm, 250 mm/s. common practice, no source
AxisLaw along_law();

/// Level that a lead asks for, 0..512; the sign of the lead does not matter.
std::int64_t level_of(const AxisLaw& law, double lead_1);
/// Share of the full force at a level: y √y with y = level/512.
double force_share_1(std::int64_t level);

/// Moves the cord's end towards its target by one tick and lets the level follow the lead.
void step_cord(Cord& cord, const AxisLaw& law);
/// The same for fingers that twirl: the target runs ahead of a press point that trails at full lead, and how far it
/// runs ahead is a rate. Seventy-eight degrees back and the twirl stands still.
/// top_rate_rad_s [rad/s] fastest that these fingers twirl
void step_twirl(Cord& cord, const AxisLaw& law, double top_rate_rad_s);
/// How far the hand may move in this tick, never beyond the cord's end. A hand that pulls moves with care, fingers that
/// twirl do not.
/// returns [rad or m], with the sign of the lead
double step_limit_1(const Cord& cord, const AxisLaw& law, double fastest_1);
double twirl_limit_1(const Cord& cord, double rate_rad_s);
/// Mean speed of the cord's end over the last quarter second, or as much of it as there is. [rad/s or m/s]
double cord_speed_1(const Cord& cord);
/// The hand has moved; keeps the record of the cord's speed. Call once a tick, last.
void move_hand(Cord& cord, double moved_1);

/// Nothing more will happen on this axis: the cord's end has come to the hand and stays, the level is 0.
bool cord_rests(const Cord& cord, bool twirls);
/// Sets what the cord is asked for; from rest its speed counts afresh.
void aim_cord(Cord& cord, double target_1, bool twirls);
/// The cord's end comes back to the hand.
void slacken(Cord& cord);
/// A fresh grip: all angles count from here.
void reset_cord(Cord& cord);

}  // namespace proofstand::bench

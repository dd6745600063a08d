// Starting a thread by hand: tilt, phase, turning back until it drops, crossed starts and how they feel.
#pragma once

namespace proofstand::physics {

/// Tilt at which one side rides one groove too high: atan(P/(2 d2)). [rad]
/// source  geometry
double half_pitch_tilt_rad(double pitch_m, double pitch_diameter_m);

/// How a bolt is offered to its hole.
struct StartAttempt {
  double tilt_rad = 0.0;        ///< between the axes
  double phase_1 = 0.0;         ///< 0..1 turn between the thread starts
  bool turned_back = false;     ///< turned back until it dropped
  double offset_m = 0.0;        ///< sideways, between the axes
  double lead_in_m = 0.000375;  ///< radial clearance and chamfer that guide it
};
/// Misregistration of the start: tilt measured in half pitches, sideways offset added. [1] >= 0
double start_misregistration_1(const StartAttempt& start, double pitch_m, double pitch_diameter_m);
/// Does the thread cross? After turning back only above 0.9 of half a pitch; without it by phase from 0.45 up.
/// valid   single-start 60 degree threads, bolt carried by fingers or a loose key
/// source  own geometric argument
bool start_crosses(const StartAttempt& start, double pitch_m, double pitch_diameter_m);

/// Tilt that n good turns still leave; more than this binds. [rad] play_m radial flank play, turns_1 > 0
double free_tilt_rad(double play_m, double pitch_m, double turns_1);
/// Torque of a crossed bolt after these turns in aluminium: rises from the first quarter turn, at most 4 N·m.
/// source  own, half of a thread-forming torque (common practice, no source)
double crossed_torque_nm(double turns_1);
/// How far a bolt drops when it is turned back over its start, typically felt and heard. [m]
/// source  common practice, no source
double start_drop_m(double pitch_m);
/// Turn back that is needed until the starts meet, from the phase now. [rad] 0..2 pi
double turn_back_to_drop_rad(double phase_1);
/// Torque before the second turn from which a careful mechanic stops and backs out [N·m]. from memory
inline constexpr double kStopAndBackOut_nm = 0.2;
/// Thread lost when a crossed bolt is driven for more than a turn [m]: two pitches of M5. own
inline constexpr double kCrossedThreadLoss_m = 0.0016;

}  // namespace proofstand::physics

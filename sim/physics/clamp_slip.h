// Clamp against brake torque: friction capacity, slip through the play left, knock, shear on the bolts.
#pragma once

#include <vector>

namespace proofstand::physics {

/// Friction between rotor and hub.
/// source  clean bare metal 0.20, any film 0.10: NASA-STD-5020B, TFSR 14 (upper limits); default from memory
inline constexpr double kSeatFrictionClean_1 = 0.15;
inline constexpr double kSeatFrictionOily_1 = 0.09;
/// Inertia of a 160 mm rotor about its axis [kg m2]. from its mass and radii, own
inline constexpr double kRotorInertia_kg_m2 = 2.6e-4;
/// Slip of one event above which a bolt without locker loosens [m]. common practice, no source
inline constexpr double kLooseningSlip_m = 0.00005;

/// Friction capacity of clamped bosses: mu r sum F. [N·m]
/// clamp_n [N] at the interface, one a bolt; friction_1 [1]; circle_radius_m [m]
/// source  NASA-STD-5020B equation 85, written for torque
double friction_capacity_nm(const std::vector<double>& clamp_n, double friction_1, double circle_radius_m);
/// Margin against slip with n bolts at the least preload: capacity/(FS demand) - 1. [1]
/// source  NASA-STD-5020B equation 85
double slip_margin_1(double least_n, int bolts, double friction_1, double circle_radius_m, double safety_1,
                     double demand_nm);
/// Angle that a play left lets the rotor turn: c/r. [rad]
double slip_angle_rad(double play_m, double circle_radius_m);
/// Play left in the sense of braking drag. angle_rad: how far the rotor stands from lying against the bolts, towards
/// which the drag will push it. [m] >= 0
double play_in_drag_m(double angle_rad, double circle_radius_m);
/// All of the play round a bolt circle: the smallest of hole and register clearance; diametral clearance at the holes.
/// [rad] hole_m, bolt_m [m]
double play_angle_rad(double hole_m, double bolt_m, double circle_radius_m);

/// Sense of braking drag on the rotor about its outward axis (+1 counter-clockwise seen from outside, -1 clockwise).
/// forward_sense  sense of the wheel's forward rolling seen from the rotor's outer side: +1 counter-clockwise
/// source  the pads hold the rotor back against the rolling wheel: it is pushed against the sense of rolling
int drag_sense(int forward_sense);
/// Forward sense seen from outside for a rotor on the left (+1) or right (-1) of the bike.
/// source  geometry: on the left of the bike a wheel that rolls forward turns counter-clockwise
int forward_sense(bool rotor_on_left);

/// What a brake torque does to the joint.
struct SlipOutcome {
  double capacity_nm = 0.0;
  bool slips = false;
  double slip_rad = 0.0;  ///< 0 when it does not slip
  double knock_j = 0.0;   ///< energy of the knock at the end of the play
  double shear_n = 0.0;   ///< largest on one bolt afterwards
};
/// demand_nm [N·m]; play_m [m] in the sense of drag; bearing_bolts: bolts that touch, 1..n
/// knock: the torque in excess of friction works over the slip angle. source: own derivation
SlipOutcome slip_under(double demand_nm, const std::vector<double>& clamp_n, double friction_1, double circle_radius_m,
                       double play_m, int bearing_bolts);
/// Speed at which the play ends in a knock, at a radius: sqrt(2 E/J) r. energy_j [J] >= 0, inertia_kg_m2 > 0. [m/s]
/// source  ordinary mechanics
double knock_speed_m_s(double energy_j, double inertia_kg_m2, double radius_m);
/// Shear on each of the bolts that touch. [N] >= 0
double bolt_shear_n(double demand_nm, double capacity_nm, double circle_radius_m, int bearing_bolts);
/// Single shear strength with the thread in the plane: 0.6 Rm pi d3^2/4. [N] source: EN 1993-1-8 (published table)
double bolt_shear_strength_n(double tensile_pa, double minor_m);
/// Preload left after slipping events. locked: locker set. source: common practice, no source
double preload_after_slips_n(double preload_n, double slip_m, int events, bool locked);

}  // namespace proofstand::physics

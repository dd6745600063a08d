// Clamp against brake torque: what friction carries, where the rotor goes when it gives, and what that costs.
#pragma once

#include <cstddef>

namespace proofstand::physics {

/// Friction of rotor on hub, clean stainless on anodised aluminium. source: middle of NASA-STD-5020B TFSR 14 and
/// published joint tables (0.10 to 0.20), value from memory
inline constexpr double kSeatFriction_1 = 0.15;
/// With grease or oil between them. source: from memory
inline constexpr double kGreasySeatFriction_1 = 0.09;

/// Brake torque [N·m] that friction under the bolts carries: µ r ΣF. clamp_n: of all bolts together
double friction_capacity_nm(double friction_1, double bolt_radius_m, double clamp_n);
/// Margin against slip [1]: µ n F r/(FS T) − 1. source: NASA-STD-5020B equation 85 written for torque
double slip_margin_1(double friction_1, std::size_t bolts, double least_preload_n, double bolt_radius_m,
                     double safety_1, double torque_nm);
/// Angle [rad] that a clearance at the bolt circle allows. source: geometry
double slip_angle_rad(double clearance_m, double bolt_radius_m);
/// Energy [J] of the knock: what the torque beyond friction does over that angle. source: work
double knock_energy_j(double torque_nm, double capacity_nm, double angle_rad);
/// Shear [N] on each of the bolts that bear. source: statics
double bolt_shear_n(double torque_nm, double capacity_nm, double bolt_radius_m, std::size_t bearing_bolts);
/// Shear strength of an 8.8 bolt with threads in the plane [N]: 0.6 × 800 MPa × root area. source: Eurocode 3 factor
/// 0.6
double bolt_shear_strength_n(double tensile_pa, double root_area_m2);

/// Sense in which the pads drag a rotor against its hub, seen from outside (the side away from the wheel): +1
/// clockwise, −1 counter-clockwise. rotor_on_left: the rotor lies on the bike's left. Forward rolling turns a wheel
/// counter-clockwise seen from the left; the pads stand still, so the rotor is held back: the opposite way. source:
/// geometry
int drag_sense(bool rotor_on_left);

}  // namespace proofstand::physics

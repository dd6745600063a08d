// Bending of a rotor held by its arms: stiffness, first yield, the set a pull leaves, its shape round the track, kinks.
#pragma once

namespace proofstand::physics {

/// A rotor as a plate on arms, six of them.
struct RotorPlate {
  double middle_radius_m = 0.072;  ///< of the track
  double thickness_m = 0.0018;
  double arm_width_m = 0.009;
  double slotted_1 = 1.0;    ///< 0.90 for a slotted track
  double yield_pa = 1100e6;  ///< hardened; 275e6 annealed (from memory)
  double modulus_pa = 200e9;
};
/// Where a pull is made: angle from the outer end of the nearest arm. 0: at an arm; pi/6: between two arms.

/// Lateral stiffness at the middle of the track for a force at one point. [N/m]
/// valid   1.5 to 2.0 mm, arms 7 to 11 mm: within 4 %
/// source  fit to own finite-element results
double rotor_stiffness_n_m(const RotorPlate& plate);
/// Stroke at which it first yields. phase_rad [rad] from the nearest arm; returns [m]; +-8 %. source: as above
double first_yield_stroke_m(const RotorPlate& plate, double phase_rad);
/// Set left by a stroke: nothing, then a parabola, then a straight line. stroke_m [m] >= 0
/// spread_1  [1] 1 for a point, 1.28 for a slotted truing tool that spreads the strain
/// valid     +-0.08 mm up to three yield strokes. source: as above
double set_after_stroke_m(const RotorPlate& plate, double phase_rad, double stroke_m, double spread_1 = 1.0);
/// Set after another pull at a place that has one already.
/// before_m    [m] signed set there; stroke_m [m] signed, from the present rest position
/// reverse_1   [1] 0..1 extra loss of yield in reverse, material
/// returns     [m] signed set there afterwards
/// source      own finite-element result with isotropic hardening
double set_after_pull_m(const RotorPlate& plate, double phase_rad, double before_m, double stroke_m, double reverse_1);
/// Peak plastic surface strain of a pull of so many yield strokes. [1], +-20 %. source: as above
double plastic_strain_1(double stroke_over_yield_1);
/// Cycles to a crack at a strain range: ((e_f/(De/2))^(1/0.6))/2. source: strain-life power law (from memory)
double cycles_to_crack_1(double strain_range_1, double fracture_strain_1);

/// Shape of a set round the track, 1 where it was pulled. from_pull_rad [rad] any; phase_rad of the pull
/// returns [1]; +-0.03. source: fit to own finite-element results
double bend_shape_1(double from_pull_rad, double phase_rad);
/// How a permanent set grows with the radius, 1 at the middle of the track. source: as above
double bend_radial_1(double radius_m, double middle_radius_m);

/// Deflection of track and handle under a slotted tool that reaches beyond the rim.
struct ToolBend {
  double track_m = 0.0;
  double handle_m = 0.0;
};
/// hand_n [N], hand_outside_rim_m [m], rim_radius_m [m]. source: fit to own finite-element results
ToolBend tool_bend(const RotorPlate& plate, double hand_n, double hand_outside_rim_m, double rim_radius_m);

/// Two wrenches side by side turn the track about its radius.
/// apart_m [m] between them, turn_rad [rad]; returns kink that stays [rad]
/// source  rectangular section without hardening, own derivation
double kink_rad(const RotorPlate& plate, double apart_m, double turn_rad);
double kink_yield_turn_rad(const RotorPlate& plate, double apart_m);
/// Moment of first yield of the track's section. track_width_m [m]; returns [N·m]
double kink_yield_moment_nm(const RotorPlate& plate, double track_width_m);
/// Shape of a kink round the track, about 1 at its place. at_arm: kinked in line with an arm
/// source  fit to own linear finite-element results
double kink_shape_1(double from_kink_rad, bool at_arm);
/// Height of a kink's peak at the middle of the track a radian. [m/rad as a plain factor] source: as above
double kink_height_m(double kinked_rad, bool at_arm, double middle_radius_m);

}  // namespace proofstand::physics

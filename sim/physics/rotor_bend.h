// Bending a rotor: stiffness, springing back, what a pull leaves and how far round it is felt.
#pragma once

namespace proofstand::physics {

/// A flat six-arm rotor as bending sees it.
struct RotorPlate {
  double track_middle_m = 0.072;  ///< radius of the middle of the track (72 mm: 160 rotor)
  double thickness_m = 0.0018;
  double arm_width_m = 0.009;
  double yield_pa = 1100e6;  ///< hardened; annealed 275 MPa (from memory)
  double modulus_pa = 200e9;
  bool slotted = false;  ///< track with vents
};

/// Lateral stiffness at the middle of the track [N/m]. valid: 1.5..2.0 mm thick, arms 7..11 mm, within 4 %
/// source: own finite-element fit (from memory)
double lateral_stiffness_n_m(const RotorPlate& plate);
/// Stroke [m] at which the surface first yields; arm_angle_rad from the nearest arm's outer end. source: the same fit
double first_yield_stroke_m(const RotorPlate& plate, double arm_angle_rad);
/// Permanent set [m] after a stroke [m] from a flat, unbent place; factor 1 for a pull by hand, 1.28 for a slotted
/// tool. source: the same fit; ±0.08 mm to three times the first-yield stroke
double set_after_stroke_m(const RotorPlate& plate, double stroke_m, double arm_angle_rad, double spread_1 = 1.0);
/// Peak surface plastic strain of such a pull [1]. source: the same fit, ±20 %
double pull_strain_1(double stroke_over_yield_1);
/// Cycles to a crack at a strain range [1]. source: strain-life power law, ductility 0.30 (from memory)
double cycles_to_crack_1(double strain_range_1);
/// Shape of a set round the track: 1 where it was pulled. arm_angle_rad as above, away_rad from the pulled place.
/// source: the same fit, ±0.03
double bend_shape_1(double away_rad, double arm_angle_rad);
/// How a set grows with radius: (r − r0)/(rm − r0), r0 15 mm (160) to 12 mm (180). source: the same fit, ±3 %
double bend_radius_factor_1(double radius_m, double track_middle_m);

/// A slotted truing tool: hand force at a distance outside the rim. Values at the track's middle.
struct ToolBend {
  double stroke_m = 0.0;
  double handle_travel_m = 0.0;
};
/// hand_out_m: how far outside the rim the hand pulls. source: the same fit, ±4 %
ToolBend tool_bend(const RotorPlate& plate, double outer_radius_m, double hand_force_n, double hand_out_m);

}  // namespace proofstand::physics

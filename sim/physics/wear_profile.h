// Thickness of a worn rotor over its radius, with the lip the pads leave, and what different jaws read on it.
#pragma once

#include "sim/physics/dimensions.h"

namespace proofstand::physics {

/// A worn track.
struct WearProfile {
  double new_thickness_m = 0.0018;
  double worn_m = 0.0;          ///< both faces together, in the middle
  double pad_inner_m = 0.0655;  ///< edges of what the pads sweep
  double pad_outer_m = 0.0790;
  double edge_m = 0.0005;  ///< over which the depth runs out
};
/// Profile of a rotor by its diameter.
WearProfile make_wear_profile(double diameter_m, double new_thickness_m, double worn_m);

/// Thickness at a radius: new less worn S((r - r1)/e) S((r2 - r)/e), S(u) = u^2 (3 - 2u). [m]
/// source  own shape; edge width common practice, no source
double thickness_at_m(const WearProfile& profile, double radius_m);
/// Largest thickness under a flat foot from inner_m to outer_m: what jaws rest on. [m]
double thickness_under_m(const WearProfile& profile, double inner_m, double outer_m);
/// Thickness in the middle of the worn ring, the one that counts. [m]
double thinnest_m(const WearProfile& profile);

/// What measures.
enum class JawKind : unsigned char {
  Anvil,  ///< round flat face of a micrometer, 6.35 mm
  Blade,  ///< straight jaw across the rim: always rests on the outer lip
  Point,  ///< tips of jaws, about 1 mm
};
/// True thickness a jaw finds with its middle at a radius, on a rotor with this rim. [m]
/// face_m [m] > 0: width of anvil or tip; not used for a blade
double jaw_reads_m(const WearProfile& profile, JawKind kind, double radius_m, double face_m, double rim_radius_m);

/// Wear of both faces together by braking energy: W E/A. energy_j [J], swept_m2 [m2] of one face. [m]
/// source  wear rate 0.07 mm3/kJ own back-calculation (common practice, no source)
double wear_from_energy_m(double energy_j, double swept_m2);
/// Area of the track that the pads sweep, one face. open_1 [1] share that is holes. [m2]
double swept_area_m2(double inner_m, double outer_m, double open_1);

/// Nominal diameter of a rotor from a measured one: the nearest of the usual sizes within 2.5 mm, or 0.
/// source  usual sizes common practice, no source
double nominal_diameter_m(double measured_m);
/// Is it proven good? reading less uncertainty not below the limit. source: ISO 14253-1 (idea, from memory)
bool proven_above(double reading_m, double uncertainty_m, double limit_m);

}  // namespace proofstand::physics

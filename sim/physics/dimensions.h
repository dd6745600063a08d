// One table of dimensions for physics, bench and pictures. Design values chosen so that parts fit together; replace
// them when a real part is measured. Standing: R read in a published text, M from memory, P common practice, no source.
#pragma once

namespace proofstand::physics {

// the six-bolt joint
inline constexpr double kHoleCircle_m = 0.0440;        ///< P diameter of the bolt circle
inline constexpr double kRotorHole_m = 0.0052;         ///< P
inline constexpr double kBoltShank_m = 0.0049;         ///< M 6g mean major diameter
inline constexpr double kCarrierThickness_m = 0.0018;  ///< R 1.8 to 2.0, unworn
inline constexpr double kCarrierOuter_m = 0.0550;      ///< P diameter
inline constexpr double kRotorBore_m = 0.0350;         ///< P
inline constexpr double kRegister_m = 0.0348;          ///< P
inline constexpr double kHeadBearing_m = 0.0090;       ///< P
inline constexpr double kThreadLead_m = 0.0008;        ///< M unthreaded point of a bolt
inline constexpr double kFlange_m = 0.0560;            ///< P seat flange diameter
/// Radial play between shank and hole.
inline constexpr double kHolePlay_m = 0.5 * (kRotorHole_m - kBoltShank_m);

// track and pads, by the rotor's diameter
inline constexpr double kTrackWidth_m = 0.015;       ///< P
inline constexpr double kLiningLength_m = 0.033;     ///< P along the track
inline constexpr double kLiningOuterGap_m = 0.001;   ///< P from the rim to the lining's outer edge: 79 of 80
inline constexpr double kLiningInnerGap_m = 0.0145;  ///< P from the rim to its inner edge: 65.5 of 80
inline constexpr double kArmWidth_m = 0.009;         ///< P
/// Radii of a rotor's track and of the pads' path [m].
struct TrackRadii {
  double outer_m, inner_m, middle_m, pad_outer_m, pad_inner_m;
};
constexpr TrackRadii track_radii(double rotor_diameter_m) {
  const double rim = 0.5 * rotor_diameter_m;
  return {rim, rim - kTrackWidth_m, rim - 0.008, rim - kLiningOuterGap_m, rim - kLiningInnerGap_m};
}

// tools and instruments
inline constexpr double kKeyLongArm_m = 0.100;        ///< P
inline constexpr double kKeyShortArm_m = 0.024;       ///< P
inline constexpr double kMicrometerFace_m = 0.00635;  ///< R
inline constexpr double kVernierBlade_m = 0.0035;     ///< M
inline constexpr double kVernierTip_m = 0.001;        ///< M

// wheel
inline constexpr double kTyreRadius_m = 0.339;       ///< R 28-622
inline constexpr double kWheelInertia_kg_m2 = 0.10;  ///< M 0.06 to 0.16
inline constexpr double kBearingDrag_nm = 0.012;     ///< P

}  // namespace proofstand::physics

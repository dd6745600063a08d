// Sizes that only pictures need: what the bench's own table (sim/physics) and a scenario leave open. One table; change
// a figure here when a real part has been measured. Metres and radians. Everyday figures of such parts, common practice
// without a source, unless a line says otherwise.
#pragma once

namespace proofstand::scene::size {

// wheel
inline constexpr double kBeadSeat = 0.622;   ///< ISO 5775, "28 in" family
inline constexpr double kTyreWidth = 0.028;  ///< 28-622; outside diameter = bead seat + 2 widths (ISO 5775 sizes)
inline constexpr double kRimInner = 0.019;   ///< between the flanges
inline constexpr double kRimOuter = 0.024;
inline constexpr double kRimDepth = 0.022;
inline constexpr double kRimHook = 0.006;     ///< flange above the bead seat
inline constexpr double kNippleSeat = 0.594;  ///< effective rim diameter: bead seat - 2 (depth - 6 mm) + 4 mm
inline constexpr int kSpokes = 32;
inline constexpr int kCrossings = 3;
inline constexpr double kSpoke = 0.002;  ///< diameter
inline constexpr double kSpokeHole = 0.0026;
inline constexpr double kElbow = 0.0025;  ///< bend radius
inline constexpr double kSpokeHead = 0.004;
inline constexpr double kNippleHead = 0.006, kNippleShank = 0.0042, kNippleLength = 0.012, kNippleSquare = 0.00323;
inline constexpr double kValve = 0.006;  ///< stem diameter

// hub, front, 12 mm through-axle, 100 mm wide
inline constexpr double kOverEnds = 0.100;
inline constexpr double kEndCap = 0.019;  ///< outside diameter of the end caps
inline constexpr double kAxleBore = 0.012;
inline constexpr double kFlangeCircleDisc = 0.057, kFlangeCircleOther = 0.057;
inline constexpr double kFlangeDisc = 0.022, kFlangeOther = 0.034;  ///< hub centre to flange
inline constexpr double kFlangeThick = 0.0032;
inline constexpr double kBarrel = 0.028;
inline constexpr double kSeat = 0.0395;  ///< hub centre to the rotor's seat
inline constexpr double kBossHeight = 0.001;

// rotor
inline constexpr double kArmRoot = 0.0085, kArmTip = 0.0065;
inline constexpr double kArmSweep = 0.42;  ///< 24°
inline constexpr int kVentCells = 24;
inline constexpr double kVentHole = 0.0056;
inline constexpr double kEdgeChamfer = 0.0003;

// fork and caliper
inline constexpr double kForkRake = 0.045, kAxleToCrown = 0.395;
inline constexpr double kDropoutBoss = 0.032, kDropoutThick = 0.008, kDropoutRecess = 0.002;
inline constexpr double kCaliperLong = 0.092, kCaliperWide = 0.048, kCaliperTall = 0.042;
inline constexpr double kEarSpacing = 0.0742;  ///< post mount, from memory
inline constexpr double kPiston = 0.022, kCavity = 0.011;
inline constexpr double kPadBacking = 0.0018, kPadLining = 0.0022;
inline constexpr double kPadTall = 0.018, kPadWide = 0.030;
inline constexpr double kBridgeClear = 0.002;

}  // namespace proofstand::scene::size

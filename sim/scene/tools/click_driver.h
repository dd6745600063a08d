// Heights of the click driver along its axis, from the tip [m]: meshes, poses and tests share them.
#pragma once

namespace proofstand::scene {

inline constexpr double kBarrelRadius_m = 0.0125;
inline constexpr double kHandleRadius_m = 0.0155;
inline constexpr double kBarrelFrom_m = 0.060;
inline constexpr double kBarrelTo_m = 0.172;
/// Where the handle's edge stands at the lowest figure of the scale.
inline constexpr double kLowestLine_m = 0.120;
inline constexpr double kHandleLength_m = 0.034;
inline constexpr double kCollarLength_m = 0.008;
/// How far the collar is drawn back when it is free.
inline constexpr double kCollarDraw_m = 0.0025;
inline constexpr double kCross_m = 0.180;
inline constexpr double kCrossRadius_m = 0.0075;

}  // namespace proofstand::scene

// Places along the micrometer's axis from its anvil's face [m]: meshes, poses and tests share them.
#pragma once

namespace proofstand::scene {

inline constexpr double kSpindleRadius_m = 0.003175;  ///< 6.35 mm faces
inline constexpr double kSleeveRadius_m = 0.007;
inline constexpr double kThimbleRadius_m = 0.009;
/// Where the sleeve's zero line is cut.
inline constexpr double kSleeveZero_m = 0.054;
inline constexpr double kSleeveFrom_m = 0.040;
inline constexpr double kThimbleLength_m = 0.052;
/// Depth of the bow from the axis.
inline constexpr double kThroat_m = 0.026;

}  // namespace proofstand::scene

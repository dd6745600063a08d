// Places on the vernier caliper [m]: meshes, poses and tests share them.
#pragma once

namespace proofstand::scene {

/// Where the beam's zero line is cut, right of the fixed jaw's face.
inline constexpr double kBeamZero_m = 0.012;
inline constexpr double kJawLength_m = 0.040;
inline constexpr double kBeamHeight_m = 0.016;
/// Height of the line on which beam scale and vernier scale meet.
inline constexpr double kScaleMeets_m = kJawLength_m + 0.0052;
inline constexpr double kBeamThick_m = 0.0035;

}  // namespace proofstand::scene

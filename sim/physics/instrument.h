// Instruments: what stands on their scales.
#pragma once

#include <cstdint>

namespace proofstand::physics {

/// To the nearest line of a scale [same unit as given].
double quantised(double value, double step);
/// A reading [m]: true size, zero error, squeezing, then the scale's step.
double reading_m(double true_m, double zero_error_m, double squeeze_m, double resolution_m);
/// What screwing down without the ratchet takes off a reading [m]. source: common practice, no source (0.01 to 0.03 mm)
inline constexpr double kSqueeze_m = -0.00002;
/// Abbe error [m] of a sliding jaw: offset × tan(play). source: geometry
double abbe_error_m(double offset_m, double play_rad);
/// Proven not below a limit: reading − uncertainty >= limit. source: the idea of ISO 14253-1
bool proven_above(double reading_m, double uncertainty_m, double limit_m);

/// A micrometer's scale: 0.5 mm screw, 50 lines. source: catalogue pages of micrometers
struct MicrometerScale {
  double sleeve_m = 0.0;  ///< last half-millimetre line that is clear
  double thimble_lines_1 = 0.0;
  double turns_1 = 0.0;
};
MicrometerScale micrometer_scale(double reading_m);
/// A vernier's coinciding line and where it stands [m]: `lines` on `span` (0.02 mm: 50 lines on 49 mm; 0.05 mm: 20 on
/// 39).
struct VernierScale {
  int line = 0;
  double at_m = 0.0;
};
VernierScale vernier_scale(double reading_m, double division_m, double spacing_m);
/// Pointer of a dial gauge [rad], 1 mm a turn.
double dial_pointer_rad(double reading_m);

}  // namespace proofstand::physics

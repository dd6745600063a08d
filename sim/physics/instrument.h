// Measuring instruments: zero error, resolution, and how a value stands on their scales.
#pragma once

namespace proofstand::physics {

/// Nearest step of a scale. value_m, step_m [m] step > 0; halves go up
double quantise_m(double value_m, double step_m);
/// What an instrument shows: true value, zero error, tilt error, rounded to its resolution. [m]
double shown_m(double true_m, double zero_error_m, double other_error_m, double resolution_m);
/// Error of a jaw that tilts while its scale stands off the line of measurement: s tan(phi). [m]
/// source  geometry (Abbe's principle)
double abbe_error_m(double offset_m, double tilt_rad);
/// How much squeezing by the thumb instead of the ratchet takes off. squeeze_1 [1] 0..1; [m] >= 0
/// source  common practice, no source: 0.01 to 0.03 mm
double squeeze_error_m(double squeeze_1);

/// Micrometer: sleeve in half millimetres, thimble in hundredths.
/// source  ordinary 0.5 mm screw with 50 divisions, published descriptions
struct MicrometerScale {
  double sleeve_m = 0.0;   ///< last line uncovered
  double thimble_1 = 0.0;  ///< division at the line, 0..50
  double turn_rad = 0.0;   ///< of the thimble from closed
};
MicrometerScale micrometer_scale(double shown_m);
/// Vernier: main scale in millimetres and the line that coincides.
struct VernierScale {
  double main_m = 0.0;
  int line = 0;
};
/// step_m [m] 0.0001, 0.00005 or 0.00002
VernierScale vernier_scale(double shown_m, double step_m);
/// Dial: angle of the long hand, one turn a millimetre. [rad] 0..2 pi
double dial_hand_rad(double shown_m);

}  // namespace proofstand::physics

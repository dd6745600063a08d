// What a hand can do with each grip, by percentile of mixed adults; how precise and how fast it is.
#pragma once

namespace proofstand::physics {

/// What the hand does.
enum class HandEffort : unsigned char {
  PowerGrip,         ///< N on a 38 mm handle
  DriverTwist,       ///< N·m on a straight driver handle
  TwoFingerPinch,    ///< N
  FingerTwist,       ///< N·m on a 9 mm bolt head
  ThumbPush,         ///< N
  KeyPush,           ///< N at the end of a key's long arm
  WrenchPull,        ///< N on a 300 mm wrench, standing
  CrossHandleTwist,  ///< N·m on a cross handle of 100 mm
  TruingPull,        ///< N
};
inline constexpr int kHandEffortCount = 9;

/// Row of the table: 5th, 50th and 95th percentile, in N or N·m as above.
struct EffortRow {
  double low_si = 0.0;
  double middle_si = 0.0;
  double high_si = 0.0;
};
/// source  grip: a published dynamometer study of 16 people, 231 +- 67.7 N; driver: Ergonomics 50 (2007) 1404-1418
///         (mean maximum of men 4.9 N·m, women included from memory); cross handle common practice, no source; others
///         from memory
EffortRow effort_row(HandEffort effort);
/// Strength at a percentile: log-normal through the median and the end nearer to it. percentile_1 [1] 0.01..0.99
/// returns [N] or [N·m] by the effort. source: own derivation
double effort_at_si(HandEffort effort, double percentile_1);
/// Standard normal value of a share: 0.5 -> 0, 0.95 -> 1.645. share_1 [1] 0.001..0.999; error below 5e-4
/// source  rational approximation 26.2.23 of the Handbook of Mathematical Functions (1964)
double normal_quantile_1(double share_1);
/// Percentile of a normal spread. [same unit as the mean]
double normal_percentile_si(double mean_si, double deviation_si, double share_1);
/// Torque of two fingers on a head. pinch_n [N], friction_1, diameter_m. [N·m] source: statics
double finger_torque_nm(double pinch_n, double friction_1, double diameter_m);
/// Amplitude of a tremor from its peak acceleration and frequency: a/(2 pi f)^2. [m]
double tremor_m(double acceleration_m_s2, double frequency_hz);
/// Error of a held force: rms = 0.3 N + 0.03 F. [N] shape published, size own
double force_error_n(double force_n);

}  // namespace proofstand::physics

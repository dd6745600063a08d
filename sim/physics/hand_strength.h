// What a hand can do with each grip, by percentile of adults.
#pragma once

#include <cstdint>

namespace proofstand::physics {

enum class Effort : std::uint8_t {
  FingerTwist,   ///< two fingers on a 9 mm bolt head [N·m]; T = µ F d with pinch 25/50/90 N, µ 0.5 (from memory)
  ShaftTwist,    ///< fingers on a key's shaft [N·m]; from memory
  DriverTwist,   ///< fingers on a driver's shaft or handle, twirling [N·m]; from memory
  DriverHandle,  ///< whole hand on a straight driver handle [N·m]; from Ergonomics 50 (2007) 1404-1418 with women
                 ///< included
  CrossHandle,   ///< whole hand on a cross handle [N·m]; own estimate (common practice, no source)
  KeyLongArm,    ///< palm on an L-key's long arm, 90 mm [N·m]; from memory
  KeyShortArm,   ///< on its short arm, 24 mm [N·m]; from memory
  Push,          ///< palm or thumb, axially [N]; from memory
  TyreHold,      ///< hand on the tyre [N]; from memory
  RotorHold,     ///< fingers on arms or edge [N]; from memory
  WipePress,     ///< rag on a face [N]; from memory
};

/// 5th, 50th and 95th percentile, in N·m or N as the effort's comment says.
struct Percentiles {
  double p5 = 0.0;
  double p50 = 0.0;
  double p95 = 0.0;
};
Percentiles effort_percentiles(Effort effort);
/// Effort at a percentile (0.05..0.95): linear between the three. source: piecewise through the table
double effort_at(Effort effort, double percentile_1);
/// Value at a percentile of a normal law. source: normal distribution, z from tables (±1.6449 at 5 and 95 %)
double normal_percentile(double mean, double deviation, double z_1);
/// Torque two fingers give on a head [N·m]: µ F d. source: statics
double pinch_torque_nm(double friction_1, double pinch_n, double diameter_m);
/// Amplitude [m] of a tremor with a peak acceleration [m/s²] at a frequency [Hz]: a/(2πf)². source: kinematics; 0.01 g
/// at 7 Hz is the mode of Arch. Neurol. 39 (1982) 358-362
double tremor_amplitude_m(double acceleration_m_s2, double frequency_hz);

}  // namespace proofstand::physics

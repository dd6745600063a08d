// How far two pictures are apart, as an eye would judge it and a driver's rounding would not.
#pragma once

#include "sim/picture/image.h"

namespace proofstand::testing {

struct Apart {
  bool same_size = false;
  double mean_levels = 0.0;      ///< mean difference of a colour, of 255
  double changed_share_1 = 0.0;  ///< texels of which a colour differs by more than kChanged_levels
};

inline constexpr int kChanged_levels = 32;
/// Another Mesa rounds otherwise and draws an edge a hair beside: less than this. A part that moved by a few texels
/// is more.
inline constexpr double kMostMean_levels = 1.2;
inline constexpr double kMostChanged_1 = 0.006;

Apart compare(const picture::Image& a, const picture::Image& b);
bool is_within_tolerance(const Apart& apart);

}  // namespace proofstand::testing

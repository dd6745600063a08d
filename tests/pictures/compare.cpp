#include "tests/pictures/compare.h"

#include <algorithm>
#include <cstdlib>

namespace proofstand::testing {

Apart compare(const picture::Image& a, const picture::Image& b) {
  Apart apart;
  apart.same_size = a.size == b.size && a.bytes.size() == b.bytes.size() && !a.bytes.empty();
  if (!apart.same_size) return apart;
  double sum = 0.0;
  std::size_t changed = 0;
  for (std::size_t texel = 0; texel < a.bytes.size(); texel += 3) {
    int most = 0;
    for (std::size_t i = texel; i < texel + 3; ++i) {
      const int off = std::abs(static_cast<int>(a.bytes[i]) - static_cast<int>(b.bytes[i]));
      sum += off;
      most = std::max(most, off);
    }
    if (most > kChanged_levels) ++changed;
  }
  apart.mean_levels = sum / static_cast<double>(a.bytes.size());
  apart.changed_share_1 = 3.0 * static_cast<double>(changed) / static_cast<double>(a.bytes.size());
  return apart;
}

bool is_within_tolerance(const Apart& apart) {
  return apart.same_size && apart.mean_levels <= kMostMean_levels && apart.changed_share_1 <= kMostChanged_1;
}

}  // namespace proofstand::testing

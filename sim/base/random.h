// Random draws that do not depend on the order of work: each is a function of (seed, purpose, part, count).
#pragma once

#include <cstdint>
#include <string_view>

namespace proofstand::base {

/// Names one draw. `purpose` says what for ("friction", "tool bias"), `part` which part, `count` the how-manieth.
struct DrawKey {
  std::uint64_t seed = 0;
  std::string_view purpose;
  std::uint64_t part = 0;
  std::uint64_t count = 0;
};

/// 64 random bits of this key.
std::uint64_t draw_bits(const DrawKey& key);
/// [1] uniform in 0 <= u < 1, a multiple of 2^-53.
double draw_unit(const DrawKey& key);
/// [1] uniform in lo..hi.
double draw_between(const DrawKey& key, double lo_1, double hi_1);
/// uniform in 0..n-1; n > 0 (asserted).
std::uint64_t draw_below(const DrawKey& key, std::uint64_t n);
/// [1] standard normal, redrawn until |z| <= limit (limit 0.5..6, asserted).
/// source: inverse-free polar method, Marsaglia and Bray 1964 (from memory)
double draw_normal(const DrawKey& key, double limit_1 = 2.5);

}  // namespace proofstand::base

#include "sim/base/random.h"

#include <string>

#include "sim/base/assert.h"
#include "sim/base/hash.h"
#include "sim/base/math.h"

namespace proofstand::base {
namespace {

std::uint64_t word_of(const DrawKey& key, std::uint64_t retry) {
  std::string bytes(key.purpose);
  for (std::uint64_t word : {key.part, key.count, retry}) {
    for (int i = 0; i < 8; ++i) bytes.push_back(static_cast<char>(word >> (8 * i)));
  }
  return keyed_word(key.seed, 0x70726f6f66737464ULL, bytes);
}

double unit_of(std::uint64_t word) { return static_cast<double>(word >> 11) * 0x1p-53; }

}  // namespace

std::uint64_t draw_bits(const DrawKey& key) { return word_of(key, 0); }

double draw_unit(const DrawKey& key) { return unit_of(word_of(key, 0)); }

double draw_between(const DrawKey& key, double lo_1, double hi_1) { return lo_1 + (hi_1 - lo_1) * draw_unit(key); }

std::uint64_t draw_below(const DrawKey& key, std::uint64_t n) {
  STAND_ASSERT(n > 0);
  // words in the incomplete last block are redrawn, so every result is equally likely
  const std::uint64_t whole = ~std::uint64_t{0} - (~std::uint64_t{0} % n + 1) % n;
  for (std::uint64_t retry = 0;; ++retry) {
    const std::uint64_t word = word_of(key, retry);
    if (word <= whole) return word % n;
  }
}

double draw_normal(const DrawKey& key, double limit_1) {
  STAND_ASSERT(limit_1 >= 0.5 && limit_1 <= 6.0);
  for (std::uint64_t retry = 0;; retry += 2) {
    const double u = 2.0 * unit_of(word_of(key, retry)) - 1.0;
    const double v = 2.0 * unit_of(word_of(key, retry + 1)) - 1.0;
    const double s = u * u + v * v;
    if (s >= 1.0 || s <= 0.0) continue;
    const double z = u * sqrt_1(-2.0 * log_1(s) / s);
    if (z >= -limit_1 && z <= limit_1) return z;
  }
}

}  // namespace proofstand::base

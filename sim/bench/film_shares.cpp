#include "sim/bench/film_shares.h"

namespace proofstand::bench {
namespace {

struct Shares {
  double grease_there = 0.0, grease_back = 0.0, oil_there = 0.0, oil_back = 0.0, dust_there = 0.0, dust_back = 0.0;
};

Exchange spread(const Shares& shares) {
  Exchange exchange;
  for (const Film film : kFilms) {
    const auto s = static_cast<std::size_t>(film);
    const bool oily = film == Film::Oil || film == Film::BrakeFluid;
    exchange.there_1[s] = oily ? shares.oil_there : shares.grease_there;
    exchange.back_1[s] = oily ? shares.oil_back : shares.grease_back;
  }
  exchange.there_1[static_cast<std::size_t>(Film::Dust)] = shares.dust_there;
  exchange.back_1[static_cast<std::size_t>(Film::Dust)] = shares.dust_back;
  // skin and bench take up no alcohol worth following
  exchange.there_1[static_cast<std::size_t>(Film::Alcohol)] = 0.0;
  exchange.back_1[static_cast<std::size_t>(Film::Alcohol)] = 0.0;
  return exchange;
}

}  // namespace

Exchange fingers_on_metal(bool gloved, bool wet) {
  const double smear = wet ? 3.0 : 1.0;
  if (gloved) return spread({0.15, 0.15 * smear, 0.40, wet ? 0.55 : 0.40, 0.10, 0.10});
  return spread({0.40, 0.10 * smear, 0.50, wet ? 0.50 : 0.30, 0.10, 0.10});
}

Exchange metal_under_rag(bool wet) {
  Exchange exchange = wet ? spread({0.80, 0.05, 0.75, 0.08, 0.85, 0.03}) : spread({0.30, 0.02, 0.50, 0.05, 0.60, 0.02});
  const auto alcohol = static_cast<std::size_t>(Film::Alcohol);
  exchange.there_1[alcohol] = wet ? 0.30 : 0.70;
  exchange.back_1[alcohol] = wet ? 0.50 : 0.10;
  return exchange;
}

Exchange bench_under_rotor() { return spread({0.10, 0.10, 0.40, 0.30, 0.10, 0.10}); }

}  // namespace proofstand::bench

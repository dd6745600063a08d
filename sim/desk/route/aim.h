// What the pointer means among all that is drawn near it: a small place close by wins over the broad band under it.
#pragma once

#include <cstdint>
#include <vector>

#include "sim/desk/route/sight.h"

namespace proofstand::desk::route {

/// One visible texel near the pointer, from the picture of ids.
struct Hit {
  std::int32_t place = -1;  ///< index into Scene::places
  float depth = 1.0F;       ///< nearer is smaller
  hand::Spot at;            ///< [pt]
  glm::vec3 world{0.0F};
};

/// A discrete place is caught from so far [pt].
inline constexpr double kCatch_pt = 12.0;
/// Closer rivals than this count as a tie, which the next-here key walks [pt].
inline constexpr double kTie_pt = 4.0;

struct AimChoice {
  std::int32_t place = -1;
  glm::vec3 world{0.0F};
};
/// The choices under the pointer, best first: the first is what a click means, the others come by the next-here key.
/// Empty when there is nothing.
std::vector<AimChoice> aim(const std::vector<Hit>& hits, const scene::Scene& scene, const bench::Bench& bench,
                           event::HandId hand, const hand::Spot& pointer);
/// Bolts, holes, grips, knobs: small things that are aimed at as a whole. Others are bands.
bool discrete(const scene::ScenePlace& place);

}  // namespace proofstand::desk::route

// From the texels of a pick window to hits: one for each place, at its best texel.
#pragma once

#include <glm/glm.hpp>
#include <vector>

#include "sim/picture/hit.h"
#include "sim/picture/image.h"
#include "sim/picture/pick_glass.h"

namespace proofstand::picture {

/// Each place within reach of a window's middle, at its nearest texel; nearest first, then by depth, then by number.
/// middle_px  [px] where the window's middle lies in the picture
std::vector<Hit> nearest_of(const std::vector<Glimpse>& glimpses, Size window, glm::vec2 middle_px, float reach_px,
                            const glm::vec3& eye);

/// Each place of a whole picture, by number, at the texel of it that lies nearest to the middle of all its texels.
/// side_px  [px] of one glimpse's texel in the picture
std::vector<Hit> middles_of(const std::vector<Glimpse>& glimpses, Size window, float side_px, const glm::vec3& eye);

}  // namespace proofstand::picture

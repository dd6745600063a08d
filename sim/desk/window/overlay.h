// Drawn over the picture and under the cards, in the flat: the cord between hand and pointer, the label of what is
// aimed at, the ink corners of a choice, and where guidance points.
#pragma once

#include <glm/glm.hpp>
#include <optional>
#include <string>
#include <vector>

#include "sim/desk/layout.h"
#include "sim/desk/workplace.h"

namespace proofstand::desk {

struct OverlayAsk {
  const Workplace* workplace = nullptr;
  float px_per_pt = 1.0F;
  Rect free;           ///< [px] where labels may stand
  bool plain = false;  ///< exam: no leader lines, no brackets of guidance
  bool reduced_motion = false;
};
void draw_overlay(const OverlayAsk& ask);
/// Corners round points of the world, all alike, with no words: evidence of a finding.
void draw_corners(const std::vector<glm::vec3>& points, const scene::View& view, const glm::vec2& window_px);

}  // namespace proofstand::desk

// The finish of this workshop's tools: one family, so that they look as if one person had chosen them.
#pragma once

#include "sim/scene/material.h"

namespace proofstand::scene {

/// Handles: sage green, and a lighter shade of it for soft parts.
inline Material handle_green() { return plastic({0.235F, 0.318F, 0.225F}); }
inline Material handle_pale() { return plastic({0.52F, 0.56F, 0.44F}); }
/// Enamelled frames of instruments.
inline Material frame_enamel() { return paint({0.30F, 0.36F, 0.33F}); }
/// Satin chrome: faces that scales are engraved in. Pale and dull, so that black lines can be read.
inline Material scale_chrome() {
  Material chrome = aluminium();
  chrome.color = {0.62F, 0.62F, 0.60F};
  chrome.roughness_1 = 0.48F;
  chrome.metal_1 = 0.55F;
  return chrome;
}
inline Material dial_face() {
  Material face = paper();
  face.roughness_1 = 0.55F;
  return face;
}

}  // namespace proofstand::scene

// A finished picture in memory, as files and mark sheets take it.
#pragma once

#include <cstdint>
#include <vector>

namespace proofstand::picture {

/// In texels of the picture, not in points of a window.
struct Size {
  int width = 0;   ///< 1 .. 16384
  int height = 0;  ///< 1 .. 16384
  friend bool operator==(const Size& a, const Size& b) { return a.width == b.width && a.height == b.height; }
};

/// Three bytes a texel (red, green, blue; sRGB), rows from the top. [height x width x 3]
struct Image {
  Size size;
  std::vector<std::uint8_t> bytes;
};

}  // namespace proofstand::picture

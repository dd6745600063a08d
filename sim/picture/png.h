// Pictures as the bytes of PNG files (ISO/IEC 15948). Whoever wants a file writes them.
#pragma once

#include <string>

#include "sim/base/result.h"
#include "sim/picture/image.h"

namespace proofstand::picture {

/// errors  "picture" when the image has no size or not its bytes
base::Result<std::string> png_from(const Image& image);
/// errors  "picture" when the bytes are no PNG that can be read
base::Result<Image> image_from_png(const std::string& bytes);

}  // namespace proofstand::picture

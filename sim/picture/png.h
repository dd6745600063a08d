// Pictures as PNG files.
#pragma once

#include <string>

#include "sim/base/result.h"
#include "sim/picture/image.h"

namespace proofstand::picture {

/// The file's bytes.
/// errors  "picture" when the image has no size or not its bytes
base::Result<std::string> png_from(const Image& image);
/// errors  "picture" when the bytes are no PNG that can be read
base::Result<Image> image_from_png(const std::string& bytes);
/// errors  "file-unwritable" with the path
base::Result<base::Done> save_png(const Image& image, const std::string& path);

}  // namespace proofstand::picture

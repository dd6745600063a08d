#include "sim/picture/png.h"

#include <png.h>

namespace proofstand::picture {
namespace {

base::Error bad_picture(const std::string& what) {
  return base::Error{"picture", "", what, "this is a bug of ours when no file was damaged; please tell us"};
}

png_image blank() {
  png_image head{};
  head.version = PNG_IMAGE_VERSION;
  head.format = PNG_FORMAT_RGB;
  return head;
}

}  // namespace

base::Result<std::string> png_from(const Image& image) {
  const auto width = static_cast<std::size_t>(image.size.width);
  const auto height = static_cast<std::size_t>(image.size.height);
  if (image.size.width < 1 || image.size.height < 1 || image.bytes.size() != width * height * 3)
    return bad_picture("the picture has no size, or not the bytes that its size needs");
  png_image head = blank();
  head.width = static_cast<png_uint_32>(image.size.width);
  head.height = static_cast<png_uint_32>(image.size.height);
  png_alloc_size_t length = 0;
  if (png_image_write_to_memory(&head, nullptr, &length, 0, image.bytes.data(), 0, nullptr) == 0)
    return bad_picture(std::string("the picture could not be packed: ") + head.message);
  std::string bytes(length, '\0');
  if (png_image_write_to_memory(&head, bytes.data(), &length, 0, image.bytes.data(), 0, nullptr) == 0)
    return bad_picture(std::string("the picture could not be packed: ") + head.message);
  bytes.resize(length);
  return bytes;
}

base::Result<Image> image_from_png(const std::string& bytes) {
  png_image head = blank();
  if (png_image_begin_read_from_memory(&head, bytes.data(), bytes.size()) == 0)
    return bad_picture(std::string("this is no PNG that can be read: ") + head.message);
  head.format = PNG_FORMAT_RGB;
  Image image;
  image.size = {static_cast<int>(head.width), static_cast<int>(head.height)};
  image.bytes.resize(PNG_IMAGE_SIZE(head));
  if (png_image_finish_read(&head, nullptr, image.bytes.data(), 0, nullptr) == 0)
    return bad_picture(std::string("this is no PNG that can be read: ") + head.message);
  return image;
}

}  // namespace proofstand::picture

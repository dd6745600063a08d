// Danger: a picture that only this program can read, or one that changes on its way through a file.
#include "sim/picture/png.h"

#include "tests/support/catch.h"

namespace proofstand::testing {
namespace {

picture::Image noise(int width, int height) {
  picture::Image image;
  image.size = {width, height};
  std::uint32_t state = 12345;
  for (int i = 0; i < width * height * 3; ++i) {
    state = state * 1664525U + 1013904223U;
    image.bytes.push_back(static_cast<std::uint8_t>(state >> 24U));
  }
  return image;
}

std::uint32_t big_endian(const std::string& bytes, std::size_t at) {
  std::uint32_t number = 0;
  for (std::size_t i = at; i < at + 4; ++i) number = number * 256U + static_cast<unsigned char>(bytes[i]);
  return number;
}

}  // namespace

TEST_CASE("a picture comes back from PNG as it went in") {
  for (const auto& [width, height] : {std::pair(1, 1), std::pair(7, 5), std::pair(64, 33)}) {
    const picture::Image image = noise(width, height);
    const auto bytes = picture::png_from(image);
    REQUIRE(bytes);
    const auto back = picture::image_from_png(*bytes);
    REQUIRE(back);
    CHECK(back->size == image.size);
    CHECK(back->bytes == image.bytes);
  }
}

TEST_CASE("the file begins as ISO/IEC 15948 has it: signature, then the header chunk with size, depth 8, kind 2") {
  const auto bytes = picture::png_from(noise(300, 2));
  REQUIRE(bytes);
  CHECK(bytes->substr(0, 8) == "\x89PNG\r\n\x1a\n");
  CHECK(big_endian(*bytes, 8) == 13);
  CHECK(bytes->substr(12, 4) == "IHDR");
  CHECK(big_endian(*bytes, 16) == 300);
  CHECK(big_endian(*bytes, 20) == 2);
  CHECK((*bytes)[24] == 8);
  CHECK((*bytes)[25] == 2);
}

TEST_CASE("no picture and no PNG are refused with a sentence") {
  CHECK_FALSE(picture::png_from({}));
  picture::Image torn = noise(4, 4);
  torn.bytes.pop_back();
  const auto refused = picture::png_from(torn);
  REQUIRE_FALSE(refused);
  CHECK(refused.error().code == "picture");
  CHECK_FALSE(picture::image_from_png("not a picture"));
  const auto whole = picture::png_from(noise(20, 20));
  REQUIRE(whole);
  CHECK_FALSE(picture::image_from_png(whole->substr(0, whole->size() / 2)));
}

}  // namespace proofstand::testing

#include "sim/scene/glyphs.h"

#define STB_TRUETYPE_IMPLEMENTATION
#define STBTT_STATIC
#include <stb/stb_truetype.h>

#include <cstdio>
#include <cstdlib>
#include <glm/gtc/matrix_transform.hpp>
#include <string>

#include "sim/scene/extrude.h"

namespace proofstand::scene {
namespace {

constexpr int kCurveSteps = 5;

std::vector<unsigned char> load_bytes(const char* path) {
  std::vector<unsigned char> bytes;
  std::FILE* file = std::fopen(path, "rb");
  if (file == nullptr) return bytes;
  unsigned char block[65536];
  for (std::size_t n = std::fread(block, 1, sizeof block, file); n > 0; n = std::fread(block, 1, sizeof block, file)) {
    bytes.insert(bytes.end(), block, block + n);
  }
  std::fclose(file);
  return bytes;
}

// next character of UTF-8 text; what is malformed reads as a question mark
int next_character(std::string_view words, std::size_t& at) {
  const auto first = static_cast<unsigned char>(words[at++]);
  if (first < 0x80) return first;
  const int more = first >= 0xF0 ? 3 : first >= 0xE0 ? 2 : first >= 0xC0 ? 1 : 0;
  if (more == 0) return '?';
  int code = first & (0x3F >> more);
  for (int i = 0; i < more; ++i) {
    if (at >= words.size() || (static_cast<unsigned char>(words[at]) & 0xC0) != 0x80) return '?';
    code = (code << 6) | (static_cast<unsigned char>(words[at++]) & 0x3F);
  }
  return code;
}

glm::dvec2 point(int x, int y) { return {static_cast<double>(x), static_cast<double>(y)}; }

// one glyph's contours in the font's own units, outer ones counter-clockwise
Outline glyph_outline(const stbtt_fontinfo& font, int glyph) {
  stbtt_vertex* steps = nullptr;
  const int count = stbtt_GetGlyphShape(&font, glyph, &steps);
  Outline outline;
  for (int i = 0; i < count; ++i) {
    const stbtt_vertex& step = steps[i];
    const glm::dvec2 to = point(step.x, step.y);
    if (step.type == STBTT_vmove) {
      outline.push_back({to});
      continue;
    }
    Loop& loop = outline.back();
    const glm::dvec2 from = loop.back();
    const glm::dvec2 c = point(step.cx, step.cy);
    const glm::dvec2 d = point(step.cx1, step.cy1);
    for (int k = 1; k < kCurveSteps && step.type != STBTT_vline; ++k) {
      const double t = static_cast<double>(k) / kCurveSteps;
      const double s = 1.0 - t;
      loop.push_back(step.type == STBTT_vcurve
                         ? s * s * from + 2.0 * s * t * c + t * t * to
                         : s * s * s * from + 3.0 * s * s * t * c + 3.0 * s * t * t * d + t * t * t * to);
    }
    loop.push_back(to);
  }
  stbtt_FreeShape(&font, steps);
  for (Loop& loop : outline) {
    if (loop.size() > 1 && loop.front() == loop.back()) loop.pop_back();
  }
  if (area_m2(outline) < 0.0) {
    for (Loop& loop : outline) loop = reversed(std::move(loop));
  }
  return outline;
}

}  // namespace

struct Typeface::Inside {
  std::vector<unsigned char> bytes;
  stbtt_fontinfo font{};
  double cap_units = 1.0;  ///< height of a capital H in the font's units

  struct Laid {
    int glyph = 0;
    double at_m = 0.0;
    double wide_m = 0.0;
  };
  [[nodiscard]] std::vector<Laid> lay(std::string_view words, double cap_height_m) const {
    const double scale = cap_height_m / cap_units;
    std::vector<Laid> laid;
    double x_m = 0.0;
    for (std::size_t at = 0; at < words.size();) {
      const int glyph = stbtt_FindGlyphIndex(&font, next_character(words, at));
      if (!laid.empty()) x_m += scale * stbtt_GetGlyphKernAdvance(&font, laid.back().glyph, glyph);
      int advance = 0;
      int bearing = 0;
      stbtt_GetGlyphHMetrics(&font, glyph, &advance, &bearing);
      laid.push_back({glyph, x_m, scale * advance});
      x_m += scale * advance;
    }
    return laid;
  }
  [[nodiscard]] Outline scaled(int glyph, double cap_height_m, glm::dvec2 by_m) const {
    Outline outline = glyph_outline(font, glyph);
    for (Loop& loop : outline) {
      for (glm::dvec2& p : loop) p = p * (cap_height_m / cap_units) + by_m;
    }
    return outline;
  }
};

Typeface Typeface::find(bool bold) {
  static constexpr const char* kRegular[] = {
      "/usr/share/fonts/opentype/inter/Inter-Medium.otf", "/usr/share/fonts/opentype/inter/Inter-Regular.otf",
      "/usr/share/fonts/truetype/inter/Inter-Regular.ttf", "/usr/share/fonts/truetype/dejavu/DejaVuSans.ttf"};
  static constexpr const char* kBold[] = {"/usr/share/fonts/opentype/inter/Inter-SemiBold.otf",
                                          "/usr/share/fonts/opentype/inter/Inter-Bold.otf",
                                          "/usr/share/fonts/truetype/dejavu/DejaVuSans-Bold.ttf"};
  Typeface face;
  const auto attempt = [&](const char* path) {
    auto inside = std::make_shared<Inside>();
    inside->bytes = load_bytes(path);
    if (inside->bytes.empty()) return false;
    const int start = stbtt_GetFontOffsetForIndex(inside->bytes.data(), 0);
    if (start < 0 || stbtt_InitFont(&inside->font, inside->bytes.data(), start) == 0) return false;
    int x0 = 0, y0 = 0, x1 = 0, y1 = 0;
    if (stbtt_GetCodepointBox(&inside->font, 'H', &x0, &y0, &x1, &y1) == 0 || y1 <= 0) return false;
    inside->cap_units = y1;
    face.inside_ = std::move(inside);
    return true;
  };
  if (bold) {
    for (const char* path : kBold) {
      if (attempt(path)) return face;
    }
  }
  for (const char* path : kRegular) {
    if (attempt(path)) return face;
  }
  return face;
}

bool Typeface::found() const { return inside_ != nullptr; }

double Typeface::width_m(std::string_view words, double cap_height_m) const {
  if (!found()) return 0.0;
  const std::vector<Inside::Laid> laid = inside_->lay(words, cap_height_m);
  return laid.empty() ? 0.0 : laid.back().at_m + laid.back().wide_m;
}

Outline Typeface::outline(std::string_view words, double cap_height_m, Align align) const {
  Outline outline;
  if (!found()) return outline;
  const double wide_m = align == Align::Left ? 0.0 : width_m(words, cap_height_m);
  const double from_m = align == Align::Middle ? -wide_m / 2.0 : -wide_m;
  for (const Inside::Laid& one : inside_->lay(words, cap_height_m)) {
    Outline glyph = inside_->scaled(one.glyph, cap_height_m, {from_m + one.at_m, 0.0});
    outline.insert(outline.end(), glyph.begin(), glyph.end());
  }
  return outline;
}

Mesh Typeface::flat(std::string_view words, double cap_height_m, Align align, double z_m) const {
  return flat_face(outline(words, cap_height_m, align), z_m);
}

Mesh Typeface::round_words(std::string_view words, double cap_height_m, double radius_m, double middle_rad,
                           double z_m) const {
  Mesh mesh;
  if (!found()) return mesh;
  const double wide_m = width_m(words, cap_height_m);
  for (const Inside::Laid& one : inside_->lay(words, cap_height_m)) {
    const double at = middle_rad + (wide_m / 2.0 - one.at_m - one.wide_m / 2.0) / radius_m;
    const Mesh glyph = flat_face(inside_->scaled(one.glyph, cap_height_m, {-one.wide_m / 2.0, radius_m}), z_m);
    append(mesh, glyph, glm::rotate(glm::mat4(1.0F), static_cast<float>(at) - 1.5707963F, glm::vec3(0.0F, 0.0F, 1.0F)));
  }
  return mesh;
}

}  // namespace proofstand::scene

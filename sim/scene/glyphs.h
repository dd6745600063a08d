// Print and engraving: words as outlines and meshes. The only file that knows the font library.
#pragma once

#include <memory>
#include <string_view>

#include "sim/scene/mesh.h"
#include "sim/scene/outline.h"

namespace proofstand::scene {

enum class Align { Left, Middle, Right };

/// A typeface, found once. Without the font's file everything printed is simply absent: outlines and meshes are empty,
/// widths 0.
class Typeface {
 public:
  /// The first that is installed of the faces known by path; regular, or medium weight for engraved figures.
  static Typeface find(bool bold = false);
  [[nodiscard]] bool found() const;

  /// Words on one line from the origin along +x, capital letters cap_height_m tall, base line at y = 0. UTF-8.
  [[nodiscard]] Outline outline(std::string_view words, double cap_height_m, Align align = Align::Left) const;
  [[nodiscard]] double width_m(std::string_view words, double cap_height_m) const;
  /// Flat face in the plane z = z_m, looking to +z.
  [[nodiscard]] Mesh flat(std::string_view words, double cap_height_m, Align align = Align::Left,
                          double z_m = 0.0) const;
  /// Words round a circle about the origin, read from outside the plane (+z), tops outwards, middle of the words at
  /// middle_rad; clockwise as one reads.
  [[nodiscard]] Mesh round_words(std::string_view words, double cap_height_m, double radius_m, double middle_rad,
                                 double z_m = 0.0) const;

 private:
  struct Inside;
  std::shared_ptr<const Inside> inside_;
};

}  // namespace proofstand::scene

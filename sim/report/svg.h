// A drawing as scalable vector graphics text, to be set into a page. Only what the mark sheet's pictures need.
#pragma once

#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace proofstand::report {

/// A point of a drawing, in its own units (1 unit = 1 px at full size), y downwards.
struct Point {
  double x = 0.0;
  double y = 0.0;
};

/// How a shape is drawn.
struct Pen {
  std::string_view stroke = "none";
  double width = 1.0;
  std::string_view fill = "none";
  std::string_view dash;  ///< "4 3", empty: solid
};

/// Where a text's point lies in it.
enum class Anchor { Start, Middle, End };

class Svg {
 public:
  /// width, height: of the drawing. title: what it shows, for readers who cannot see it.
  Svg(double width, double height, std::string_view title);
  void line(Point from, Point to, const Pen& pen);
  void polyline(const std::vector<Point>& points, const Pen& pen);
  void polygon(const std::vector<Point>& points, const Pen& pen);
  void circle(Point centre, double radius, const Pen& pen);
  void rect(Point corner, double width, double height, const Pen& pen);
  /// Part of a ring between two radii and two angles (radians, 0 = right, counter-clockwise as seen).
  void ring_part(Point centre, double r_in, double r_out, double from_rad, double to_rad, std::string_view fill);
  /// size in px; weight 400 or 600.
  void text(Point at, std::string_view words, double size, std::string_view colour, Anchor anchor = Anchor::Start,
            int weight = 400);
  /// The whole element.
  [[nodiscard]] std::string finish() const;

 private:
  void open(std::string_view element, const Pen& pen);
  std::string head_;
  std::string body_;
};

/// A number in a drawing: two decimals at most.
std::string svg_number(double value);
/// Text that is safe inside an element or an attribute of a page.
std::string escaped(std::string_view text);
/// Point on a circle: angle counter-clockwise from the right, as seen.
Point on_circle(Point centre, double radius, double angle_rad);

}  // namespace proofstand::report

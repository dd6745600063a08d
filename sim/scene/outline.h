// Flat shapes as closed loops of points: what solids are extruded from and what is printed on them. Metres, x to the
// right, y up.
#pragma once

#include <glm/glm.hpp>
#include <vector>

namespace proofstand::scene {

/// A closed loop, its last point joined to its first. Counter-clockwise round matter, clockwise round a hole.
using Loop = std::vector<glm::dvec2>;
/// Loops together bound one shape: outer edges and holes, in any order.
using Outline = std::vector<Loop>;

/// How far a chord may lie off its arc where one looks closely, and where one does not [m].
inline constexpr double kNearSag_m = 0.00005;
inline constexpr double kFarSag_m = 0.0005;

/// Segments of a full circle so that no chord lies further than sag_m off it; 8 .. 256.
int circle_segments(double radius_m, double sag_m = kNearSag_m);
/// Counter-clockwise circle.
Loop circle(double radius_m, glm::dvec2 centre_m = {0.0, 0.0}, double sag_m = kNearSag_m);
/// Points of an arc from one angle to another, both ends included; to < from runs clockwise.
Loop arc(double radius_m, double from_rad, double to_rad, glm::dvec2 centre_m = {0.0, 0.0}, double sag_m = kNearSag_m);
/// A polygon (counter-clockwise) with every corner rounded; radii that do not fit are cut down.
Loop rounded(const Loop& corners, double radius_m, double sag_m = kNearSag_m);
/// Rectangle about the origin with rounded corners.
Loop rounded_rectangle(double width_m, double height_m, double radius_m, double sag_m = kNearSag_m);
/// Regular polygon about the origin by its width across flats; a flat looks to +x.
Loop regular_polygon(int corners, double across_flats_m);
/// Straight slot with round ends, along x.
Loop slot(double length_m, double width_m, double sag_m = kNearSag_m);

/// The hexalobular drive by its two widths and the radius of its lobes; the radius of its hollows follows, for the arcs
/// meet tangentially.
/// source  ISO 10664 (shape and nominal widths); base widths of size 25 between the limits of its gauge: from memory
struct Hexalobular {
  double points_m = 0.004458;                    ///< across the lobes, A
  double hollows_m = 0.0031775;                  ///< across the hollows, B
  double lobe_radius_m = 0.000375;               ///< Re
  [[nodiscard]] double hollow_radius_m() const;  ///< Ri
  /// Moved outwards by offset_m everywhere: a recess is a little larger than the tip that enters it.
  [[nodiscard]] Hexalobular grown(double offset_m) const;
};
/// Base contours: size 25, and its smaller neighbour.
Hexalobular hexalobular_25();
Hexalobular hexalobular_20();
/// Its contour, a lobe at +x. sag_m decides how many points each arc gets.
Loop contour(const Hexalobular& drive, double sag_m = 0.00001);

/// Same loop, run the other way: turns matter into a hole.
Loop reversed(Loop loop);
/// Turned about the origin, then moved.
Loop placed(Loop loop, double angle_rad, glm::dvec2 by_m = {0.0, 0.0});
/// Mirrored in the y axis (x changes sign), still counter-clockwise.
Loop mirrored(Loop loop);
/// Enclosed area, positive when counter-clockwise.
double area_m2(const Loop& loop);
double area_m2(const Outline& outline);

}  // namespace proofstand::scene

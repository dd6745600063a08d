// Points, rays and the window's lens, as far as gestures need them: plain doubles, no graphics library.
#pragma once

#include <optional>

namespace proofstand::hand {

/// A point or direction of the world [m].
struct Vec3 {
  double x_m = 0.0;
  double y_m = 0.0;
  double z_m = 0.0;
};
Vec3 operator+(const Vec3& a, const Vec3& b);
Vec3 operator-(const Vec3& a, const Vec3& b);
Vec3 operator*(const Vec3& a, double factor_1);
double dot(const Vec3& a, const Vec3& b);
Vec3 cross(const Vec3& a, const Vec3& b);
double length_m(const Vec3& a);
/// Of unit length; zero stays zero.
Vec3 unit(const Vec3& a);

/// A point of the window [pt], x to the right, y downwards. A point is 1/96 inch.
struct Spot {
  double x_pt = 0.0;
  double y_pt = 0.0;
};
double distance_pt(const Spot& a, const Spot& b);

struct Ray {
  Vec3 origin;
  Vec3 direction{0.0, 0.0, 1.0};  ///< unit length
};

/// How the world is seen: a pinhole.
struct Lens {
  Vec3 eye;
  Vec3 right{1.0, 0.0, 0.0};  ///< unit length, square to each other
  Vec3 up{0.0, 1.0, 0.0};
  Vec3 forward{0.0, 0.0, 1.0};
  double focal_pt = 1000.0;  ///< points by which something as wide as it is far off is seen
  Spot middle;               ///< where the middle of the lens lies in the window
};

/// Ray under a point of the window.
Ray ray_through(const Lens& lens, const Spot& spot);
/// Where a point of the world lies in the window; nothing when it is behind the eye.
std::optional<Spot> project(const Lens& lens, const Vec3& point);
/// Points that one metre square to the line of sight takes up at a point of the world.
double scale_pt_per_m(const Lens& lens, const Vec3& point);
/// Direction in which a direction of the world goes in the window at a point, unit length; nothing when it goes along
/// the line of sight.
std::optional<Spot> project_direction(const Lens& lens, const Vec3& point, const Vec3& direction);

/// A place's own axes in the world: x and y in its face, z out of it, of unit length.
struct Frame {
  Vec3 origin;
  Vec3 x{1.0, 0.0, 0.0};
  Vec3 y{0.0, 1.0, 0.0};
  Vec3 z{0.0, 0.0, 1.0};
};
/// A point of the world in a frame's numbers.
Vec3 into_frame(const Frame& frame, const Vec3& point);
Vec3 out_of_frame(const Frame& frame, const Vec3& local);
/// Where a ray meets the plane through a point; nothing when it runs along it or points away.
std::optional<Vec3> meet_plane(const Ray& ray, const Vec3& point, const Vec3& normal);

}  // namespace proofstand::hand

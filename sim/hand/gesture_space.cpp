#include "sim/hand/gesture_space.h"

#include "sim/base/math.h"

namespace proofstand::hand {
namespace {

constexpr double kNothing = 1e-12;
constexpr double kNearest_m = 1e-4;  // nearer to the eye nothing is seen

}  // namespace

Vec3 operator+(const Vec3& a, const Vec3& b) { return {a.x_m + b.x_m, a.y_m + b.y_m, a.z_m + b.z_m}; }
Vec3 operator-(const Vec3& a, const Vec3& b) { return {a.x_m - b.x_m, a.y_m - b.y_m, a.z_m - b.z_m}; }
Vec3 operator*(const Vec3& a, double factor_1) { return {a.x_m * factor_1, a.y_m * factor_1, a.z_m * factor_1}; }
double dot(const Vec3& a, const Vec3& b) { return a.x_m * b.x_m + a.y_m * b.y_m + a.z_m * b.z_m; }
Vec3 cross(const Vec3& a, const Vec3& b) {
  return {a.y_m * b.z_m - a.z_m * b.y_m, a.z_m * b.x_m - a.x_m * b.z_m, a.x_m * b.y_m - a.y_m * b.x_m};
}
double length_m(const Vec3& a) { return base::sqrt_1(dot(a, a)); }
Vec3 unit(const Vec3& a) {
  const double size_m = length_m(a);
  return size_m < kNothing ? Vec3{} : a * (1.0 / size_m);
}

double distance_pt(const Spot& a, const Spot& b) {
  const double dx = a.x_pt - b.x_pt;
  const double dy = a.y_pt - b.y_pt;
  return base::sqrt_1(dx * dx + dy * dy);
}

Ray ray_through(const Lens& lens, const Spot& spot) {
  const double right = (spot.x_pt - lens.middle.x_pt) / lens.focal_pt;
  const double up = (lens.middle.y_pt - spot.y_pt) / lens.focal_pt;
  return {lens.eye, unit(lens.forward + lens.right * right + lens.up * up)};
}

std::optional<Spot> project(const Lens& lens, const Vec3& point) {
  const Vec3 to = point - lens.eye;
  const double away_m = dot(to, lens.forward);
  if (away_m < kNearest_m) return std::nullopt;
  return Spot{lens.middle.x_pt + lens.focal_pt * dot(to, lens.right) / away_m,
              lens.middle.y_pt - lens.focal_pt * dot(to, lens.up) / away_m};
}

double scale_pt_per_m(const Lens& lens, const Vec3& point) {
  const double away_m = dot(point - lens.eye, lens.forward);
  return lens.focal_pt / (away_m < kNearest_m ? kNearest_m : away_m);
}

std::optional<Spot> project_direction(const Lens& lens, const Vec3& point, const Vec3& direction) {
  // the picture of the direction at that very point, not of a stretch that begins there
  const Vec3 to = point - lens.eye;
  const double away_m = dot(to, lens.forward);
  if (away_m < kNearest_m) return std::nullopt;
  const double forward = dot(direction, lens.forward) / away_m;
  const double x = dot(direction, lens.right) - dot(to, lens.right) * forward;
  const double y = dot(direction, lens.up) - dot(to, lens.up) * forward;
  const double size = base::sqrt_1(x * x + y * y);
  if (size < 1e-6) return std::nullopt;
  return Spot{x / size, -y / size};
}

Vec3 into_frame(const Frame& frame, const Vec3& point) {
  const Vec3 to = point - frame.origin;
  return {dot(to, frame.x), dot(to, frame.y), dot(to, frame.z)};
}

Vec3 out_of_frame(const Frame& frame, const Vec3& local) {
  return frame.origin + frame.x * local.x_m + frame.y * local.y_m + frame.z * local.z_m;
}

std::optional<Vec3> meet_plane(const Ray& ray, const Vec3& point, const Vec3& normal) {
  const double slope = dot(ray.direction, normal);
  if (slope < kNothing && slope > -kNothing) return std::nullopt;
  const double away_m = dot(point - ray.origin, normal) / slope;
  if (away_m <= 0.0) return std::nullopt;
  return ray.origin + ray.direction * away_m;
}

}  // namespace proofstand::hand

#include "sim/physics/seating.h"

#include <cstddef>

#include "sim/base/assert.h"
#include "sim/base/math.h"

namespace proofstand::physics {
namespace {

double boss_angle_rad(std::size_t i, std::size_t n) {
  return base::kTwoPi * static_cast<double>(i) / static_cast<double>(n);
}

struct Spot {
  double x_m, y_m, z_m;
};

// plane through three spots, as slopes and offset; false when they lie on one line
bool plane_through(const Spot& a, const Spot& b, const Spot& c, Tilt& plane) {
  const double det = (b.x_m - a.x_m) * (c.y_m - a.y_m) - (c.x_m - a.x_m) * (b.y_m - a.y_m);
  if (det < 1e-12 && det > -1e-12) return false;
  plane.x_1 = ((b.z_m - a.z_m) * (c.y_m - a.y_m) - (c.z_m - a.z_m) * (b.y_m - a.y_m)) / det;
  plane.y_1 = ((b.x_m - a.x_m) * (c.z_m - a.z_m) - (c.x_m - a.x_m) * (b.z_m - a.z_m)) / det;
  plane.offset_m = a.z_m - plane.x_1 * a.x_m - plane.y_1 * a.y_m;
  return true;
}

// is the point in the triangle, its edges included?
bool holds(const Spot& a, const Spot& b, const Spot& c, double x_m, double y_m) {
  const auto side = [&](const Spot& p, const Spot& q) {
    return (q.x_m - p.x_m) * (y_m - p.y_m) - (q.y_m - p.y_m) * (x_m - p.x_m);
  };
  const double ab = side(a, b);
  const double bc = side(b, c);
  const double ca = side(c, a);
  constexpr double kEdge = 1e-12;
  return (ab >= -kEdge && bc >= -kEdge && ca >= -kEdge) || (ab <= kEdge && bc <= kEdge && ca <= kEdge);
}

}  // namespace

double Tilt::size_rad() const { return base::sqrt_1(x_1 * x_1 + y_1 * y_1); }

double Tilt::height_m(double radius_m, double angle_rad) const {
  return offset_m + radius_m * (x_1 * base::cos_rad(angle_rad) + y_1 * base::sin_rad(angle_rad));
}

Tilt fit_tilt(const std::vector<double>& height_m, double boss_radius_m) {
  const std::size_t n = height_m.size();
  STAND_ASSERT(n > 0 && boss_radius_m > 0.0);
  Tilt plane;
  for (std::size_t i = 0; i < n; ++i) {
    const double angle_rad = boss_angle_rad(i, n);
    plane.x_1 += height_m[i] * base::cos_rad(angle_rad);
    plane.y_1 += height_m[i] * base::sin_rad(angle_rad);
    plane.offset_m += height_m[i];
  }
  const double count = static_cast<double>(n);
  // two bosses say nothing across their line, one says nothing of any tilt
  const double share = n >= 3 ? 2.0 / count : (n == 2 ? 0.5 : 0.0);
  plane.x_1 *= share / boss_radius_m;
  plane.y_1 = n >= 3 ? plane.y_1 * share / boss_radius_m : 0.0;
  plane.offset_m /= count;
  return plane;
}

Tilt resting_tilt(const std::vector<double>& height_m, double boss_radius_m, double press_angle_rad) {
  const std::size_t n = height_m.size();
  STAND_ASSERT(n >= 3 && boss_radius_m > 0.0);
  std::vector<Spot> spots(n);
  for (std::size_t i = 0; i < n; ++i) {
    const double angle_rad = boss_angle_rad(i, n);
    spots[i] = {boss_radius_m * base::cos_rad(angle_rad), boss_radius_m * base::sin_rad(angle_rad), height_m[i]};
  }
  // a press on the circle itself lies outside of every triangle but for its corners
  const double press_x_m = 0.4 * boss_radius_m * base::cos_rad(press_angle_rad);
  const double press_y_m = 0.4 * boss_radius_m * base::sin_rad(press_angle_rad);
  Tilt best = fit_tilt(height_m, boss_radius_m);
  for (const Spot& spot : spots) {
    const double over_m = spot.z_m - (best.offset_m + best.x_1 * spot.x_m + best.y_1 * spot.y_m);
    if (over_m > 0.0) best.offset_m += over_m;
  }
  double lowest_m = best.offset_m + best.x_1 * press_x_m + best.y_1 * press_y_m;
  for (std::size_t i = 0; i < n; ++i) {
    for (std::size_t j = i + 1; j < n; ++j) {
      for (std::size_t k = j + 1; k < n; ++k) {
        Tilt plane;
        if (!plane_through(spots[i], spots[j], spots[k], plane)) continue;
        if (!holds(spots[i], spots[j], spots[k], press_x_m, press_y_m)) continue;
        bool above = true;
        for (const Spot& spot : spots) {
          above = above && plane.offset_m + plane.x_1 * spot.x_m + plane.y_1 * spot.y_m >= spot.z_m - 1e-12;
        }
        const double height = plane.offset_m + plane.x_1 * press_x_m + plane.y_1 * press_y_m;
        if (above && height < lowest_m - 1e-15) {
          lowest_m = height;
          best = plane;
        }
      }
    }
  }
  return best;
}

std::vector<double> boss_gaps_m(const std::vector<double>& height_m, double boss_radius_m, const Tilt& plane) {
  std::vector<double> gaps_m(height_m.size());
  for (std::size_t i = 0; i < gaps_m.size(); ++i) {
    const double gap_m = plane.height_m(boss_radius_m, boss_angle_rad(i, gaps_m.size())) - height_m[i];
    gaps_m[i] = gap_m > 0.0 ? gap_m : 0.0;
  }
  return gaps_m;
}

double gap_after_pull_m(double gap_m, double preload_n, bool others_tight, double straight_1) {
  const double closed_m = preload_n / kSeatStiffness_n_m;
  const double left_m = gap_m > closed_m ? gap_m - closed_m : 0.0;
  // a bolt already pulled straight to torque holds the tilt by the friction under its head
  const double frozen_m = others_tight ? kFrozenShare_1 * base::clamp_1(straight_1, 0.0, 1.0) * gap_m : 0.0;
  return frozen_m > left_m ? frozen_m : left_m;
}

double interface_clamp_n(double preload_n, double bend_m) {
  const double clamp_n = preload_n - kSeatStiffness_n_m * (bend_m > 0.0 ? bend_m : 0.0);
  return clamp_n > 0.0 ? clamp_n : 0.0;
}

double cocked_tilt_rad(double gap_m, double across_m) { return base::atan_rad(gap_m / across_m); }

}  // namespace proofstand::physics

#include "sim/base/math.h"
#include "sim/base/number_text.h"
#include "sim/report/palette.h"
#include "sim/report/pictures.h"
#include "sim/report/svg.h"

namespace proofstand::report {
namespace {

/// A rectangle of a drawing in which figures are plotted.
struct Plot {
  double left, top, width, height;
  double x_max, y_min, y_max;

  [[nodiscard]] Point at(double x, double y) const {
    const double share = y_max > y_min ? (y - y_min) / (y_max - y_min) : 0.0;
    return {left + (x_max > 0.0 ? width * x / x_max : 0.0), top + height * (1.0 - share)};
  }
};

// a round step that gives about n lines over a span
double grid_step(double span, double n) {
  double step = 1e-6;
  static constexpr double kFactors[] = {2.0, 2.5, 2.0};  // 1, 2, 5, 10
  for (int i = 0; span / step > n && i < 60; ++i) step *= kFactors[i % 3];
  return step;
}

}  // namespace

std::string draw_torque(const TorqueCurve& curve, double sheet_lo_nm, double sheet_hi_nm, double angle_max_rad,
                        double torque_max_nm) {
  constexpr double kWidth = 220.0;
  constexpr double kHeight = 120.0;
  const std::string name = "bolt " + base::text_from_int(static_cast<std::int64_t>(curve.bolt + 1));
  Svg svg(kWidth, kHeight, "Torque over angle, " + name);
  const Plot plot{26.0, 18.0, kWidth - 34.0, kHeight - 40.0, base::degrees(angle_max_rad), 0.0, torque_max_nm};
  if (sheet_hi_nm > sheet_lo_nm) {
    const Point corner = plot.at(0.0, sheet_hi_nm);
    svg.rect(corner, plot.width, plot.at(0.0, sheet_lo_nm).y - corner.y, {"none", 0.0, kAccentWash, ""});
  }
  const double step = grid_step(torque_max_nm, 4.0);
  for (double t = 0.0; t <= torque_max_nm + 1e-9; t += step) {
    svg.line(plot.at(0.0, t), plot.at(plot.x_max, t), {kRuleLine, 0.7, "none", ""});
    svg.text({plot.left - 5.0, plot.at(0.0, t).y + 3.5}, svg_number(t), 9.5, kSecondary, Anchor::End);
  }
  std::vector<Point> points;
  for (std::size_t i = 0; i < curve.angle_rad.size(); ++i) {
    points.push_back(plot.at(base::degrees(curve.angle_rad[i]), curve.torque_nm[i]));
  }
  if (!points.empty()) svg.polyline(points, {kInk, 1.5, "none", ""});
  for (const std::size_t click : curve.clicks) {
    if (click < points.size()) svg.circle(points[click], 3.2, {kAccent, 1.4, kPaper, ""});
  }
  double peak = 0.0;
  for (const double torque : curve.torque_nm) peak = torque > peak ? torque : peak;
  svg.text({0.0, 11.0}, name, 11.0, kInk, Anchor::Start, 600);
  svg.text({kWidth, 11.0}, "peak " + base::text_fixed(peak, 1) + " N·m", 10.5, kSecondary, Anchor::End);
  svg.text({plot.left, kHeight - 6.0}, "0°", 9.5, kSecondary);
  svg.text({kWidth - 8.0, kHeight - 6.0}, base::text_fixed(plot.x_max, 0) + "° of turn", 9.5, kSecondary, Anchor::End);
  return svg.finish();
}

std::string draw_runout(const std::vector<double>& runout_m, double limit_m) {
  constexpr double kWidth = 460.0;
  constexpr double kHeight = 150.0;
  Svg svg(kWidth, kHeight, "Lateral runout round the track");
  double lo = 0.0;
  double hi = 0.0;
  for (std::size_t i = 0; i < runout_m.size(); ++i) {
    const double w = 1000.0 * runout_m[i];
    lo = i == 0 || w < lo ? w : lo;
    hi = i == 0 || w > hi ? w : hi;
  }
  const double middle = 0.5 * (lo + hi);
  double half = 0.5 * (hi - lo);
  if (half < 500.0 * limit_m) half = 500.0 * limit_m;
  if (half < 0.05) half = 0.05;
  const Plot plot{46.0, 16.0, kWidth - 56.0, kHeight - 42.0, 360.0, middle - 1.2 * half, middle + 1.2 * half};
  if (limit_m > 0.0) {
    const Point corner = plot.at(0.0, middle + 500.0 * limit_m);
    svg.rect(corner, plot.width, plot.at(0.0, middle - 500.0 * limit_m).y - corner.y, {"none", 0.0, kAccentWash, ""});
  }
  for (int angle = 0; angle <= 360; angle += 60) {
    svg.line(plot.at(angle, plot.y_min), plot.at(angle, plot.y_max), {kRuleLine, 0.7, "none", ""});
    svg.text({plot.at(angle, 0.0).x, kHeight - 10.0}, base::text_from_int(angle) + "°", 10.0, kSecondary,
             Anchor::Middle);
  }
  std::vector<Point> points;
  for (std::size_t i = 0; i <= runout_m.size() && !runout_m.empty(); ++i) {
    const double angle = 360.0 * static_cast<double>(i) / static_cast<double>(runout_m.size());
    points.push_back(plot.at(angle, 1000.0 * runout_m[i % runout_m.size()]));
  }
  if (!points.empty()) svg.polyline(points, {kInk, 1.6, "none", ""});
  svg.text({plot.left - 6.0, plot.at(0.0, hi).y + 4.0}, base::text_fixed(hi - middle, 2), 10.0, kSecondary,
           Anchor::End);
  svg.text({plot.left - 6.0, plot.at(0.0, lo).y + 4.0}, base::text_fixed(lo - middle, 2), 10.0, kSecondary,
           Anchor::End);
  svg.text({0.0, 10.0}, "mm", 10.0, kSecondary);
  svg.text({kWidth - 8.0, 11.0}, "in all " + base::text_fixed(hi - lo, 2) + " mm", 11.0, kInk, Anchor::End, 600);
  return svg.finish();
}

}  // namespace proofstand::report

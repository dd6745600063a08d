#include "sim/base/math.h"
#include "sim/base/number_text.h"
#include "sim/report/palette.h"
#include "sim/report/pictures.h"
#include "sim/report/svg.h"

namespace proofstand::report {
namespace {

constexpr double kSize = 220.0;
constexpr Point kCentre{kSize / 2.0, kSize / 2.0};

// positions as a mechanic sees them: the first at the right, counter-clockwise from outside
double bolt_angle(std::size_t bolt, std::size_t bolts) {
  return base::kTwoPi * static_cast<double>(bolt) / static_cast<double>(bolts);
}

std::string number_of(std::size_t bolt) { return base::text_from_int(static_cast<std::int64_t>(bolt + 1)); }

double scale_top(const JointFigures& figures) {
  double top = figures.preload_hi_n;
  for (const auto& preload : figures.preload_n) {
    if (preload && *preload > top) top = *preload;
  }
  return top > 0.0 ? 1.1 * top : 1.0;
}

}  // namespace

std::string draw_preload(const JointFigures& figures) {
  constexpr double kRadius = 80.0;
  const std::size_t n = figures.preload_n.size();
  Svg svg(kSize, kSize, "Preload of each bolt");
  const double top = scale_top(figures);
  const double lo = kRadius * figures.preload_lo_n / top;
  const double hi = kRadius * figures.preload_hi_n / top;
  if (hi > lo) {
    svg.circle(kCentre, hi, {"none", 0.0, kAccentWash, ""});
    svg.circle(kCentre, lo, {"none", 0.0, kPaper, ""});
    svg.circle(kCentre, hi, {kAccent, 0.8, "none", "2 3"});
    svg.circle(kCentre, lo, {kAccent, 0.8, "none", "2 3"});
  }
  std::vector<Point> outline;
  for (std::size_t i = 0; i < n; ++i) {
    const double angle = bolt_angle(i, n);
    svg.line(kCentre, on_circle(kCentre, kRadius, angle), {kRuleLine, 1.0, "none", ""});
    outline.push_back(on_circle(kCentre, kRadius * figures.preload_n[i].value_or(0.0) / top, angle));
  }
  if (n > 0) svg.polygon(outline, {kInk, 1.4, "none", ""});
  for (std::size_t i = 0; i < n; ++i) {
    const double preload = figures.preload_n[i].value_or(0.0);
    const bool off =
        !figures.preload_n[i] || (hi > lo && (preload < figures.preload_lo_n || preload > figures.preload_hi_n));
    const Point at = outline[i];
    if (off) {
      // a square, so that it does not hang on the colour
      svg.rect({at.x - 4.5, at.y - 4.5}, 9.0, 9.0, {kAttention, 1.0, kAttention, ""});
    } else {
      svg.circle(at, 4.0, {kAccent, 1.0, kAccent, ""});
    }
    const Point label = on_circle({kCentre.x, kCentre.y + 4.0}, kRadius + 17.0, bolt_angle(i, n));
    svg.text(label, number_of(i), 12.0, kSecondary, Anchor::Middle);
    const Point value = on_circle({kCentre.x, kCentre.y + 3.5}, kRadius * preload / top - 15.0, bolt_angle(i, n));
    svg.text(value, figures.preload_n[i] ? base::text_fixed(preload / 1000.0, 1) : "–", 11.0, off ? kAttention : kInk,
             Anchor::Middle, 600);
  }
  return svg.finish();
}

std::string draw_order(std::size_t bolts, const std::vector<TighteningRound>& rounds) {
  constexpr double kOuter = 78.0;
  Svg svg(kSize, kSize, "Order in which the bolts were tightened");
  if (bolts == 0) return svg.finish();
  const double step = rounds.size() > 1 ? 26.0 / static_cast<double>(rounds.size() - 1) : 0.0;
  for (std::size_t r = 0; r < rounds.size(); ++r) {
    // later rounds lie further in, each with its own dash
    const double radius = kOuter - step * static_cast<double>(r);
    static constexpr std::string_view kDashes[] = {"", "5 3", "2 2"};
    std::vector<Point> path;
    for (const std::size_t bolt : rounds[r]) path.push_back(on_circle(kCentre, radius, bolt_angle(bolt, bolts)));
    svg.polyline(path, {r + 1 == rounds.size() ? kAccent : kSecondary, 1.3, "none", kDashes[r < 2 ? r : 2]});
    for (std::size_t i = 0; i < path.size(); ++i) {
      svg.circle(path[i], 7.5, {kPaper, 1.0, kPaper, ""});
      svg.text({path[i].x, path[i].y + 3.6}, base::text_from_int(static_cast<std::int64_t>(i + 1)), 10.5,
               r + 1 == rounds.size() ? kAccent : kSecondary, Anchor::Middle, 600);
    }
  }
  for (std::size_t i = 0; i < bolts; ++i) {
    const Point at = on_circle({kCentre.x, kCentre.y + 3.5}, 98.0, bolt_angle(i, bolts));
    svg.text(at, "bolt " + number_of(i), 9.0, kSecondary, Anchor::Middle);
  }
  return svg.finish();
}

std::string draw_hard_stop(double capacity_nm, double demand_nm) {
  constexpr double kWidth = 460.0;
  constexpr double kLeft = 128.0;
  Svg svg(kWidth, 62.0, "What friction carries against what a hard stop asks");
  const double top = capacity_nm > demand_nm ? capacity_nm : demand_nm;
  const double unit = top > 0.0 ? (kWidth - kLeft - 60.0) / top : 0.0;
  const struct {
    std::string_view words;
    double value_nm;
    std::string_view colour;
  } bars[] = {{"friction can carry", capacity_nm, kAccent}, {"a hard stop asks", demand_nm, kInk}};
  double y = 8.0;
  for (const auto& bar : bars) {
    svg.text({kLeft - 10.0, y + 13.0}, bar.words, 12.0, kSecondary, Anchor::End);
    svg.rect({kLeft, y + 2.0}, unit * bar.value_nm, 14.0, {"none", 0.0, bar.colour, ""});
    svg.text({kLeft + unit * bar.value_nm + 8.0, y + 13.5}, base::text_fixed(bar.value_nm, 0) + " N·m", 12.0, kInk);
    y += 26.0;
  }
  return svg.finish();
}

}  // namespace proofstand::report

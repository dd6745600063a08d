#include "sim/base/math.h"
#include "sim/base/number_text.h"
#include "sim/report/palette.h"
#include "sim/report/pictures.h"
#include "sim/report/svg.h"

namespace proofstand::report {
namespace {

constexpr double kSize = 220.0;
constexpr Point kCentre{kSize / 2.0, kSize / 2.0};
constexpr double kInner = 66.0;  // of the track in the drawing; a real track is narrower against its radius
constexpr double kOuter = 96.0;
// loads in µg/cm² from which each step of the ramp begins: a trace, a print, a smear, a film that covers most of the
// surface
constexpr double kSteps[] = {0.5, 2.0, 6.0, 20.0};
constexpr std::string_view kRamp[] = {"#EBDCC8", "#D9B48A", "#BC7A3C", "#7A3500"};
constexpr double kMicrogramsPerCm2 = 1e5;  // of 1 kg/m²

int step_of(double load_ug_cm2) {
  int step = -1;
  for (int i = 0; i < 4; ++i) {
    if (load_ug_cm2 >= kSteps[i]) step = i;
  }
  return step;
}

// the worst of a block of cells: a thumb print must not drown in a mean
double worst_of(const FaceFilm& film, std::size_t sector, std::size_t wide, std::size_t ring, std::size_t high) {
  double worst = 0.0;
  for (std::size_t s = sector; s < sector + wide; ++s) {
    for (std::size_t r = ring; r < ring + high; ++r) {
      const double load = film.load_kg_m2[s * film.rings + r];
      worst = load > worst ? load : worst;
    }
  }
  return worst * kMicrogramsPerCm2;
}

}  // namespace

std::string draw_film(std::string_view face_words, const FaceFilm& film) {
  Svg svg(kSize, kSize + 18.0, "Films left on the " + std::string(face_words));
  svg.ring_part(kCentre, kInner, kOuter, 0.0, base::kPi, "#F4F1EA");
  svg.ring_part(kCentre, kInner, kOuter, base::kPi, base::kTwoPi, "#F4F1EA");
  double worst = 0.0;
  if (film.sectors > 0 && film.rings > 0 && film.load_kg_m2.size() == film.sectors * film.rings) {
    const std::size_t wide = film.sectors % 2 == 0 ? 2 : 1;
    const std::size_t high = film.rings % 2 == 0 ? 2 : 1;
    const double turn = base::kTwoPi / static_cast<double>(film.sectors);
    const double deep = (kOuter - kInner) / static_cast<double>(film.rings);
    for (std::size_t s = 0; s < film.sectors; s += wide) {
      for (std::size_t r = 0; r < film.rings; r += high) {
        const double load = worst_of(film, s, wide, r, high);
        worst = load > worst ? load : worst;
        const int step = step_of(load);
        if (step < 0) continue;
        svg.ring_part(kCentre, kInner + deep * static_cast<double>(r), kInner + deep * static_cast<double>(r + high),
                      turn * static_cast<double>(s), turn * static_cast<double>(s + wide), kRamp[step]);
        // the heaviest step bears a dot as well, so that it does not hang on the shade
        if (step == 3) {
          const Point at =
              on_circle(kCentre, kInner + deep * (static_cast<double>(r) + 0.5 * static_cast<double>(high)),
                        turn * (static_cast<double>(s) + 0.5 * static_cast<double>(wide)));
          svg.circle(at, 0.9, {"none", 0.0, kPaper, ""});
        }
      }
    }
  }
  svg.circle(kCentre, kInner, {kSecondary, 1.0, "none", ""});
  svg.circle(kCentre, kOuter, {kSecondary, 1.0, "none", ""});
  svg.text({kCentre.x, kCentre.y - 4.0}, face_words, 12.0, kInk, Anchor::Middle, 600);
  svg.text({kCentre.x, kCentre.y + 14.0}, "worst " + base::text_fixed(worst, 1) + " µg/cm²", 11.0, kSecondary,
           Anchor::Middle);
  double x = 4.0;
  for (int i = 0; i < 4; ++i) {
    svg.rect({x, kSize + 2.0}, 12.0, 10.0, {kSecondary, 0.5, kRamp[i], ""});
    svg.text({x + 16.0, kSize + 11.0}, "≥ " + svg_number(kSteps[i]), 10.0, kSecondary);
    x += 44.0;
  }
  svg.text({kSize - 1.0, kSize + 11.0}, "µg/cm²", 10.0, kSecondary, Anchor::End);
  return svg.finish();
}

}  // namespace proofstand::report

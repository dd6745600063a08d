#include "sim/scene/film_maps.h"

#include <algorithm>
#include <cmath>

#include "sim/bench/surface.h"

namespace proofstand::scene {
namespace {

// loads at which a film has lost two thirds of what it leaves visible: a greasy thumb's print is plain to see, a fresh
// rotor's thin oil a faint haze. common practice, no source
constexpr double kDull_kg_m2 = 4e-4;
constexpr double kDark_kg_m2 = 1.2e-3;
constexpr double kWet_kg_m2 = 2e-3;

std::uint8_t shown(double load_kg_m2, double scale_kg_m2) {
  const double share = 1.0 - std::exp(-std::max(0.0, load_kg_m2) / scale_kg_m2);
  return static_cast<std::uint8_t>(std::lround(255.0 * share));
}

}  // namespace

glm::u8vec4 film_look(const bench::FilmCell& cell, base::Tick tick) {
  const double dust = cell.load_kg_m2[static_cast<std::size_t>(bench::Film::Dust)];
  const double wet = bench::wet_alcohol_kg_m2(cell, tick);
  return {shown(bench::fouling_kg_m2(cell.load_kg_m2), kDull_kg_m2), shown(wet, kWet_kg_m2), shown(dust, kDark_kg_m2),
          0};
}

FilmMap compute_film(const bench::FaceState& face, base::Tick tick) {
  FilmMap map;
  map.sectors = static_cast<int>(bench::kSectors);
  map.rings = static_cast<int>(bench::kRings);
  map.cells.resize(bench::kSectors * bench::kRings);
  for (std::size_t sector = 0; sector < bench::kSectors; ++sector) {
    for (std::size_t ring = 0; ring < bench::kRings; ++ring) {
      map.cells[ring * bench::kSectors + sector] = film_look(face.cells[sector * bench::kRings + ring], tick);
    }
  }
  return map;
}

}  // namespace proofstand::scene

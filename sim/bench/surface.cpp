#include "sim/bench/surface.h"

#include <cmath>

#include "sim/base/assert.h"
#include "sim/base/math.h"
#include "sim/physics/dimensions.h"
#include "sim/physics/drying.h"

namespace proofstand::bench {
namespace {

static_assert(kSpecies == physics::kSpeciesCount);
// asked for by every wet cell, so worked out once
const double kDryingFlux_kg_m2_s = physics::alcohol_flux_kg_m2_s();
// three covering loads: as good as everywhere
constexpr double kFullFilm_kg_m2 = 3.0 * physics::kCoverLoad_kg_m2;
constexpr double kVisiblyWet_kg_m2 = 1e-4;

std::size_t at(Film film) { return static_cast<std::size_t>(film); }

}  // namespace

double TrackGrid::cell_area_m2(std::size_t ring) const {
  const double lo = inner_m + ring_width_m() * static_cast<double>(ring);
  const double hi = lo + ring_width_m();
  return (base::kTwoPi / static_cast<double>(kSectors)) * 0.5 * (hi * hi - lo * lo);
}

double TrackGrid::ring_radius_m(std::size_t ring) const {
  return inner_m + ring_width_m() * (static_cast<double>(ring) + 0.5);
}

TrackGrid track_grid(const RotorPart& part) {
  const physics::TrackRadii radii = physics::track_radii(part.diameter_m);
  return {radii.inner_m, radii.outer_m, radii.middle_m};
}

TrackWear track_wear(const RotorPart& part) {
  const physics::TrackRadii radii = physics::track_radii(part.diameter_m);
  return {radii.lining_inner_m, radii.lining_outer_m};
}

CellPlace resolve_cell(const TrackGrid& grid, double radius_m, double angle_rad) {
  const double sector = base::wrap_two_pi(angle_rad) / base::kTwoPi * static_cast<double>(kSectors);
  const double ring = base::clamp_1((radius_m - grid.inner_m) / grid.ring_width_m(), 0.0, kRings - 1.0);
  CellPlace place;
  place.sector = static_cast<std::size_t>(std::floor(sector)) % kSectors;
  place.ring = static_cast<std::size_t>(std::floor(ring));
  return place;
}

int face_of(PlaceKind place) {
  if (place == PlaceKind::TrackOuter) return 0;
  return place == PlaceKind::TrackInner ? 1 : -1;
}

int patch_of(PlaceKind place) {
  switch (place) {
    case PlaceKind::CarrierOuter:
      return 0;
    case PlaceKind::CarrierInner:
      return 1;
    case PlaceKind::Arms:
      return 2;
    case PlaceKind::Edge:
    case PlaceKind::InnerEdge:
      return 3;
    default:
      return -1;
  }
}

double patch_area_m2(PlaceKind place) {
  switch (place) {
    case PlaceKind::CarrierOuter:
    case PlaceKind::CarrierInner:
      return 14e-4;
    case PlaceKind::Arms:
      return 12e-4;
    case PlaceKind::Edge:
    case PlaceKind::InnerEdge:
      return 9e-4;
    case PlaceKind::Boss:
    case PlaceKind::HubSeat:
      return 1e-4;
    case PlaceKind::BenchTop:
      return 0.1;
    case PlaceKind::BoltThread:
    case PlaceKind::Hole:
      return kThreadArea_m2;
    default:
      return 0.010;
  }
}

double wet_alcohol_kg_m2(const FilmCell& cell, base::Tick now, double slowness_1) {
  const double dried = kDryingFlux_kg_m2_s * slowness_1 * base::seconds(now - cell.wet_tick);
  const double left = cell.load_kg_m2[at(Film::Alcohol)] - dried;
  return left > 0.0 ? left : 0.0;
}

void rebase_alcohol(FilmCell& cell, base::Tick now, double slowness_1) {
  cell.load_kg_m2[at(Film::Alcohol)] = wet_alcohol_kg_m2(cell, now, slowness_1);
  cell.wet_tick = now;
}

double fouling_kg_m2(const std::array<double, kSpecies>& load) {
  return load[at(Film::SkinGrease)] + load[at(Film::Oil)] + load[at(Film::Grease)] + load[at(Film::Locker)] +
         load[at(Film::BrakeFluid)];
}

void exchange_film(std::array<double, kSpecies>& first, double first_area_m2, std::array<double, kSpecies>& second,
                   double second_area_m2, double area_m2, const Exchange& exchange, double strength_1) {
  STAND_ASSERT(area_m2 > 0.0 && area_m2 <= first_area_m2 * 1.000001 && area_m2 <= second_area_m2 * 1.000001);
  for (std::size_t s = 0; s < kSpecies; ++s) {
    const double moved_kg = area_m2 * strength_1 * (exchange.there_1[s] * first[s] - exchange.back_1[s] * second[s]);
    first[s] -= moved_kg / first_area_m2;
    second[s] += moved_kg / second_area_m2;
    // a last bit below zero is rounding
    if (first[s] < 0.0) first[s] = 0.0;
    if (second[s] < 0.0) second[s] = 0.0;
  }
}

void mark_changed(FaceState& face) { ++face.version; }

FaceFigures face_figures(const FaceState& face, const TrackGrid& grid, base::Tick now) {
  FaceFigures figures;
  double area = 0.0;
  double factor = 0.0;
  for (std::size_t ring = 0; ring < kRings; ++ring) {
    const double cell_area = grid.cell_area_m2(ring);
    for (std::size_t sector = 0; sector < kSectors; ++sector) {
      const FilmCell& cell = face.cells[sector * kRings + ring];
      const double load = fouling_kg_m2(cell.load_kg_m2);
      const double wet = wet_alcohol_kg_m2(cell, now);
      const double oily = load - cell.load_kg_m2[at(Film::SkinGrease)] - cell.load_kg_m2[at(Film::Locker)];
      area += cell_area;
      figures.mean_kg_m2 += cell_area * load;
      figures.covered_1 += cell_area * physics::covered_1(load);
      std::array<double, kSpecies> now_load = cell.load_kg_m2;
      now_load[at(Film::Alcohol)] = wet;
      factor += cell_area * physics::film_friction_factor_1(now_load);
      if (oily >= kFullFilm_kg_m2) figures.oily_1 += cell_area;
      if (wet > kVisiblyWet_kg_m2) figures.wet_share_1 += cell_area;
      if (load > figures.worst_kg_m2) figures.worst_kg_m2 = load;
      if (wet > figures.wet_kg_m2) figures.wet_kg_m2 = wet;
    }
  }
  figures.mean_kg_m2 /= area;
  figures.covered_1 = base::clamp_1(figures.covered_1 / area, 0.0, 1.0);
  figures.oily_1 = base::clamp_1(figures.oily_1 / area, 0.0, 1.0);
  figures.wet_share_1 = base::clamp_1(figures.wet_share_1 / area, 0.0, 1.0);
  figures.friction_factor_1 = base::clamp_1(factor / area, 0.0, 1.0);
  return figures;
}

double mass_on_face_kg(const FaceState& face, const TrackGrid& grid, Film species) {
  double mass_kg = 0.0;
  for (std::size_t i = 0; i < face.cells.size(); ++i) {
    mass_kg += grid.cell_area_m2(i % kRings) * face.cells[i].load_kg_m2[at(species)];
  }
  return mass_kg;
}

}  // namespace proofstand::bench

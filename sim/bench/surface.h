// Films on surfaces: how a point of a braking face becomes a cell, how matter moves without being lost, how alcohol
// dries. Every change of a braking face goes through here and counts its version up.
#pragma once

#include <array>
#include <cstddef>

#include "sim/bench/world.h"
#include "sim/physics/film.h"

namespace proofstand::bench {

/// A film species; its place in a load array.
using Film = physics::Species;

/// The ring of one rotor that its pads sweep, with the grid on it.
struct TrackGrid {
  double inner_m = 0.0;   ///< inner edge of the track
  double outer_m = 0.0;   ///< rim edge
  double middle_m = 0.0;  ///< where runout is quoted

  [[nodiscard]] double ring_width_m() const { return (outer_m - inner_m) / static_cast<double>(kRings); }
  /// Area of a cell of that ring [m²]; the cells of a face add up to the area of the ring of the track.
  [[nodiscard]] double cell_area_m2(std::size_t ring) const;
  /// Middle radius of that ring [m].
  [[nodiscard]] double ring_radius_m(std::size_t ring) const;
};

/// Grid of a rotor, from its diameter.
/// source: sim/physics/dimensions.h
TrackGrid track_grid(const RotorPart& part);

/// The part of a track that the pads wear down; outside it, up to rim and inner edge, an unworn lip is left.
struct TrackWear {
  double inner_m = 0.0;
  double outer_m = 0.0;
};
/// source: sim/physics/dimensions.h
TrackWear track_wear(const RotorPart& part);

/// Sector and ring of a cell. Radii off the track go to the nearest ring; angles wrap.
struct CellPlace {
  std::size_t sector = 0;
  std::size_t ring = 0;
  [[nodiscard]] std::size_t index() const { return sector * kRings + ring; }
};
/// radius_m, angle_rad in the frame of the face: counter-clockwise seen at that face, 0 at the rotor's zero angle.
CellPlace resolve_cell(const TrackGrid& grid, double radius_m, double angle_rad);

/// Which of a rotor's faces a place is on: 0 the printed side, 1 the other; -1 for places that are no braking face.
int face_of(PlaceKind place);
/// Index among a rotor's patches (outer and inner carrier, arms, edges) or -1.
int patch_of(PlaceKind place);

/// Area of a place that keeps one film [m²]; about a palm where it matters little. source: sizes of the parts, rounded
double patch_area_m2(PlaceKind place);
/// Flank area of the thread of a bolt or a hole that holds film [m²]: 5 mm by 10 mm round.
inline constexpr double kThreadArea_m2 = 1.6e-4;
/// Liquid anaerobic threadlocker [kg/m³]. from memory
inline constexpr double kLockerDensity_kg_m3 = 1050.0;

/// Alcohol still wet at a cell now [kg/m²]. slowness_1: 1 of a free surface, less of a folded rag.
/// source: sim/physics/drying.h, in closed form
double wet_alcohol_kg_m2(const FilmCell& cell, base::Tick now, double slowness_1 = 1.0);
/// Makes the alcohol of a cell a value of now. Only contacts and fluids may call this; reading never does.
void rebase_alcohol(FilmCell& cell, base::Tick now, double slowness_1 = 1.0);
/// Grease, oil, skin grease, brake fluid and locker together [kg/m²]: what fouls a braking face.
double fouling_kg_m2(const std::array<double, kSpecies>& load_kg_m2);

/// Two bodies of film meeting over an area: shares of the load that go over, each way, by species.
struct Exchange {
  std::array<double, kSpecies> there_1{};  ///< first to second
  std::array<double, kSpecies> back_1{};   ///< second to first
};
/// Moves film between two cells so that no matter is lost: dm = area (there first - back second), by species.
/// first_area_m2, second_area_m2 >= area_m2 > 0; both cells' alcohol must have been rebased to now.
/// source: conserved transfer, own derivation
void exchange_film(std::array<double, kSpecies>& first_kg_m2, double first_area_m2,
                   std::array<double, kSpecies>& second_kg_m2, double second_area_m2, double area_m2,
                   const Exchange& exchange, double strength_1 = 1.0);

/// Counts a face's version up; every caller that changed cells does so once.
void mark_changed(FaceState& face);

/// What a face is worth.
struct FaceFigures {
  double worst_kg_m2 = 0.0;  ///< fouling at the worst cell
  double mean_kg_m2 = 0.0;   ///< area mean of the fouling
  double covered_1 = 0.0;    ///< share of friction surface that films cover
  double oily_1 = 0.0;       ///< share of the track with a full film of oil or grease
  double wet_kg_m2 = 0.0;    ///< alcohol still wet, at most
  double wet_share_1 = 0.0;  ///< share of the track that is visibly wet
  double friction_factor_1 = 1.0;
};
FaceFigures face_figures(const FaceState& face, const TrackGrid& grid, base::Tick now);
/// All matter of one species on a rotor's faces [kg], alcohol as it was last set; for conservation checks.
double mass_on_face_kg(const FaceState& face, const TrackGrid& grid, Film species);

}  // namespace proofstand::bench

// Films on surfaces: the two braking faces as polar grids, other places as single patches, rags by fold.
#pragma once

#include <array>
#include <cstdint>
#include <vector>

#include "sim/bench/state_hand.h"

namespace proofstand::bench {

inline constexpr std::size_t kSectors = 96;  ///< round the track; cell 0 starts at the rotor's zero angle
inline constexpr std::size_t kRings = 16;    ///< across the track, from its inner edge out

/// One spot's loads by species [kg/m²]; alcohol is a value and the tick it was last set, drying in closed form.
struct FilmCell {
  std::array<double, kSpecies> load_kg_m2{};
  std::int64_t wet_tick = 0;

  template <class Self, class Visit>
  static void visit(Self& s, Visit&& v) {
    for (auto& f : s.load_kg_m2) v("load", f);
    v("wet_tick", s.wet_tick);
  }
};

/// A braking face. Every change goes through surface.h, which counts `version` up, so hashes of untouched faces are
/// kept.
struct FaceState {
  std::vector<FilmCell> cells = std::vector<FilmCell>(kSectors * kRings);  ///< [kSectors x kRings], row-major
  std::int64_t version = 0;

  template <class Self, class Visit>
  static void visit(Self& s, Visit&& v) {
    v("version", s.version);
    for (auto& cell : s.cells) FilmCell::visit(cell, v);
  }
};

/// A rotor's surfaces: 0 printed side, 1 the other; and its patches: carrier outer and inner, arms, edge.
struct RotorSurfaces {
  std::array<FaceState, 2> faces;
  std::array<FilmCell, 4> patches;

  template <class Self, class Visit>
  static void visit(Self& s, Visit&& v) {
    for (auto& face : s.faces) FaceState::visit(face, v);
    for (auto& patch : s.patches) FilmCell::visit(patch, v);
  }
};

/// A rag: the load of the fold in use and whether earlier folds are spent.
struct RagState {
  FilmCell fold;
  std::int64_t folds_left = 0;
  bool fold_used = false;

  template <class Self, class Visit>
  static void visit(Self& s, Visit&& v) {
    FilmCell::visit(s.fold, v);
    v("folds_left", s.folds_left);
    v("fold_used", s.fold_used);
  }
};

/// A bit for each cell of a face.
using SweptCells = std::array<std::uint64_t, kSectors * kRings / 64>;

/// A wipe or touch under way for one hand: what its one event will say.
struct ContactState {
  bool open = false;
  bool wiping = false;
  bool by_tool = false;     ///< a pick or a lamp is there, not fingers
  bool both_faces = false;  ///< pinched over a rotor's track
  ThingId thing = event::kNoThing;
  PlaceKind place = PlaceKind::None;
  BoltId bolt = event::kNoBolt;
  base::Tick since = 0;
  double area_m2 = 0.0;
  double film_kg_m2 = 0.0;         ///< fouling at the worst spot touched, after the contact
  double load_before_kg_m2 = 0.0;  ///< of the rag's fold
  bool fresh_fold = false;
  bool solvent = false;
  double press_sum_n = 0.0;
  std::int64_t press_count = 0;
  double path_m = 0.0;         ///< stroked so far
  std::int64_t contacts = 0;   ///< times the rag came anew over a single patch
  bool has_last = false;       ///< was on the face in the tick before
  double last_radius_m = 0.0;  ///< where
  double last_angle_rad = 0.0;
  SweptCells swept{};        ///< bit per cell of the face
  SweptCells swept_other{};  ///< other face, when the rag is pinched over both

  template <class Self, class Visit>
  static void visit(Self& s, Visit&& v) {
    v("open", s.open);
    v("wiping", s.wiping);
    v("by_tool", s.by_tool);
    v("both_faces", s.both_faces);
    v("thing", s.thing);
    v("place", s.place);
    v("bolt", s.bolt);
    v("since", s.since);
    v("area", s.area_m2);
    v("film", s.film_kg_m2);
    v("load_before", s.load_before_kg_m2);
    v("fresh", s.fresh_fold);
    v("solvent", s.solvent);
    v("press_sum", s.press_sum_n);
    v("press_count", s.press_count);
    v("path", s.path_m);
    v("contacts", s.contacts);
    v("has_last", s.has_last);
    v("last_radius", s.last_radius_m);
    v("last_angle", s.last_angle_rad);
    for (auto& b : s.swept) v("swept", b);
    for (auto& b : s.swept_other) v("swept_other", b);
  }
};

}  // namespace proofstand::bench

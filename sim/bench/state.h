// The whole bench as one value. Every struct lists its fields once, in `visit`; snapshots, hashes and the naming of a
// first difference all come from that list.
#pragma once

#include <array>
#include <vector>

#include "sim/bench/setup.h"
#include "sim/bench/state_check.h"
#include "sim/bench/state_hand.h"
#include "sim/bench/state_joint.h"
#include "sim/bench/state_surface.h"

namespace proofstand::bench {

/// Where a loose thing is.
enum class Whereabouts : std::uint8_t { Tray, LeftHand, RightHand, OnHub, InHole, Standing, OnBench, Fixed };

struct ThingState {
  Whereabouts where = Whereabouts::Tray;
  bool inner_up = false;  ///< of a rotor lying down or held: the printed side is turned away

  template <class Self, class Visit>
  static void visit(Self& s, Visit&& v) {
    v("where", s.where);
    v("inner_up", s.inner_up);
  }
};

struct BenchState {
  base::Tick tick = 0;
  bool handed_over = false;
  bool stopped = false;  ///< something dangerous ended the run
  base::Tick gap_ticks = 0;
  std::array<HandState, event::kHands> hands;
  std::array<VisitState, event::kHands> visits;
  std::array<ContactState, event::kHands> contacts;
  std::vector<ThingState> things;     ///< per thing
  std::vector<BoltState> bolts;       ///< per BoltPart
  std::vector<HoleState> holes;       ///< per position
  std::vector<ToolState> tools;       ///< per ToolPart
  std::vector<RotorSurfaces> rotors;  ///< per RotorPart
  std::vector<RagState> rags;
  std::vector<InstrumentState> instruments;
  std::vector<CardState> card;
  SeatState seat;
  WheelState wheel;
  FilmCell bench_top;
  std::vector<FilmCell> bosses;  ///< film on the seat round each hole
  // what the card is held against
  double old_thickness_m = 0.0;
  double old_runout_m = 0.0;
};

}  // namespace proofstand::bench

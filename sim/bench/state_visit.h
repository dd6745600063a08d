// Walks the whole state once, in declared order: the spine of snapshots, hashes and comparisons.
#pragma once

#include <string_view>

#include "sim/bench/state.h"

namespace proofstand::bench {

/// Calls v.section(words, index) before each part (index -1 where there is only one) and v(name, field&) for each field
/// after it. State is const or not, as it is given. Braking faces are left out when faces is false.
template <class State, class Visit>
void visit_state(State& s, Visit& v, bool faces) {
  v.section("bench", -1);
  v("tick", s.tick);
  v("handed_over", s.handed_over);
  v("stopped", s.stopped);
  v("gap_ticks", s.gap_ticks);
  v("old_thickness", s.old_thickness_m);
  v("old_runout", s.old_runout_m);
  const auto each = [&v](std::string_view words, auto& list) {
    int index = 0;
    for (auto& part : list) {
      v.section(words, index++);
      std::decay_t<decltype(part)>::visit(part, v);
    }
  };
  each("hand", s.hands);
  each("visit of hand", s.visits);
  each("contact of hand", s.contacts);
  each("thing", s.things);
  each("bolt", s.bolts);
  each("hole", s.holes);
  each("tool", s.tools);
  each("rag", s.rags);
  each("instrument", s.instruments);
  each("card entry", s.card);
  each("boss film", s.bosses);
  v.section("seat", -1);
  SeatState::visit(s.seat, v);
  v.section("wheel", -1);
  WheelState::visit(s.wheel, v);
  v.section("bench top", -1);
  FilmCell::visit(s.bench_top, v);
  int number = 0;
  for (auto& rotor : s.rotors) {
    // patches and faces of all rotors are counted through: two faces, four patches each
    int patch = 4 * number;
    for (auto& film : rotor.patches) {
      v.section("rotor patch", patch++);
      FilmCell::visit(film, v);
    }
    int face = 2 * number;
    for (auto& grid : rotor.faces) {
      v.section("rotor face", face++);
      if (faces) FaceState::visit(grid, v);
    }
    ++number;
  }
}

}  // namespace proofstand::bench

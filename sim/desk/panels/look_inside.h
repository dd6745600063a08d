// Practice: what no hand feels. Preload of each bolt, what its thread is wetted with, what lies on the faces, how true
// the rotor runs, torque over angle of the pull under way.
#pragma once

#include <string>
#include <vector>

#include "sim/bench/bench.h"
#include "sim/desk/layout.h"
#include "sim/desk/orders.h"

namespace proofstand::desk {

/// Torque over angle while a pull lasts; gathered frame by frame.
struct PullTrace {
  event::BoltId bolt = event::kNoBolt;
  std::vector<float> angle_deg;
  std::vector<float> torque_nm;
};

struct InsideView {
  std::vector<float> preload_kn;    ///< per position
  std::vector<std::string> thread;  ///< friction condition of each bolt's thread, in words
  float preload_lo_kn = 0.0F;       ///< range that the sheet's torque gives; 0: not known
  float preload_hi_kn = 0.0F;
  std::vector<float> film_outer_ug_cm2;  ///< [sectors x rings]; empty without a rotor
  std::vector<float> film_inner_ug_cm2;
  int sectors = 0;
  int rings = 0;
  std::vector<float> runout_um;  ///< round the track
  const PullTrace* trace = nullptr;
};
InsideView look_inside_of(const bench::Bench& bench, const PullTrace& trace);
/// Takes the pull under way into the trace; a new bolt begins a new one.
void follow_pull(const bench::Bench& bench, PullTrace& trace);

void draw_look_inside(const Rect& at, const InsideView& view, Orders& orders);

/// One face as rings and sectors, shaded by load; hatched where it covers.
void draw_face_map(const std::vector<float>& load_ug_cm2, int sectors, int rings, float size_px);

}  // namespace proofstand::desk

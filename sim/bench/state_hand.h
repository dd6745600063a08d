// A hand's state: where it is, what it holds, and the cord between it and the pointer.
#pragma once

#include <array>
#include <cstdint>

#include "sim/base/ticks.h"
#include "sim/event/actions.h"

namespace proofstand::bench {

using event::BoltId;
using event::Grip;
using event::HandId;
using event::PlaceKind;
using event::ThingId;

inline constexpr std::size_t kSpecies = 7;  ///< film species, in the order of sim/physics/film.h

enum class HandStage : std::uint8_t {
  Free,  ///< empty or holding, touching nothing
  At,    ///< rests on a place: tool in its seat, finger touching
  Busy,  ///< the bench moves it; arrives at busy_until
};

/// The cord on one axis: its end runs ahead of the hand; the lead decides the force (see hand_law.h).
struct Cord {
  double target_1 = 0.0;                ///< what the last aim asked for: rad, or m
  double end_1 = 0.0;                   ///< the cord's end now, after the speed limit
  double hand_1 = 0.0;                  ///< where the hand is
  double press_1 = 0.0;                 ///< of a twirl: the point that trails the target at full lead
  std::int64_t level = 0;               ///< 0..512
  std::array<double, 16> past_end_1{};  ///< the end every fourth tick, newest first: its mean speed
  std::int64_t past_count = 0;

  template <class Self, class Visit>
  static void visit(Self& s, Visit&& v) {
    v("target", s.target_1);
    v("end", s.end_1);
    v("hand", s.hand_1);
    v("press", s.press_1);
    v("level", s.level);
    for (auto& p : s.past_end_1) v("past", p);
    v("past_count", s.past_count);
  }
};

struct HandState {
  HandStage stage = HandStage::Free;
  ThingId holding = event::kNoThing;
  Grip grip = Grip::None;
  bool gloved = false;
  bool kept = false;
  bool near = false;  ///< held 20 mm off the place, not on it
  // where it rests
  ThingId at_thing = event::kNoThing;
  PlaceKind at_place = PlaceKind::None;
  BoltId at_bolt = event::kNoBolt;
  double u_1 = 0.0;  ///< point in the place's frame (see the table of places)
  double v_1 = 0.0;
  double tilt_x_rad = 0.0;
  double tilt_y_rad = 0.0;
  bool turned_over = false;  ///< other arm of a key, ratchet the other way
  base::Tick arrived = 0;    ///< tick at which it came to rest there
  // moving
  base::Tick busy_until = 0;
  event::Action pending;  ///< what it does on arrival
  bool has_pending = false;
  event::Action waiting;  ///< latest input while busy
  bool has_waiting = false;
  // pulling
  Cord turn;
  Cord along;
  double face_radius_m = 0.0, face_angle_rad = 0.0, face_press_n = 0.0;  ///< where the hand is on a face
  double aim_radius_m = 0.0, aim_angle_rad = 0.0, aim_press_n = 0.0;     ///< where it is asked to go
  std::array<double, kSpecies> film_kg_m2{};                             ///< on finger tips or glove
  std::array<double, kSpecies> bare_film_kg_m2{};                        ///< on the skin under a glove

  template <class Self, class Visit>
  static void visit(Self& s, Visit&& v) {
    v("stage", s.stage);
    v("holding", s.holding);
    v("grip", s.grip);
    v("gloved", s.gloved);
    v("kept", s.kept);
    v("near", s.near);
    v("at_thing", s.at_thing);
    v("at_place", s.at_place);
    v("at_bolt", s.at_bolt);
    v("u", s.u_1);
    v("v", s.v_1);
    v("tilt_x", s.tilt_x_rad);
    v("tilt_y", s.tilt_y_rad);
    v("turned_over", s.turned_over);
    v("arrived", s.arrived);
    v("busy_until", s.busy_until);
    v("pending", s.pending);
    v("has_pending", s.has_pending);
    v("waiting", s.waiting);
    v("has_waiting", s.has_waiting);
    Cord::visit(s.turn, v);
    Cord::visit(s.along, v);
    v("face_radius", s.face_radius_m);
    v("face_angle", s.face_angle_rad);
    v("face_press", s.face_press_n);
    v("aim_radius", s.aim_radius_m);
    v("aim_angle", s.aim_angle_rad);
    v("aim_press", s.aim_press_n);
    for (auto& f : s.film_kg_m2) v("film", f);
    for (auto& f : s.bare_film_kg_m2) v("bare_film", f);
  }
};

}  // namespace proofstand::bench

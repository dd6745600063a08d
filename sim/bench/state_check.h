// Instruments, wheel, job card: what measuring, spinning and writing leave behind.
#pragma once

#include <cstdint>
#include <string>

#include "sim/bench/state_hand.h"

namespace proofstand::bench {

enum class WheelAt : std::uint8_t { Stand, Bike, Hands };

/// Turning of the wheel: a value and the tick of its last change; slows down in closed form (see wheel.h).
struct WheelState {
  WheelAt at = WheelAt::Stand;
  double angle_rad = 0.0;   ///< at spin_tick; forward rolling counts up
  double rate_rad_s = 0.0;  ///< at spin_tick
  base::Tick spin_tick = 0;
  double spin_from_rad = 0.0;  ///< where the spin began
  double spin_peak_rad_s = 0.0;
  bool spin_open = false;
  double drag_rad_s2 = 0.0;  ///< slowing down of the spin under way
  double rub_share_1 = 0.0;  ///< share of the turn that rubs in it

  template <class Self, class Visit>
  static void visit(Self& s, Visit&& v) {
    v("at", s.at);
    v("angle", s.angle_rad);
    v("rate", s.rate_rad_s);
    v("spin_tick", s.spin_tick);
    v("spin_from", s.spin_from_rad);
    v("spin_peak", s.spin_peak_rad_s);
    v("spin_open", s.spin_open);
    v("drag", s.drag_rad_s2);
    v("rub_share", s.rub_share_1);
  }
};

/// An instrument; one per InstrumentPart.
struct InstrumentState {
  double opening_m = 0.0;  ///< of its jaws; where a dial's pointer stands
  double shown_m = 0.0;    ///< what its scale shows; stays set when drawn off
  bool closed = false;     ///< jaws on something
  bool squeezed = false;
  base::Tick closed_since = 0;
  double truth_m = 0.0;
  double radius_m = 0.0;
  double angle_rad = 0.0;
  std::int64_t part = 0;            ///< choice of the measured event
  ThingId rotor = event::kNoThing;  ///< what the jaws are about
  bool diameter = false;            ///< spans a rotor from edge to edge
  bool event_due = false;
  double squeeze_m = 0.0;  ///< how far a thimble screwed down hard has sprung the frame
  // a dial gauge standing at the rotor
  bool standing = false;
  bool inner_face = false;  ///< its tip is on the face that is not printed
  double zero_m = 0.0;      ///< where the track stood when the tip was set to it
  double pressed_m = 0.0;   ///< preload of the tip
  double least_m = 0.0, most_m = 0.0;
  double turned_rad = 0.0;
  double told_rad = 0.0;  ///< of it told in an event
  double last_wheel_rad = 0.0;

  template <class Self, class Visit>
  static void visit(Self& s, Visit&& v) {
    v("opening", s.opening_m);
    v("shown", s.shown_m);
    v("closed", s.closed);
    v("squeezed", s.squeezed);
    v("closed_since", s.closed_since);
    v("truth", s.truth_m);
    v("radius", s.radius_m);
    v("angle", s.angle_rad);
    v("part", s.part);
    v("rotor", s.rotor);
    v("diameter", s.diameter);
    v("event_due", s.event_due);
    v("squeeze", s.squeeze_m);
    v("standing", s.standing);
    v("inner_face", s.inner_face);
    v("zero", s.zero_m);
    v("pressed", s.pressed_m);
    v("least", s.least_m);
    v("most", s.most_m);
    v("turned", s.turned_rad);
    v("told", s.told_rad);
    v("last_wheel", s.last_wheel_rad);
  }
};

/// One card entry.
struct CardState {
  bool filled = false;
  double written_1 = 0.0;    ///< SI, or the index of the word
  std::string text;          ///< as written
  double indicated_m = 0.0;  ///< what an instrument last showed for it
  bool was_indicated = false;
  double least_m = 0.0;  ///< least that an instrument showed for it

  template <class Self, class Visit>
  static void visit(Self& s, Visit&& v) {
    v("filled", s.filled);
    v("written", s.written_1);
    v("text", s.text);
    v("indicated", s.indicated_m);
    v("was_indicated", s.was_indicated);
    v("least", s.least_m);
  }
};

}  // namespace proofstand::bench

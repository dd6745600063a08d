// What a person's input comes in as: the pointer and what it is over, taps, commands; and what the picture knows of
// where the hands are. The window fills these in; mouse, keys and step panel all end here.
#pragma once

#include <array>
#include <cstdint>
#include <optional>

#include "sim/event/actions.h"
#include "sim/hand/gesture_space.h"

namespace proofstand::hand {

/// A place that the pointer is over, or that was chosen from the list: where an action would go.
struct Pointed {
  event::ThingId thing = event::kNoThing;
  event::PlaceKind place = event::PlaceKind::Body;
  event::BoltId bolt = event::kNoBolt;
  event::Grip grip = event::Grip::None;  ///< of a part of a thing: the grip that taking it there means
  std::int64_t u_um = 0;                 ///< the point in the place's frame, in the steps of the actions
  std::int64_t v_urad = 0;
  double off_x_m = 0.0;  ///< how far beside the place's middle the point lies, along the frame's x and y
  double off_y_m = 0.0;
  double radius_m = 0.0;  ///< from the place's middle to its rim; 0: no matter
};
/// The same place, whatever the point in it?
bool same_place(const Pointed& a, const Pointed& b);

/// The pointer now.
struct Pointer {
  Spot at;
  std::optional<Pointed> over;  ///< nothing: over no place
  bool fine = false;            ///< a tenth of every motion
  bool near = false;            ///< a click holds near, a drag tips
};

/// Where a hand rests, as the picture has it now.
struct Grasp {
  Vec3 axis;             ///< of what turns here, into the work, clockwise positive along it; unit length or zero
  Vec3 grip;             ///< the point of that axis at the height where the hand is
  Frame frame;           ///< of the face or place it rests on
  bool polar = false;    ///< a point of the place is a radius and an angle about the frame's origin
  double inner_m = 0.0;  ///< extent of the face from the frame's origin
  double outer_m = 0.0;
  std::optional<Vec3> tool_end;  ///< end of a seated tool, where a palm would press
};

/// The picture as gestures need it.
struct Sight {
  Lens lens;
  std::array<std::optional<Grasp>, event::kHands> grasps;  ///< of hands that rest somewhere
};

/// One step of the cord's end. Right is clockwise as one looks along the tool at the work, or at the face; up presses
/// in, and goes outwards on a face.
enum class Tap : std::uint8_t { Left, Right, Up, Down };

/// What a key or button asks of the hands. None of them means "do this step for me".
enum class HandCommand : std::uint8_t {
  Escape,     ///< slack, else leave; not mine when the hand is free
  Slack,      ///< slack only
  Leave,      ///< leave only
  Keep,       ///< this hand keeps what it does, the other one acts
  NextGrip,   ///< hold it another way
  FreshGrip,  ///< back by one reach
  TurnOver,   ///< other side out, fresh fold, other arm
  Throw,      ///< let go of the tyre moving
  PassOver,   ///< to the other hand
  PutBack,    ///< where such things lie
  Lamp,       ///< the lamp into this hand, or back
  Glove,      ///< a glove on, or off
  Harder,     ///< one step more of a rag's or pick's press, or one notch in
  Softer,
};

/// What to do at a chosen place; Natural is what a click does.
enum class Verb : std::uint8_t { Natural, Take, Touch, Bring, Near };

/// What became of an input.
enum class Answer : std::uint8_t {
  Done,       ///< it was for the hands, whether or not it led to an action
  NotMine,    ///< nothing for the hands: the window may use it (walk the list, come nearer, pause)
  BothHands,  ///< refused here: both hands are on one thing
};

/// How a person likes to work. None of it chooses a place, an angle or an order.
struct GestureSettings {
  event::HandId first = event::HandId::Right;  ///< the hand that the pointer is at the start
  double drag_gain_1 = 1.0;                    ///< 0.5 .. 2
  base::Tick tremor_ticks = 0;                 ///< pointer averaged over so long: 0, 19 (80 ms) or 38 (160 ms)
  bool hold_by_click = false;                  ///< a click starts a pull, a click ends it
};

}  // namespace proofstand::hand

// The inside of TwoHands: what is under way, by hand and by pointer. Private to this floor.
#pragma once

#include <array>
#include <optional>
#include <vector>

#include "sim/bench/hold_sight.h"
#include "sim/hand/gesture_laws.h"
#include "sim/hand/gesture_pointer.h"
#include "sim/hand/gesture_two_hands.h"

namespace proofstand::hand {

/// One hand's cord as this side has asked for it, and what the hand was left with.
struct CordWork {
  bool drawn = false;      ///< an aim has been sent since the last slack
  bool asked = false;      ///< moved since the last flush
  double turn_rad = 0.0;   ///< the cord's end, from where the grip was taken
  double trail_rad = 0.0;  ///< of fingers that twirl: the point that trails the end at full lead, as the bench has it
  double along_m = 0.0;
  double draw_m = 0.0;                    ///< what the drag under way has drawn inwards; may be less than nothing
  double draw_from_m = 0.0;               ///< where the end stood along the axis when the drag began
  double face_x_m = 0.0, face_y_m = 0.0;  ///< the end over a face, in its frame
  double face_angle_rad = 0.0;            ///< unwrapped
  int press_step = -1;                    ///< of a face; -1: none
  bool lifted = false;
  // as last sent, in whole steps
  std::int64_t sent_turn = 0;
  std::int64_t sent_along = 0;
  std::array<std::int64_t, 3> sent_face{};
  // fingers that spin by notches of the wheel
  double spin_left_rad = 0.0;
  double spin_at_rad = 0.0;
  base::Tick spin_moved = 0;
  // of the thing in a free hand
  double held_tilt_x_rad = 0.0, held_tilt_y_rad = 0.0;
  double over_pt = 0.0;     ///< how far it was turned over by a drag on nothing
  double last_tap_1 = 0.0;  ///< sign of the last tap round the axis
  double notches_1 = 0.0;   ///< shares of a notch not yet spent
};

/// What the pressed button does.
enum class Drag : std::uint8_t {
  None,
  Pressed,  ///< down, not moved enough yet
  Late,     ///< moved, but the hand was busy: decided when it is not
  Carry,    ///< a loose thing comes along
  Arrive,   ///< on the way to where the pull will be
  Pull,     ///< round an axis, with press
  Along,    ///< along the axis only
  Stroke,   ///< over a face
  Tip,
  TurnOver,  ///< the thing in the hand
  Drops,
  Idle,  ///< means nothing
};

/// The latest input for a hand that is busy.
struct WaitingInput {
  enum class Kind : std::uint8_t { Place, Nothing, Tap, Tip, Command } kind = Kind::Place;
  Pointed place;
  Verb verb = Verb::Natural;
  Tap way = Tap::Right;
  HandCommand command = HandCommand::Keep;
  bool fine = false;
  int count = 1;
};

struct TwoHands::Inside {
  const bench::Bench& bench;
  Sink sink;
  GestureSettings settings;
  Sight sight;
  event::HandId active = event::HandId::Right;
  std::array<CordWork, event::kHands> cords;
  std::optional<WaitingInput> waiting;

  // the button
  Drag drag = Drag::None;
  bool by_click = false;  ///< the pull was started by a click and is ended by one
  bool swallow_press = false;
  bool swallow_release = false;
  bool fine = false;
  bool near = false;
  Spot down_at;
  std::optional<Pointed> down_over;
  std::optional<Pointed> over;
  SteadyPointer pointer;
  Spot counted_to;      ///< the drag's motion is counted up to here
  double seen_1 = 1.0;  ///< how the axis was seen when the drag began
  bool face_offset = false;
  double face_off_x_m = 0.0, face_off_y_m = 0.0;  ///< the cord's end beside the pointer's point of the face
  double drops_pt = 0.0;
  struct Swing {
    base::Tick at = 0;
    double turn_rad = 0.0;
  };
  std::vector<Swing> swing;  ///< the drag's unlimited way round, for letting go in motion
  double swing_rad = 0.0;

  Inside(const bench::Bench& on, Sink to, const GestureSettings& how)
      : bench(on), sink(std::move(to)), settings(how), active(how.first) {
    pointer.steady_over(settings.tremor_ticks);
  }

  // asking
  [[nodiscard]] base::Tick now() const { return bench.tick(); }
  [[nodiscard]] bench::HoldSight hold(event::HandId hand) const { return bench::see_hold(bench, hand); }
  [[nodiscard]] bench::HoldSight hold() const { return hold(active); }
  [[nodiscard]] bench::ThingKind kind(event::ThingId thing) const;
  [[nodiscard]] bench::ThingKind held_kind(const bench::HoldSight& hold) const;
  [[nodiscard]] static event::HandId other(event::HandId hand);
  CordWork& cord(event::HandId hand) { return cords[static_cast<std::size_t>(hand)]; }
  CordWork& cord() { return cord(active); }
  [[nodiscard]] const std::optional<Grasp>& grasp() const { return sight.grasps[static_cast<std::size_t>(active)]; }
  /// Can a cord be drawn here? Fingers on a setting handle turn it also while the tool touches nothing.
  [[nodiscard]] static bool cord_here(const bench::HoldSight& hold);

  // acting (gesture_cord.cpp)
  void send(const event::Action& action);
  /// Begins a motion of the hand: whatever cord there was is gone.
  void send_motion(const event::Action& action);
  void sync(event::HandId hand);
  /// Sends the cord's end, where it changed by a step.
  void flush(event::HandId hand);
  void slacken(event::HandId hand);
  void turn_by(event::HandId hand, const bench::HoldSight& hold, double turn_rad);
  void press_to(event::HandId hand, double along_m);
  void stroke_to(event::HandId hand, double x_m, double y_m, bool lifted);
  void set_face_press(event::HandId hand, int step);
  void spin_on(event::HandId hand);

  // the button (gesture_press.cpp)
  void press(const Pointer& at);
  void move(const Pointer& at);
  void release(const Pointer& at);
  void begin_drag();
  void begin_pull(const bench::HoldSight& hold);
  void count_drag();
  void end_pull();
  void drop_button();

  // places (gesture_place.cpp)
  void click_nothing();
  void go_to(const Pointed& place, Verb verb);
  void bring_to(const Pointed& place, const bench::HoldSight& hold);
  bool take_grip(const Pointed& place, const bench::HoldSight& hold);
  [[nodiscard]] bool takes_by_click(const Pointed& place) const;

  // keys (gesture_keys.cpp)
  Answer tap(Tap way, bool finely, int count);
  Answer tip(Tap way, bool finely);
  Answer command(HandCommand what, bool finely);
  Answer wheel(double notches_1, bool finely);
  Answer escape();
  Answer keep();
  void next_grip();
  void notch(const bench::HoldSight& hold, double notches_1, bool finely);
  void tip_by(const bench::HoldSight& hold, double x_rad, double y_rad);
  void later(const WaitingInput& input) { waiting = input; }
};

}  // namespace proofstand::hand

// Two hands and one pointer: turns what a person does with mouse, keys or step panel into actions, all by one code. One
// hand is active, the other keeps what it was left doing. Decides nothing about the work: it sends where a hand goes
// and where the cord's end is; compliance, limits, slips and refusals are the bench's.
//
// A frame: see(), the inputs in their order, step(); then the bench may advance (12 ticks at most). Time is the
// bench's.
#pragma once

#include <functional>
#include <memory>

#include "sim/bench/bench.h"
#include "sim/hand/gesture_input.h"

namespace proofstand::hand {

/// What a hand is at, as a person would say.
enum class HandDoing : std::uint8_t {
  Free,  ///< empty or holding, touching nothing
  At,    ///< rests on a place, cord slack
  Work,  ///< the cord is drawn
  Busy,  ///< on its way
};

/// The cord as the picture shows it.
struct CordSight {
  bool drawn = false;
  double lead_rad = 0.0;   ///< of its end ahead of the hand, clockwise positive
  double lead_m = 0.0;     ///< along the axis, inwards positive
  std::int64_t level = 0;  ///< 0..512, the harder of both axes
  bool knotted = false;    ///< the wrist is bent: a fresh grip is due
};

class TwoHands {
 public:
  /// Receives every action at the tick it is meant for; must apply it to the bench at once.
  using Sink = std::function<void(const event::Action&)>;

  /// bench  outlives this and stays in place
  TwoHands(const bench::Bench& bench, Sink sink, GestureSettings settings = {});
  ~TwoHands();
  TwoHands(TwoHands&&) noexcept;
  TwoHands& operator=(TwoHands&&) noexcept;

  void change(const GestureSettings& settings);
  /// How the world is seen now. Once a frame, before its inputs.
  void see(const Sight& sight);

  // the plain button of the mouse
  void press(const Pointer& pointer);
  void move(const Pointer& pointer);
  void release(const Pointer& pointer);
  /// notches  up and away positive; shares of a notch add up
  Answer wheel(double notches_1, bool fine);

  // keys and step panel
  /// count  4 for "much"
  Answer tap(Tap way, bool fine, int count = 1);
  /// Tips a seated tool, or turns the thing in a free hand, a step that way.
  Answer tip(Tap way, bool fine);
  Answer command(HandCommand command, bool fine = false);
  /// A chosen place, as a click on it.
  void act_on(const Pointed& place, Verb verb = Verb::Natural);

  /// The window has lost the keyboard: the active hand goes slack, the kept one keeps.
  void focus_lost();
  /// It has it again. by_click: the button that brought it back means nothing else.
  void focus_back(bool by_click);
  /// The run was taken back or begun anew: whatever was under way is forgotten.
  void forget();

  /// Ends the frame: sends where the cord's end is now, goes on with what waited for a busy hand.
  void step();

  [[nodiscard]] event::HandId active() const;
  [[nodiscard]] HandDoing doing(event::HandId hand) const;
  [[nodiscard]] CordSight cord(event::HandId hand) const;
  /// A button pulls: the camera must stand still.
  [[nodiscard]] bool pulling_by_button() const;

 private:
  struct Inside;
  std::unique_ptr<Inside> inside_;
};

}  // namespace proofstand::hand

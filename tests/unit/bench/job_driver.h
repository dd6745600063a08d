// Drives a bench in tests of its joint: acts, waits until hands are free, and works the steps of the job by force
// alone.
#pragma once

#include <string>
#include <vector>

#include "sim/bench/bench.h"
#include "sim/bench/senses.h"
#include "tests/support/six_bolt_setup.h"

namespace proofstand::testing {

using bench::Bench;
using event::BoltId;
using event::Grip;
using event::HandId;
using event::PlaceKind;

inline constexpr HandId kLeft = HandId::Left;
inline constexpr HandId kRight = HandId::Right;
inline BoltId bolt_at(std::size_t position) { return static_cast<BoltId>(position); }

/// A bench and the setup's names. Angles in degrees, lengths in mm here: tests read better so.
class JobDriver {
 public:
  explicit JobDriver(const SixBolt& setup_of_job) : job(setup_of_job), bench(setup_of_job.setup) {}

  bench::Refusal take(HandId hand, event::ThingId thing, Grip grip = Grip::None);
  bench::Refusal bring(HandId hand, event::ThingId thing, PlaceKind place, BoltId bolt = event::kNoBolt,
                       double tilt_deg = 0.0);
  bench::Refusal touch(HandId hand, event::ThingId thing, PlaceKind place, BoltId bolt = event::kNoBolt,
                       double radius_mm = 0.0);
  bench::Refusal plain(HandId hand, event::ActionKind kind);
  bench::Refusal grip(HandId hand, Grip grip);
  /// Sets the cord's end, round or along the axis; returns at once.
  bench::Refusal turn_to(HandId hand, double angle_deg);
  bench::Refusal press_to(HandId hand, double depth_mm);
  void wait_s(double time_s) { bench.advance_to(bench.tick() + base::ticks_from(time_s)); }
  /// Waits until the hand is busy no more.
  void settle(HandId hand);
  /// Draws the cord's end on at a rate until it is that far ahead, one action every fourth tick.
  void draw_on(HandId hand, double from_deg, double to_deg, double rate_deg_s);

  /// Key, driver or click driver in the right hand, seated and pressed home in a bolt.
  void seat_tool(event::ThingId tool, BoltId bolt, Grip grip = Grip::Handle);
  /// Loosens a bolt with the key until it has moved, the left hand holding the tyre.
  void crack(BoltId bolt);
  /// Twirls it out with the driver.
  void run_out(BoltId bolt);
  /// Starts a new bolt by the fingers, turned back first, and runs it in by the driver's shaft to just off the face.
  void start(BoltId bolt, event::ThingId thing);
  void run_in(BoltId bolt, double turns);
  /// Pulls with the click driver until it clicks, then goes slack.
  bool click(BoltId bolt, double rate_deg_s = 10.0);
  void set_driver(double setting_nm);
  void off_with_old_rotor();

  [[nodiscard]] std::vector<event::Record> of_kind(std::string_view kind) const;
  [[nodiscard]] double field(const event::Record& record, std::string_view name) const;
  [[nodiscard]] bool knows(const event::Record& record, std::string_view name) const;
  /// Words of the last refusal, for messages.
  [[nodiscard]] std::string events_text() const;
  [[nodiscard]] bench::HandSense sense(HandId hand) const { return bench::sense_hand(bench, hand); }
  [[nodiscard]] const bench::HoleState& hole(std::size_t position) const { return bench.state().holes[position]; }

  SixBolt job;
  Bench bench;
};

}  // namespace proofstand::testing

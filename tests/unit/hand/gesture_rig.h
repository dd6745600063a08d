// A bench seen through a plain lens, and the hands of TwoHands on it: what tests need to draw a pointer about. Knows no
// scene: bolts, holes and faces stand where a six-bolt hub has them, in the plane z = 0, the axis into it along +z.
#pragma once

#include <cmath>
#include <string>
#include <vector>

#include "sim/base/math.h"
#include "sim/bench/hold_sight.h"
#include "sim/bench/senses.h"
#include "sim/hand/gesture_laws.h"
#include "sim/hand/gesture_pointer.h"
#include "sim/hand/gesture_two_hands.h"
#include "tests/support/catch.h"
#include "tests/support/six_bolt_setup.h"

namespace proofstand::testing {

using event::ActionKind;
using event::BoltId;
using event::Grip;
using event::HandId;
using event::PlaceKind;
using hand::HandCommand;
using hand::HandDoing;
using hand::Pointed;
using hand::Spot;
using hand::Tap;
using hand::Vec3;

inline constexpr HandId kLeft = HandId::Left;
inline constexpr HandId kRight = HandId::Right;
inline BoltId bolt_at(std::size_t position) { return static_cast<BoltId>(position); }

/// One action with its tick taken away, and runs of aims folded to axis and sign: how three routes are compared.
struct NormalStep {
  std::string words;
  friend bool operator==(const NormalStep& a, const NormalStep& b) { return a.words == b.words; }
};

class HandsRig {
 public:
  explicit HandsRig(SixBolt setup, hand::GestureSettings settings = {})
      : job(std::move(setup)),
        bench(job.setup),
        hands(
            bench, [this](const event::Action& action) { take_in(action); }, settings) {
    look_at({0.0, 0.0, 0.0}, 1.0);
  }
  HandsRig(const HandsRig&) = delete;
  HandsRig& operator=(const HandsRig&) = delete;

  // the picture

  /// Looks at a point from half a metre off so that an axis along +z points at the eye with |cosine| g; in the
  /// window's middle.
  void look_at(const Vec3& point, double g_1) {
    const double side_1 = std::sqrt(1.0 - g_1 * g_1);
    lens.forward = {side_1, 0.0, g_1};
    lens.up = {0.0, 1.0, 0.0};
    lens.right = hand::cross(lens.forward, lens.up);
    lens.eye = point - lens.forward * 0.5;
    lens.focal_pt = 1000.0;
    lens.middle = {640.0, 360.0};
  }
  [[nodiscard]] Vec3 bolt_point(BoltId bolt) const {
    const double angle = static_cast<double>(event::index_of(bolt)) * base::kTwoPi / 6.0;
    return {0.022 * base::cos_rad(angle), 0.022 * base::sin_rad(angle), 0.0};
  }
  [[nodiscard]] Pointed place(event::ThingId thing, PlaceKind kind, BoltId bolt = event::kNoBolt,
                              Grip grip = Grip::None) const {
    Pointed at;
    at.thing = thing;
    at.place = kind;
    at.bolt = bolt;
    at.grip = grip;
    at.radius_m = 0.00225;
    return at;
  }
  [[nodiscard]] Pointed recess(BoltId bolt) const { return place(job.wheel, PlaceKind::BoltRecess, bolt); }

  // the pointer; spots in the window

  void see() {
    hand::Sight sight;
    sight.lens = lens;
    for (const HandId id : {kLeft, kRight}) {
      const bench::HoldSight hold = bench::see_hold(bench, id);
      if (hold.stage != bench::HandStage::At && hold.hold.contact != bench::Contact::Setting) continue;
      hand::Grasp grasp;
      grasp.axis = {0.0, 0.0, 1.0};
      if (hold.at_bolt != event::kNoBolt) grasp.grip = bolt_point(hold.at_bolt);
      grasp.frame.origin = grasp.grip;
      // seen at the face angles count counter-clockwise: its x points to the viewer's right, z at the viewer
      grasp.frame.x = {-1.0, 0.0, 0.0};
      grasp.frame.y = {0.0, 1.0, 0.0};
      grasp.frame.z = {0.0, 0.0, -1.0};
      grasp.inner_m = inner_m;
      grasp.outer_m = outer_m;
      grasp.tool_end = tool_end;
      sight.grasps[static_cast<std::size_t>(id)] = grasp;
    }
    hands.see(sight);
  }
  /// One frame of so many ticks: the inputs given since the last one, then time.
  void frame(base::Tick ticks = 4) {
    see();
    hands.step();
    bench.advance_to(bench.tick() + ticks);
  }
  void frames_s(double time_s) {
    for (base::Tick left = base::ticks_from(time_s); left > 0; left -= 4) frame();
  }
  /// Frames until neither hand is on its way, and one more.
  void settle() {
    for (int i = 0; i < 240; ++i) {
      frame();
      if (hands.doing(kLeft) != HandDoing::Busy && hands.doing(kRight) != HandDoing::Busy) break;
    }
    frame();
  }
  void down(const Spot& at, std::optional<Pointed> over = std::nullopt) {
    see();
    pointer_at = at;
    hands.press({at, over, fine, near});
  }
  void to(const Spot& at, std::optional<Pointed> over = std::nullopt) {
    see();
    pointer_at = at;
    hands.move({at, over, fine, near});
  }
  void up(std::optional<Pointed> over = std::nullopt) {
    see();
    hands.release({pointer_at, over, fine, near});
  }
  void click(const Pointed& over) {
    down({640.0, 360.0}, over);
    up(over);
  }
  void click_nothing() {
    down({20.0, 20.0});
    up();
  }
  /// A point of the plane through a bolt, so far from its axis [pt at its scale], at an angle clockwise as one looks.
  [[nodiscard]] Spot round(BoltId bolt, double radius_pt, double angle_deg) const {
    const Vec3 c = bolt_point(bolt);
    const double radius_m = radius_pt / hand::scale_pt_per_m(lens, c);
    const double angle = base::radians(angle_deg);
    const Vec3 point = c + Vec3{radius_m * base::cos_rad(angle), radius_m * base::sin_rad(angle), 0.0};
    return hand::project(lens, point).value_or(Spot{});
  }
  /// Goes round from one angle to another, in frames of four ticks; a rate of 0 goes at once.
  void circle(BoltId bolt, double radius_pt, double from_deg, double to_deg, double rate_deg_s) {
    const double way = to_deg - from_deg;
    const double per_frame = rate_deg_s <= 0.0 ? 5.0 : rate_deg_s / 60.0;
    const int steps = static_cast<int>(std::ceil(std::fabs(way) / per_frame));
    for (int i = 1; i <= steps; ++i) {
      to(round(bolt, radius_pt, from_deg + way * i / steps));
      if (rate_deg_s > 0.0) frame();
    }
  }

  // what there is

  [[nodiscard]] bench::HandSense sense(HandId hand) const { return bench::sense_hand(bench, hand); }
  [[nodiscard]] std::int64_t level(HandId hand) const { return bench::see_hold(bench, hand).turn_level; }
  [[nodiscard]] double target_deg(HandId hand) const {
    return base::degrees(bench.state().hands[static_cast<std::size_t>(hand)].turn.target_1);
  }
  [[nodiscard]] std::size_t count(ActionKind kind) const {
    std::size_t n = 0;
    for (const event::Action& action : actions) n += action.kind == kind ? 1 : 0;
    return n;
  }
  /// Straight to a key in a bolt's recess, the other hand on the tyre; pressed home when asked.
  void seat(event::ThingId tool, BoltId bolt, Grip grip = Grip::Handle) {
    bench.apply(event::make_touch(bench.tick(), kLeft, job.wheel, PlaceKind::Tyre, event::kNoBolt, 0, 0));
    bench.apply(event::make_take(bench.tick(), kRight, tool, grip));
    settle();
    hands.act_on(recess(bolt));
    settle();
    REQUIRE(sense(kRight).stage == bench::HandStage::At);
    look_at(bolt_point(bolt), 1.0);
  }
  /// Draws the pointer towards the axis so far that the hand presses with all it has; button stays down at a radius of
  /// 120 pt, angle 0.
  void press_home(BoltId bolt) {
    down(round(bolt, 192.0, 0.0));
    to(round(bolt, 120.0, 0.0));
    frames_s(0.7);
    REQUIRE(sense(kRight).press_n > 79.0);
  }

  SixBolt job;
  bench::Bench bench;
  std::vector<event::Action> actions;  ///< all that the hands sent
  hand::TwoHands hands;
  hand::Lens lens;
  Spot pointer_at;
  double inner_m = 0.0;
  double outer_m = 0.0;
  std::optional<Vec3> tool_end;
  bool fine = false;
  bool near = false;

 private:
  void take_in(const event::Action& action) {
    REQUIRE(action.tick == bench.tick());
    actions.push_back(action);
    bench.apply(action);
  }
};

/// A bolt that nothing moves: a key's pull is then all that the hand gives.
inline SixBolt stuck_bolts() {
  SixBolt job = six_bolt();
  job.setup.fitted_torque_nm = 7.0;
  job.setup.fitted_locker_1 = 6.0;
  for (auto& bolt : job.setup.bolts) bolt.grade = bench::BoltGrade::Steel12_9;  // its recess bears the whole pull
  return job;
}

/// Bolts left at 3 N·m without locker, the torque tool at 5.0 exactly.
inline SixBolt nearly_tight_bolts() {
  SixBolt job = six_bolt();
  job.setup.fitted_torque_nm = 3.0;
  job.setup.fitted_locker_1 = 0.0;
  job.setup.tools[2].start_setting_nm = 5.0;
  job.setup.tools[2].class_1 = 0.0;
  for (auto& bolt : job.setup.bolts) bolt.patch = false;
  return job;
}

}  // namespace proofstand::testing

#include "sim/scene/wheel_pose.h"

#include <algorithm>
#include <cmath>
#include <glm/gtc/matrix_transform.hpp>

#include "sim/base/math.h"
#include "sim/bench/hand_motion.h"
#include "sim/bench/wheel.h"
#include "sim/scene/dimensions.h"
#include "sim/scene/layout.h"
#include "sim/scene/scene.h"

namespace proofstand::scene {
namespace {

const glm::mat4 kOne(1.0F);
constexpr glm::vec3 kX{1.0F, 0.0F, 0.0F};
constexpr glm::vec3 kZ{0.0F, 0.0F, 1.0F};

float thickness_m(const bench::Bench& bench, event::ThingId rotor) {
  const bench::BenchSetup& setup = bench.setup();
  return static_cast<float>(setup.rotors[setup.things[event::index_of(rotor)].part].thickness_new_m);
}

glm::vec3 wheel_middle(bench::WheelAt at) {
  if (at == bench::WheelAt::Bike) return kBikeAxle;
  return at == bench::WheelAt::Hands ? kHeldWheel : glm::vec3(0.0F);
}

}  // namespace

glm::vec3 disc_point(float radius_m, float angle_rad, float out_m) {
  return {-radius_m * std::cos(angle_rad), radius_m * std::sin(angle_rad), -(static_cast<float>(size::kSeat) + out_m)};
}

glm::mat4 wheel_stands(const bench::Bench& bench) {
  const bench::BenchState& state = bench.state();
  glm::vec3 at = wheel_middle(state.wheel.at);
  // lifted out or carried home while both hands are on their way
  for (const bench::HandState& hand : state.hands) {
    const base::Tick whole = bench::motion_ticks(hand.pending.kind);
    if (!hand.has_pending || whole <= 0) continue;
    const bool takes = hand.pending.kind == event::ActionKind::Take;
    const event::ThingId moved = takes ? static_cast<event::ThingId>(hand.pending.numbers[1]) : hand.holding;
    if (moved == event::kNoThing || bench.setup().things[event::index_of(moved)].kind != bench::ThingKind::Wheel) {
      continue;
    }
    bench::WheelAt to = bench::WheelAt::Hands;
    if (hand.pending.kind == event::ActionKind::Bring) {
      const bool to_bike = static_cast<event::PlaceKind>(hand.pending.numbers[2]) == event::PlaceKind::ForkEnds;
      to = to_bike ? bench::WheelAt::Bike : bench::WheelAt::Stand;
    } else if (!takes) {
      continue;
    }
    const float left = static_cast<float>(hand.busy_until - state.tick) / static_cast<float>(whole);
    const float share = glm::clamp(1.0F - left, 0.0F, 1.0F);
    at = glm::mix(at, wheel_middle(to), share * share * (3.0F - 2.0F * share));
    break;
  }
  return glm::translate(kOne, at);
}

glm::mat4 wheel_pose(const bench::Bench& bench) {
  // forward is counter-clockwise seen at the disc side
  const auto angle = static_cast<float>(std::fmod(bench::wheel_angle_rad(bench.state()), base::kTwoPi));
  return glm::rotate(wheel_stands(bench), -angle, kZ);
}

glm::mat4 disc_frame() {
  glm::mat4 frame(1.0F);
  frame[0] = {-1.0F, 0.0F, 0.0F, 0.0F};
  frame[2] = {0.0F, 0.0F, -1.0F, 0.0F};
  frame[3] = {0.0F, 0.0F, -static_cast<float>(size::kSeat), 1.0F};
  return frame;
}

glm::mat4 rotor_on_hub_pose(const bench::Bench& bench) {
  const bench::SeatState& seat = bench.state().seat;
  glm::mat4 pose = wheel_pose(bench) * disc_frame();
  // while it hangs on its register one side stands off; it leans on the opposite edge of the seat
  const double gap_m = seat.cocked_m + seat.frozen_m;
  if (gap_m > 0.0) {
    const double across_m = bench.setup().hub.hole_circle_m;
    const auto phase = static_cast<float>(seat.cocked_phase_rad);
    const glm::vec3 far(std::cos(phase), std::sin(phase), 0.0F);
    const glm::vec3 axis(-far.y, far.x, 0.0F);
    const glm::vec3 hinge = far * static_cast<float>(-across_m / 2.0);
    pose = glm::translate(pose, hinge);
    pose = glm::rotate(pose, -static_cast<float>(std::atan(gap_m / across_m)), axis);
    pose = glm::translate(pose, -hinge);
  }
  // 0 of its play is where braking drags it: clockwise
  pose = glm::rotate(pose, static_cast<float>(seat.angle_rad - seat.play_rad / 2.0), kZ);
  if (!seat.printed_out) {
    pose = glm::translate(pose, glm::vec3(0.0F, 0.0F, thickness_m(bench, seat.rotor)));
    pose = glm::rotate(pose, static_cast<float>(base::kPi), kX);
  }
  return pose;
}

glm::mat4 hole_frame(const bench::BenchSetup& setup, std::size_t position) {
  const auto angle =
      static_cast<float>(base::kTwoPi * static_cast<double>(position) / static_cast<double>(setup.bolt_count()));
  const glm::mat4 turned = glm::rotate(disc_frame(), angle, kZ);
  return glm::translate(turned, glm::vec3(static_cast<float>(setup.hub.hole_circle_m / 2.0), 0.0F, 0.0F));
}

glm::mat4 bolt_in_hole_pose(const bench::Bench& bench, std::size_t position) {
  const bench::BenchSetup& setup = bench.setup();
  const bench::HoleState& hole = bench.state().holes[position];
  const bench::BoltPart& part = setup.bolts[setup.things[event::index_of(hole.bolt)].part];
  const double pitch_m = setup.hub.thread_pitch_m;
  // before the thread has caught it rides on the hole's first turn and drops when turned back over its start
  const double turns = hole.started ? hole.turns_1 : hole.phase_1 - 1.0;
  double height_m = part.length_m - turns * pitch_m;
  const event::ThingId rotor = bench.state().seat.rotor;
  const double grip_m = rotor == event::kNoThing ? 0.0 : static_cast<double>(thickness_m(bench, rotor));
  height_m = std::max(height_m, grip_m);
  glm::mat4 pose = wheel_pose(bench) * hole_frame(setup, position);
  if (hole.tilt_rad != 0.0) pose = glm::rotate(pose, static_cast<float>(hole.tilt_rad), kX);
  pose = glm::translate(pose, glm::vec3(0.0F, 0.0F, static_cast<float>(height_m)));
  // each came out of its box at another angle
  const double start = 2.399963 * static_cast<double>(event::index_of(hole.bolt));
  return glm::rotate(pose, static_cast<float>(std::fmod(start - turns * base::kTwoPi, base::kTwoPi)), kZ);
}

}  // namespace proofstand::scene

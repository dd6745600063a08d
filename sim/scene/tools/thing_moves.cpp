#include <algorithm>
#include <cmath>
#include <glm/gtc/matrix_transform.hpp>

#include "sim/scene/layout.h"
#include "sim/scene/place_point.h"
#include "sim/scene/tools/click_driver.h"
#include "sim/scene/tools/micrometer.h"
#include "sim/scene/tools/scales.h"
#include "sim/scene/tools/thing_pose.h"
#include "sim/scene/wheel_pose.h"

namespace proofstand::scene {
namespace {

const glm::vec3 kZ(0.0F, 0.0F, 1.0F);

glm::mat4 along_z(double by_m) { return glm::translate(glm::mat4(1.0F), {0.0F, 0.0F, static_cast<float>(by_m)}); }

glm::mat4 round_z(const glm::mat4& pose, double angle_rad) {
  return glm::rotate(pose, static_cast<float>(angle_rad), kZ);
}

glm::mat4 setting_pose(const bench::Bench& bench, const bench::Thing& thing, bool collar) {
  const bench::ToolPart& part = bench.setup().tools[thing.part];
  const bench::ToolState& state = bench.state().tools[thing.part];
  const double drawn_m = collar && state.unlocked ? kCollarDraw_m : 0.0;
  const glm::mat4 pose = along_z(kLowestLine_m - setting_edge_m(part, state.setting_nm) + drawn_m);
  return round_z(pose, setting_turn_rad(state.setting_nm));
}

}  // namespace

glm::mat4 move_of(const bench::Bench& bench, event::ThingId thing, Move move) {
  const bench::Thing& what = bench.setup().things[event::index_of(thing)];
  switch (move) {
    case Move::None:
      return glm::mat4(1.0F);
    case Move::Setting:
      return setting_pose(bench, what, false);
    case Move::Collar:
      return setting_pose(bench, what, true);
    default:
      break;
  }
  const bench::InstrumentState& state = bench.state().instruments[what.part];
  switch (move) {
    case Move::Thimble:
      return round_z(along_z(kSleeveZero_m + thimble_edge_m(state.shown_m)), thimble_turn_rad(state.shown_m));
    case Move::Spindle:
      return along_z(state.opening_m);
    case Move::Slide:
      return glm::translate(glm::mat4(1.0F), {static_cast<float>(state.shown_m), 0.0F, 0.0F});
    case Move::Pointer:
      // a hair above the face; clockwise as one reads it
      return round_z(along_z(kDialHub_m + 0.0012), -dial_pointer_rad(state.shown_m));
    case Move::SmallHand:
      return round_z(glm::translate(along_z(kDialHub_m + 0.0004), {0.0F, -0.0095F, 0.0F}),
                     -dial_small_hand_rad(state.shown_m));
    case Move::Plunger:
      return along_z(std::min(state.standing ? state.opening_m : 0.0, kDialPlunger_m));
    default:
      return glm::mat4(1.0F);
  }
}

DialPoses dial_on_column(const glm::mat4& dial, float foot_y) {
  DialPoses poses;
  poses.dial = dial;
  // the arm comes to the dial's lug from the side on which its x is small, the column stands at the arm's end
  poses.arm = glm::translate(dial, {-static_cast<float>(kDialArm_m), 0.0F, static_cast<float>(kDialHub_m) - 0.012F});
  const glm::vec3 at(poses.arm[3]);
  glm::mat4 stand(1.0F);
  stand[0] = poses.arm[0];
  stand[1] = glm::vec4(glm::cross(glm::vec3(0.0F, 1.0F, 0.0F), glm::vec3(poses.arm[0])), 0.0F);
  stand[2] = {0.0F, 1.0F, 0.0F, 0.0F};
  stand[3] = {at.x, foot_y, at.z, 1.0F};
  poses.stand = stand;
  return poses;
}

DialPoses dial_at_rotor(const bench::Bench& bench, event::ThingId dial, const std::vector<ScenePlace>& places) {
  const bench::Thing& what = bench.setup().things[event::index_of(dial)];
  const bench::InstrumentState& state = bench.state().instruments[what.part];
  const event::PlaceKind face = state.inner_face ? event::PlaceKind::TrackInner : event::PlaceKind::TrackOuter;
  const ScenePlace* place = find_place(places, state.rotor, face);
  if (place == nullptr) return dial_on_column(lying_pose(bench, dial), kBenchTop_y);
  // where it was set down, whatever has turned under it since
  const double round_rad = state.angle_rad + state.last_wheel_rad - state.turned_rad;
  const glm::mat4 disc = wheel_stands(bench) * disc_frame();
  const auto radius = static_cast<float>(state.radius_m);
  const auto angle = static_cast<float>(round_rad);
  const glm::vec3 flat = radius * (std::cos(angle) * glm::vec3(disc[0]) + std::sin(angle) * glm::vec3(disc[1]));
  const glm::vec3 z = glm::normalize(glm::vec3(place->frame[2]));
  const glm::vec3 up = glm::normalize(glm::vec3(0.0F, 1.0F, 0.0F) - z.y * z);
  const glm::vec3 across = glm::cross(up, z);
  const glm::vec3 at = glm::vec3(place->frame[3]) + flat;
  const glm::mat4 frame(glm::vec4(across, 0.0F), glm::vec4(up, 0.0F), glm::vec4(z, 0.0F), glm::vec4(at, 1.0F));
  return dial_on_column(frame, kBenchTop_y);
}

}  // namespace proofstand::scene
